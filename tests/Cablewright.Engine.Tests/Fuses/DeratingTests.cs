using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Fuses;

/// <summary>
/// Source: the derating curve of a maker's sheet for a 40 A blade of ISO 8820-3 type E, quoted in a public design note: 40 A to
/// 20 °C, 34 A at 65, 30 A at 85, 25 A at 110 and 22 A at 125 °C. In the cool 0.75 of 40 A, 30 A, are carried continuously
/// (small-fuse practice), which the sheet grants up to 85 °C: only beyond is there less. The other plug-in fuses take the curve
/// over for want of one (from memory); bolted ones have none.
/// </summary>
public class DeratingTests
{
    private static readonly FuseFamily BladeE = RulesetLibrary.Newest.FuseFamilies.Of(FuseFamilyName.BladeE);

    /// <summary>40 · 0.75 = 30 A as long as the sheet allows 30 A, then what the sheet allows.</summary>
    [Theory]
    [InlineData(-40, 30)]
    [InlineData(20, 30)]
    [InlineData(65, 30)]
    [InlineData(85, 30)]
    [InlineData(110, 25)]
    [InlineData(125, 22)]
    public void A_40_A_blade_carries_what_its_sheet_says_and_its_margin_within(double celsius, double amps) =>
        Near.Relative(amps, ContinuousAmpsAt(celsius), 1e-12, $"at {celsius} C, A");

    /// <summary>Half way between two points it carries half way between their currents; beyond the last no less.</summary>
    [Theory]
    [InlineData(85.4, 29.92)]
    [InlineData(97.5, 27.5)]
    [InlineData(117.5, 23.5)]
    [InlineData(150, 22)]
    public void Between_the_points_it_goes_straight(double celsius, double amps) =>
        Near.Relative(amps, ContinuousAmpsAt(celsius), 1e-12, $"at {celsius} C, A");

    [Theory]
    [InlineData(FuseFamilyName.Anl)]
    [InlineData(FuseFamilyName.StripSf51)]
    [InlineData(FuseFamilyName.ClassT)]
    public void A_bolted_fuse_carries_in_hot_air_what_it_carries_in_cool(FuseFamilyName family) =>
        Assert.Equal(1, RulesetLibrary.Newest.FuseFamilies.Of(family).HotShareAt(125));

    [Fact]
    public void No_fuse_carries_more_in_hotter_air() => Assert.All(RulesetLibrary.Newest.FuseFamilies.All, family =>
    {
        for (int celsius = -40; celsius < 200; celsius++)
            Assert.InRange(family.HotShareAt(celsius + 1), 0.1, family.HotShareAt(celsius));
    });

    private static double ContinuousAmpsAt(double celsius) =>
        40 * BladeE.ContinuousUseFactor.Value * BladeE.HotShareAt(celsius);
}
