using Cablewright.Engine.Builds;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Tests.Properties;
using Cablewright.Engine.Tests.Sizing;
using Cablewright.Vocabulary;
using CsCheck;

namespace Cablewright.Engine.Tests.Changes;

/// <summary>Whatever fails: each reported change made, the build stands; one step less of it, it does not.</summary>
public class ChangeProperties
{
    private int failing, changed;

    [Fact]
    public void A_change_of_a_given_build_does_what_it_says()
    {
        GivenBuilds.Trees.Sample(Holds, iter: 60, threads: 1);
        Assert.True(changed > 20, $"{failing} failing builds, {changed} changes");
    }

    [Fact]
    public void A_change_of_a_build_with_two_ways_does_too()
    {
        GivenBuilds.Loops.Sample(Holds, iter: 40, threads: 1);
        Assert.True(changed > 10, $"{failing} failing builds, {changed} changes");
    }

    /// <summary>Open builds seldom fail, so their limit is made a small one.</summary>
    [Fact]
    public void A_change_of_an_open_build_does_too()
    {
        OpenBuilds.Trees.Sample(
            build => Holds(build with { Limits = build.Limits with { MaxDropVolts = 0.16 } }), iter: 25, threads: 1);
        Assert.True(changed > 3, $"{failing} failing builds, {changed} changes");
    }

    private void Holds(Build build)
    {
        Assessment answer = Assessed.WithAdvice(build);
        Assert.Equal(answer.Verdict is Verdict.Fail, answer.Feasibility is not null);
        if (answer.Feasibility is not { } feasibility) return;
        failing++;
        Assert.Equal(
            answer.Findings.Where(finding => finding.Severity is Severity.Fail).Select(finding => finding.Code).Distinct(),
            feasibility.BrokenRules);
        foreach (Change change in feasibility.Changes)
        {
            changed++;
            Assessment after = Assessed.Of(build.With(change.Edits));
            Assert.True(after.Verdict is not Verdict.Fail, $"{change.Message} {after.Summary}");
            Assert.Equal(change.Verdict, after.Verdict);
            Assert.Equal(
                change.Remaining,
                after.Findings.Where(finding => finding.Severity is not Severity.Info).Select(finding => finding.Code)
                    .Distinct());
            if (feasibility.Complete && OneStepLess(build, change) is { } less)
                Assert.True(Assessed.Of(less).Verdict is Verdict.Fail, $"{change.Message} less would do");
        }
    }

    /// <summary>A quarter of a foot or an inch longer, a hundredth of a power of ten more power.</summary>
    private static Build? OneStepLess(Build build, Change change)
    {
        if (change.Edits.Count != 1 || change.Kind is not (ChangeKind.Length or ChangeKind.Power)) return null;
        Edit edit = change.Edits[0];
        decimal to = Edited.Decimal(edit.To!), from = Edited.Decimal(edit.From!);
        decimal step = edit.To!.EndsWith("ft", StringComparison.Ordinal) ? 0.25m
            : edit.To.EndsWith("in", StringComparison.Ordinal) ? 1
            : (decimal)Math.Pow(10, Math.Floor(Math.Log10((double)from)) - 2);
        string less = FormattableString.Invariant($"{to + step} {edit.To.Split(' ')[1]}");
        bool isLess = change.Kind is ChangeKind.Power ? to + step < from : Edited.Metres(less) < Edited.Metres(edit.From!);
        return isLess ? build.With([edit with { To = less }]) : null;
    }
}
