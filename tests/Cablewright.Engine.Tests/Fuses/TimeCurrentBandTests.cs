using Cablewright.Engine.Fuses;
using CsCheck;

namespace Cablewright.Engine.Tests.Fuses;

/// <summary>What holds of the time-current band of every family.</summary>
public class TimeCurrentBandTests
{
    private static readonly Gen<FuseFamily> AnyFamily = Gen.OneOfConst([.. FuseFamily.All]);

    [Fact]
    public void More_current_never_takes_longer() =>
        Gen.Select(AnyFamily, Gen.Double[0.5, 20], Gen.Double[1, 3]).Sample((family, share, more) =>
        {
            TimeCurrentBand band = family.TimeCurrentBand;
            return (band.SlowestSeconds(more * share) ?? double.PositiveInfinity)
                <= (band.SlowestSeconds(share) ?? double.PositiveInfinity)
                && band.FastestSeconds(more * share) <= band.FastestSeconds(share);
        }, iter: 20_000);

    [Fact]
    public void Within_a_band_more_current_opens_sooner() => Assert.All(FuseFamily.All, family =>
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
        Gen.Select(AnyFamily, Gen.Double[0.5, 20]).Sample((family, share) =>
            family.TimeCurrentBand.FastestSeconds(
                share) <= (family.TimeCurrentBand.SlowestSeconds(share) ?? double.PositiveInfinity),
            iter: 20_000);

    /// <summary>At its rated current a fuse carries on for hours at least, and no opening is certain.</summary>
    [Fact]
    public void At_its_rating_no_fuse_opens() => Assert.All(FuseFamily.All, family =>
    {
        Assert.Null(family.TimeCurrentBand.SlowestSeconds(1));
        Assert.True(family.TimeCurrentBand.FastestSeconds(1) >= 3600);
    });

    /// <summary>
    /// Beyond the last point the longest time stays; the shortest goes as a constant I²t: at twice the current a quarter.
    /// </summary>
    [Fact]
    public void Beyond_its_last_point_the_slow_edge_stays_and_the_fast_one_keeps_its_energy() =>
        Assert.All(FuseFamily.All, family =>
        {
            TimeCurrentPoint last = family.TimeCurrentBand.Points[^1];
            Assert.Equal(last.SlowestSeconds, family.TimeCurrentBand.SlowestSeconds(2 * last.ShareOfRating));
            Assert.Equal(last.FastestSeconds / 4, family.TimeCurrentBand.FastestSeconds(2 * last.ShareOfRating), 12);
        });
}
