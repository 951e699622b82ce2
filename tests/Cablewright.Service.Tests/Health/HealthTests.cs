using Cablewright.Contract.Assessments;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Assessments;
using Cablewright.Service.Health;
using Cablewright.Service.Tests.Support;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Tests.Health;

public class HealthTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData("/health/live", "live")]
    [InlineData("/health/ready", "ready")]
    public async Task The_service_says_how_it_is(string address, string status)
    {
        Answer answer = await service.Get(address);
        Assert.Equal(200, answer.Status);
        Assert.Equal(status, (string)answer.Json["status"]!);
        Assert.Equal("no-store", answer.Headers["Cache-Control"]);
    }

    /// <summary>
    /// By hand. The amplifier is rated 80 A at 14.4 V (ANSI/CTA-2006), so P = 1152 W. Annealed copper 1/58 ohm mm²/m (IACS), 2
    /// AWG = 33.63 mm² (ASTM B258), lay 1.02: 0.5229 mohm/m at 20 C, at temperature T times 1 + 0.00393 (T - 20). The runs (5, 1
    /// and 0.5 m) with three joints of 0.1 mohm, the body's 1 mohm and the fuse's drop at its rating over that rating are in
    /// series with 13.8 V: V = (E + sqrt(E² - 4 P R)) / 2. T is the answer's, which is of the greater current at the lowest
    /// supply voltage, brought to this current by the square law of heating in small steps; the rest is arithmetic.
    /// </summary>
    [Fact]
    public void The_reference_build_is_known_by_hand()
    {
        Assessment answer = Assessor.Assess(ReferenceBuild.Stated, RulesetLibrary.Find("2026.2")!);
        const double Power = 80 * 14.4, Source = 13.8, Cabin = 30;
        Assert.DoesNotContain(answer.Findings, finding => finding.Severity == Severity.Fail);
        double share = ReferenceBuild.PeakCurrentAmps / answer.Runs[0].ThermalCurrentAmps;
        double celsius = Cabin + (answer.Runs[0].TemperatureCelsius - Cabin) * share * share;
        double perMetre = 1.0 / 58 * 1.02 / 33.6308 * (1 + 0.00393 * (celsius - 20));
        double fuse = RulesetLibrary.Newest.FuseFamilies.Of(FuseFamilyName.Anl).DropAtRatingVolts.Value / 150;
        double ohms = 6.5 * perMetre + 3 * 0.0001 + 0.001 + fuse;
        double volts = (Source + Math.Sqrt(Source * Source - 4 * Power * ohms)) / 2;
        Assert.Equal(volts, answer.Amplifiers[0].TerminalVolts, 0.002);
        Assert.Equal(ReferenceBuild.TerminalVolts, answer.Amplifiers[0].TerminalVolts, 0.0005);
        Assert.Equal(ReferenceBuild.PeakCurrentAmps, Power / volts, 0.005);
        Assert.InRange(celsius, 30, 105);
    }
}
