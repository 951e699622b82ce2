using Cablewright.Engine.Data;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using CsCheck;

namespace Cablewright.Engine.Tests.Fuses;

/// <summary>What holds of the time-current band of every family.</summary>
public class TimeCurrentBandTests
{
    private static readonly Gen<FuseFamily> AnyFamily = Gen.OneOfConst([.. RulesetLibrary.Newest.FuseFamilies.All]);

    [Fact]
    public void More_current_never_takes_longer() =>
        Gen.Select(AnyFamily, Gen.Double[0.5, 50], Gen.Double[1, 3]).Sample((family, share, more) =>
        {
            TimeCurrentBand band = family.TimeCurrentBand;
            return (band.SlowestSeconds(more * share) ?? double.PositiveInfinity)
                <= (band.SlowestSeconds(share) ?? double.PositiveInfinity)
                && band.FastestSeconds(more * share) <= band.FastestSeconds(share);
        }, iter: 20_000);

    [Fact]
    public void Within_a_band_more_current_opens_sooner() => Assert.All(RulesetLibrary.Newest.FuseFamilies.All, family =>
    {
        TimeCurrentBand band = family.TimeCurrentBand;
        double from = band.CertainFrom, to = band.Points[^1].ShareOfRating;
        double[] seconds = [.. Enumerable.Range(0, 1001).Select(i => band.SlowestSeconds(from + (to - from) * i / 1000)!.Value)];
        Assert.All(
            seconds.Zip(seconds.Skip(1)),
            pair => Assert.True(pair.Second < pair.First, $"{family.Name}: {pair.First} s, then {pair.Second} s"));
    });

    [Fact]
    public void It_never_opens_before_it_may() =>
        Gen.Select(AnyFamily, Gen.Double[0.5, 200]).Sample((family, share) =>
            family.TimeCurrentBand.FastestSeconds(share) <= (
                family.TimeCurrentBand.SlowestSeconds(share) ?? double.PositiveInfinity),
            iter: 20_000);

    /// <summary>At its rated current a fuse carries on for hours at least, and no opening is certain.</summary>
    [Fact]
    public void At_its_rating_no_fuse_opens() => Assert.All(RulesetLibrary.Newest.FuseFamilies.All, family =>
    {
        Assert.Null(family.TimeCurrentBand.SlowestSeconds(1));
        Assert.True(family.TimeCurrentBand.FastestSeconds(1) >= 3600);
    });

    /// <summary>Beyond the last point both edges go as a constant I²t: at twice the current a quarter.</summary>
    [Fact]
    public void Beyond_its_last_point_both_edges_keep_their_energy() =>
        Assert.All(RulesetLibrary.Newest.FuseFamilies.All, family =>
        {
            TimeCurrentPoint last = family.TimeCurrentBand.Points[^1];
            Assert.Equal(last.SlowestSeconds!.Value / 4, family.TimeCurrentBand.SlowestSeconds(2 * last.ShareOfRating)!.Value,
                12);
            Assert.Equal(last.FastestSeconds / 4, family.TimeCurrentBand.FastestSeconds(2 * last.ShareOfRating), 12);
        });

    /// <summary>
    /// A type C blade has opened within 0.15 s at 6 times its rating and holds 0.03 s (maker sheets). 0.15 · (6/9)² = 0.066667,
    /// at 30 times 0.15/25 = 0.006 s; at 36 times 0.004167 s would be left, but an arc at 12 V burns some 5 ms (from memory).
    /// </summary>
    [Theory]
    [InlineData(6, 0.15, 0.03)]
    [InlineData(9, 0.06666667, 0.01333333)]
    [InlineData(30, 0.006, 0.0012)]
    [InlineData(36, 0.005, 0.0008333333)]
    [InlineData(600, 0.005, 0.000003)]
    public void Beyond_its_last_point_no_fuse_opens_before_its_arc_is_out(double share, double slowest, double fastest)
    {
        TimeCurrentBand band = RulesetLibrary.Newest.FuseFamilies.Of(FuseFamilyName.BladeC).TimeCurrentBand;
        Near.Relative(slowest, band.SlowestSeconds(share)!.Value, 1e-6, $"slowest at {share}, s");
        Near.Relative(fastest, band.FastestSeconds(share), 1e-6, $"fastest at {share}, s");
    }

    /// <summary>What is stated of a part may leave open at its largest current by when it has opened.</summary>
    [Fact]
    public void Beyond_its_last_certain_point_the_slow_edge_keeps_the_energy_of_that()
    {
        TimeCurrentBand band = new(
            [Point(1.5, 60, 600), Point(3, 0.4, 4), Point(6, 0.1, null)],
            new SourcedNumber(1, "", "read"), new SourcedNumber(0.005, "", "read"));
        Assert.Equal(1, band.SlowestSeconds(6)!.Value, 12);
        Assert.Equal(0.25, band.SlowestSeconds(12)!.Value, 12);
        Assert.Equal(0.025, band.FastestSeconds(12), 12);

        static TimeCurrentPoint Point(double share, double fastest, double? slowest) => new(share, fastest, slowest, "", "read");
    }
}
