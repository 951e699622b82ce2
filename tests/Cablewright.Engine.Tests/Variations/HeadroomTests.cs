using Cablewright.Engine.Builds;
using Cablewright.Contract.Assessments;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Variations;

public class HeadroomTests
{
    /// <summary>
    /// Above its 100 A a fuse opens, be it late; 6 AWG bears 111.7 A, and over 2 m of it 100 A lose some 0.3 V, far below the
    /// 1.4 V that are 10 % of 14 V.
    /// </summary>
    [Theory]
    [InlineData(50, 2)]
    [InlineData(20, 5)]
    [InlineData(160, 0.625)]
    public void The_rating_of_a_fuse_stops_it(double amps, double factor)
    {
        Headroom headroom = Of(ConstantCurrent(amps));
        Assert.InRange(headroom.RatedOutputFactor, factor * 0.998, factor);
        Assert.Equal("fuse.below-load", headroom.LimitedBy);
        Assert.Equal("/runs/0/fuse/rating", headroom.At);
    }

    [Fact]
    public void Nothing_stops_a_trickle() => Assert.Equal(new Headroom { RatedOutputFactor = 16 }, Of(ConstantCurrent(1)));

    [Fact]
    public void What_fails_at_any_output_leaves_none()
    {
        Headroom headroom = Of(ConstantCurrent(50).WithRun("main", run => run with { Fuse = NoFuse }));
        Assert.Equal(0, headroom.RatedOutputFactor);
        Assert.Equal("fuse.missing-at-battery", headroom.LimitedBy);
    }

    /// <summary>
    /// The factor put into the build stands, a little more does not, with everything that was chosen left as it is.
    /// </summary>
    [Fact]
    public void A_choice_is_left_as_it_is()
    {
        Build open = OneAmplifier().WithRun("main", run => run with { Conductor = new ConductorWish(), Fuse = null });
        Assessment answer = Assess(open, Extra.Headroom);
        Build frozen = Sizing.OpenBuilds.Restated(open, answer);
        double factor = answer.Headroom!.RatedOutputFactor;
        Assert.True(factor >= 1);
        Assert.NotEqual(Verdict.Fail, Assess(Scaled(frozen, factor)).Verdict);
        Assessment more = Assess(Scaled(frozen, factor * 1.003));
        Assert.Equal(Verdict.Fail, more.Verdict);
        Assert.Contains(more.Findings, finding => finding.Code == answer.Headroom.LimitedBy);
    }

    [Fact]
    public void It_is_worked_out_only_where_it_is_asked_for() => Assert.Null(Assess(ConstantCurrent(50)).Headroom);

    private static Headroom Of(Build build) => Assess(build, Extra.Headroom).Headroom!;

    private static Assessment Assess(Build build, params Extra[] include) => Assessed.Of(build with { Include = include });

    private static Build Scaled(Build build, double factor) =>
        build.WithAmplifier(amplifier => amplifier with { RatedOutputWatts = amplifier.RatedOutputWatts * factor });
}
