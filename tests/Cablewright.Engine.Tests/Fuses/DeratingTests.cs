using Cablewright.Engine.Fuses;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Fuses;

/// <summary>
/// Source: the derating curve of a maker's sheet for a 40 A blade of ISO 8820-3 type E, quoted in a public design note: 40 A to
/// 20 °C, 34 A at 65, 30 A at 85, 25 A at 110 and 22 A at 125 °C. The other families take it over for want of one (from memory).
/// </summary>
public class DeratingTests
{
    private static readonly FuseFamily BladeE = FuseFamily.Of(FuseFamilyName.BladeE);

    [Theory]
    [InlineData(-40, 40)]
    [InlineData(20, 40)]
    [InlineData(65, 34)]
    [InlineData(85, 30)]
    [InlineData(110, 25)]
    [InlineData(125, 22)]
    public void A_40_A_blade_carries_what_its_sheet_says(double celsius, double amps) =>
        Near.Relative(amps, 40 * BladeE.HotShareAt(celsius), 1e-12, $"at {celsius} C, A");

    /// <summary>Half way between two points it carries half way between their currents; beyond the last no less.</summary>
    [Theory]
    [InlineData(42.5, 37)]
    [InlineData(75, 32)]
    [InlineData(97.5, 27.5)]
    [InlineData(117.5, 23.5)]
    [InlineData(150, 22)]
    public void Between_the_points_it_goes_straight(double celsius, double amps) =>
        Near.Relative(amps, 40 * BladeE.HotShareAt(celsius), 1e-12, $"at {celsius} C, A");

    [Fact]
    public void No_fuse_carries_more_in_hotter_air() => Assert.All(FuseFamily.All, family =>
    {
        for (int celsius = -40; celsius < 200; celsius++)
            Assert.InRange(family.HotShareAt(celsius + 1), 0.1, family.HotShareAt(celsius));
    });
}
