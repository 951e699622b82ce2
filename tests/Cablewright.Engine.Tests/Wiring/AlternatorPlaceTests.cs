using Cablewright.Engine.Builds;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.PartedBuilds;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Wiring;

/// <summary>An alternator at a place of its own.</summary>
public class AlternatorPlaceTests
{
    /// <summary>
    /// A label of 125 A, of which it gives 0.8 hot (common practice, no source): 100 A in 4 AWG, 40 °C: 66.762 °C and
    /// 0.984278 mΩ/m by the heat balance of an independent program; over 2 m, joints of 0.2 and a fuse of 0.6667 mΩ 0.283522 V.
    /// </summary>
    [Fact]
    public void Its_cable_carries_what_it_gives_hot()
    {
        RunResult cable = Run(WithAlternatorCable(100, 2), "charge");
        Near.Relative(100, cable.PeakCurrentAmps, 1e-9, "at most, A");
        Near.Relative(100, cable.ThermalCurrentAmps, 1e-9, "for long, A");
        Near.Absolute(66.7617, cable.TemperatureCelsius, 0.002, "C");
        Near.Relative(0.2835223, cable.DropVolts, 1e-5, "drop, V");
    }

    /// <summary>4 AWG bears 160 A · √(65/75) = 148.95 A in 40 °C.</summary>
    [Fact]
    public void Its_cable_is_judged_on_that()
    {
        Assert.DoesNotContain("run.over-ampacity", Codes(WithAlternatorCable(148.9, 1)));
        Assert.Contains("run.over-ampacity", Codes(WithAlternatorCable(149.0, 1)));
    }

    /// <summary>
    /// The engine strap carries the current back, and the battery's own strap then only the difference to the load; but while the
    /// alternator gives next to nothing that strap carries it all, for the golden case 91.8955 A.
    /// </summary>
    [Fact]
    public void The_engine_strap_carries_it_back()
    {
        Build build = WithAlternatorCable(100, 2)
            .With(SampleBuilds.Run("engine-strap", "alternator", "body", 0.5, "4 AWG") with { Side = Side.Return });
        Assessment answer = Assessed.Of(build);
        Near.Relative(100, Run(build, "engine-strap").PeakCurrentAmps, 1e-6, "engine strap, A");
        Near.Relative(91.8955, Run(build, "strap").PeakCurrentAmps, 2e-5, "battery strap, A");
        Near.Relative(91.8955, Run(build, "strap").ThermalCurrentAmps, 1e-4, "battery strap for long, A");
        Near.Relative(2.839952, answer.Amplifiers[0].DropPercent, 0.0005, "drop, %");
    }

    /// <summary>
    /// At the battery or at a place of its own, the amplifier sees the same voltage: the battery is what is held.
    /// </summary>
    [Fact]
    public void The_amplifier_does_not_see_where_it_stands() => Near.Relative(
        Assessed.Of(OneAmplifier().WithAlternator(100)).Amplifiers[0].TerminalVolts,
        Assessed.Of(WithAlternatorCable(100, 2)).Amplifiers[0].TerminalVolts, 1e-9, "V");

    private static RunResult Run(Build build, string id) => Assessed.Of(build).Runs.Single(run => run.Id == id);

    private static string[] Codes(Build build) => [.. Assessed.Of(build).Findings.Select(finding => finding.Code)];
}
