using Cablewright.Engine.Builds;
using Cablewright.Contract.Assessments;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Protection;

/// <summary>Which fuses guard a run: the nearest one on every way from a battery.</summary>
public class ProtectionMapTests
{
    [Fact]
    public void A_fuse_guards_its_own_run_and_what_follows_without_one()
    {
        Assessment answer = Assessed.Of(Fed(feed => feed));
        Assert.Equal(["main"], Protection(answer, "main"));
        Assert.Equal(["main"], Protection(answer, "feed"));
        Assert.Empty(Protection(answer, "return"));
    }

    [Fact]
    public void A_nearer_fuse_takes_over() =>
        Assert.Equal(["feed"], Protection(Assessed.Of(Fed(feed => feed with { Fuse = Anl(60) })), "feed"));

    [Fact]
    public void What_is_fed_two_ways_has_a_guard_on_each()
    {
        Assessment answer = Assessed.Of(
            Fed(feed => feed).With(Run("second", "starter", "block", 1, "6 AWG") with { Fuse = Anl(100) }));
        Assert.Equal(["main", "second"], Protection(answer, "feed"));
        Assert.Equal(["main", "second"], Protection(answer, "main"));
    }

    /// <summary>6 AWG bears 111.7 A; two ways of 60 A let 120 A into what follows, two of 50 A let 100 A.</summary>
    [Theory]
    [InlineData(60, true)]
    [InlineData(50, false)]
    public void What_two_ways_let_through_adds_up_behind_them(double each, bool tooMuch)
    {
        Build build = Fed(feed => feed).WithRun("main", run => run with { Fuse = Anl(each) })
            .With(Run("second", "starter", "block", 1, "6 AWG") with { Fuse = Anl(each) });
        Assert.Equal(tooMuch, Codes(Assessed.Of(build)).Contains("fuse.missing-at-reduction"));
    }

    /// <summary>
    /// Between two batteries a fault is fed from both ends, but each end has its own fuse: 100 A and 100 A do not add up in 6
    /// AWG.
    /// </summary>
    [Fact]
    public void Two_fuses_at_the_ends_of_a_run_between_batteries_do_not_add_up()
    {
        Assessment answer = Assessed.Of(TwoBatteries(tie => tie with { FarFuse = Anl(100) }));
        Assert.Equal(["tie"], Protection(answer, "tie"));
        Assert.DoesNotContain("fuse.above-conductor-rating", Codes(answer));
        Assert.DoesNotContain("fuse.missing-at-battery", Codes(answer));
    }

    [Fact]
    public void A_run_between_batteries_without_a_fuse_at_one_end_is_unguarded()
    {
        Assessment answer = Assessed.Of(TwoBatteries(tie => tie with { FarFuse = NoFuse }));
        Assert.Contains(
            answer.Findings,
            finding =>
                finding.Code == "fuse.missing-at-battery" && finding.Pointer.StartsWith("/runs/2", StringComparison.Ordinal));
        Assert.Empty(Protection(answer, "tie"));
    }

    [Fact]
    public void A_fuse_at_the_wrong_end_leaves_the_run_unguarded()
    {
        Assessment answer = Assessed.Of(
            ConstantCurrent(40).WithRun("main", run => run with { Fuse = NoFuse, FarFuse = Anl(60) }));
        Assert.Contains("fuse.missing-at-battery", Codes(answer));
        Assert.Empty(Protection(answer, "main"));
    }

    /// <summary>The direction in which a run is written changes where its fuse stands, not what guards it.</summary>
    [Fact]
    public void A_run_written_towards_its_battery_is_guarded_by_its_far_fuse()
    {
        Build build = ConstantCurrent(40).WithRun("main", run => run with
        {
            From = "bass",
            To = "starter",
            Side = Side.Supply,
            Fuse = null,
            FarFuse = Anl(60),
        });
        Assessment answer = Assessed.Of(build);
        Assert.Equal(["main"], Protection(answer, "main"));
        Assert.DoesNotContain("fuse.missing-at-battery", Codes(answer));
        Assert.Equal(40, answer.Runs[0].PeakCurrentAmps, 9);
    }

    private static Build Fed(Func<Run, Run> change) => ConstantCurrent(40) with
    {
        Runs =
        [
            Run("main", "starter", "block", 1, "6 AWG") with { Fuse = Anl(100) },
            change(Run("feed", "block", "bass", 1, "6 AWG") with { Fuse = NoFuse }),
            Run("return", "bass", "starter", 1, "6 AWG"),
        ],
    };

    private static Build TwoBatteries(Func<Run, Run> change)
    {
        Build one = ConstantCurrent(40);
        return one with
        {
            Vehicle = one.Vehicle with
            {
                Batteries =
                [
                    one.Vehicle.Batteries[0],
                    new Battery { Id = "rear", InternalOhms = 0.05, Chemistry = Chemistry.Agm },
                ],
            },
            Runs =
            [
                .. one.Runs,
                change(Run("tie", "starter", "rear", 1, "6 AWG") with { Side = Side.Supply, Fuse = Anl(100) }),
                Run("rear-return", "rear", "starter", 1, "6 AWG") with { Side = Side.Return },
            ],
        };
    }

    private static IReadOnlyList<string> Protection(Assessment answer, string run) =>
        answer.Runs.Single(result => result.Id == run).GuardedBy;

    private static string[] Codes(Assessment answer) => [.. answer.Findings.Select(finding => finding.Code)];
}
