using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Reports.Assessments;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Numerics;

/// <summary>The work of a request: counted whole, bounded, the same everywhere, ended where the caller is gone.</summary>
public class WorkMeterTests
{
    private static readonly (string Name, Build Build)[] Shapes = [.. SlowShapes.All(
        WorkBudgets.UsualAmplifiers, WorkBudgets.UsualRuns, WorkBudgets.UsualBatteries)];

    public static TheoryData<string> Names() => [.. Shapes.Select(shape => shape.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_slowest_shapes_that_need_no_key_are_answered_within_the_budget(string name)
    {
        Build build = Shapes.Single(shape => shape.Name == name).Build;
        Assert.Empty(FaultFinder.Find(build));
        WorkMeter meter = WorkBudgets.MeterFor(build), again = WorkBudgets.MeterFor(build);
        Assessment answer = Assessor.Assess(build, RulesetLibrary.Newest, meter);
        Assert.InRange(meter.Used, build.Runs.Count, 1.1 * meter.Budget);
        Assert.All(answer.Amplifiers, amplifier => Assert.InRange(amplifier.DropVolts, 0, 100));
        Assessor.Assess(build, RulesetLibrary.Newest, again);
        Assert.Equal(meter.Used, again.Used);
    }

    [Fact]
    public void A_larger_build_may_take_more()
    {
        Build usual = SampleBuilds.OneAmplifier();
        Build large = usual with { Runs = [.. Enumerable.Repeat(usual.Runs[0], WorkBudgets.UsualRuns + 1)] };
        Assert.Equal(4 * WorkBudgets.MeterFor(usual).Budget, WorkBudgets.MeterFor(large).Budget);
        Assert.Equal(WorkBudgets.MeterFor(usual).Budget / 3, WorkBudgets.MeterFor(usual, 3).Budget);
    }

    [Fact]
    public void A_computation_ends_where_its_caller_is_gone()
    {
        using var gone = new CancellationTokenSource();
        gone.Cancel();
        Assert.Throws<OperationCanceledException>(() => Assessor.Assess(
            SampleBuilds.OneAmplifier(), RulesetLibrary.Newest, WorkBudgets.MeterFor(SampleBuilds.OneAmplifier(), gone.Token)));
    }

    [Fact]
    public void What_takes_far_more_than_its_budget_is_ended() => Assert.Throws<WorkExceededException>(
        () => Assessor.Assess(SampleBuilds.OneAmplifier(), RulesetLibrary.Newest, new WorkMeter(20)));

    [Fact]
    public void What_is_optional_is_left_out_and_named_where_the_budget_ends()
    {
        Build build = SampleBuilds.OneAmplifier() with { Include = Enum.GetValues<Extra>() };
        Assessment whole = Assessor.Assess(build, RulesetLibrary.Newest);
        Assert.Null(whole.LeftOut);
        Assert.NotEmpty(whole.AskNext);
        Assert.NotNull(whole.Headroom);

        WorkMeter bare = new(double.PositiveInfinity);
        Assessor.Assess(build with { Include = [] }, RulesetLibrary.Newest, bare, advises: false);
        Assessment brief = Assessor.Assess(build, RulesetLibrary.Newest, new WorkMeter(bare.Used));
        Assert.Equal([AnswerPart.AskNext, AnswerPart.Headroom, AnswerPart.Robustness, AnswerPart.Alternatives], brief.LeftOut);
        Assert.Empty(brief.AskNext);
        Assert.Null(brief.Headroom);
        Assert.Null(brief.Robustness);
        Assert.All(brief.Runs, run => Assert.Null(run.Alternatives));
        Assert.Equal(whole.Verdict, brief.Verdict);
    }

    /// <summary>Of 100 units 95 are gone, so that what is optional gets 5, however much its part may count.</summary>
    [Fact]
    public void What_is_optional_gets_no_more_than_the_whole_has_left()
    {
        var whole = new WorkMeter(100);
        whole.Count(95);
        WorkMeter part = whole.Part(50);
        Assert.Null(part.Within(60, Done));
        Assert.Equal(101, whole.Used);

        static string Done(WorkMeter meter)
        {
            for (int i = 0; i < 60; i++) meter.Count(1);
            return "done";
        }
    }

    [Fact]
    public void A_part_counts_for_the_whole_and_ends_by_itself()
    {
        var whole = new WorkMeter(100);
        WorkMeter part = whole.Part(10);
        part.Count(12);
        Assert.True(part.IsUsedUp);
        Assert.False(whole.IsUsedUp);
        Assert.Equal(12, whole.Used);
        Assert.Equal(44, whole.FairPart(80).Budget);
        Assert.Equal("done", whole.Within(20, inner => Done(inner, 20)));
        Assert.Null(whole.Within(20, inner => Done(inner, 21)));
        Assert.Equal(53, whole.Used);
        whole.Count(47);
        Assert.Null(whole.Within(1, inner => Done(inner, 0)));
        Assert.True(part.IsUsedUp);
        Assert.Same(whole, Assert.Throws<WorkExceededException>(() => part.Count(51)).Meter);

        static string Done(WorkMeter meter, double units)
        {
            meter.Count(units);
            return "done";
        }
    }
}
