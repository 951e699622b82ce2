using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>The choice is the optimum that going through every choice with the full assessment finds.</summary>
public class OptimumTests
{
    public static TheoryData<string, int, int, int> Kinds => new()
    {
        { nameof(RandomBuilds.ThreeOpen), 10_000, 330, 165 },
        { nameof(RandomBuilds.FourOpen), 20_000, 60, 30 },
        { nameof(RandomBuilds.Priced), 30_000, 80, 40 },
        { nameof(RandomBuilds.Looped), 40_000, 20, 10 },
        { nameof(RandomBuilds.TwoBatteries), 50_000, 100, 12 },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Is_the_best_of_all_choices(string kind, int firstSeed, int builds, int leastFound)
    {
        int found = 0;
        Parallel.For(0, builds, i =>
        {
            if (BestOf(kind, firstSeed + i) is not null) Interlocked.Increment(ref found);
        });
        Assert.True(found >= leastFound, $"only {found} of {builds} builds have a choice at all");
    }

    /// <summary>Where single conductors do not keep the hard limit, or a count is stated.</summary>
    [Fact]
    public void Is_the_best_of_all_choices_in_parallel()
    {
        const int Builds = 120;
        int inParallel = 0, stated = 0;
        Parallel.For(0, Builds, i =>
        {
            if (BestOf(nameof(RandomBuilds.Parallel), 70_000 + i) is not { } best) return;
            if (best.Any(pair => pair.Wish.Count is null && pair.Choice.Count > 1)) Interlocked.Increment(ref inParallel);
            if (best.Any(pair => pair.Wish.Count is not null)) Interlocked.Increment(ref stated);
        });
        Assert.True(inParallel >= Builds / 4, $"only {inParallel} of {Builds} builds need conductors in parallel");
        Assert.True(stated >= Builds / 4, $"only {stated} of {Builds} builds state a count");
    }

    /// <summary>What the open runs are made of, which is the best; <c>null</c>: there is no choice.</summary>
    private static (ConductorWish Wish, ConductorChoice Choice)[]? BestOf(string kind, int seed)
    {
        Build build = BuildOf(kind, new RandomBuilds(seed));
        var problem = new ChoiceProblem(build);
        ConductorChoice[]? best = problem.Best();
        Assessment answer = Assessed.Of(build);
        if (best is null)
        {
            Assert.Contains(
                answer.Findings, finding => finding.Severity is Severity.Fail
                    || finding.Code is "amplifier.return-below-supply" or "run.no-fuse-fits" or "fuse.below-load"
                    or "fuse.opens-at-full-output");
            return null;
        }

        double weight = problem.Task.WeightOf(best);
        Assert.True(answer.Sizing!.Optimal, $"{kind} {seed}: the optimum is not proven, gap {answer.Sizing.Gap}");
        Near.Relative(weight, problem.Task.WeightOf(Chosen(answer)), 1e-6, $"{kind} {seed}");
        Assert.DoesNotContain(answer.Findings, finding => finding.Severity is Severity.Fail);
        Assert.Equal(0, answer.Sizing.Gap);
        return [.. problem.Task.Open.Select(run => (problem.Build.Runs[run].Wish, best[run]))];
    }

    [Fact]
    public void Has_the_fewest_sizes_of_all_choices() => Parallel.For(0, 30, i =>
    {
        Build build = new RandomBuilds(60_000 + i).FourOpen();
        build = build with { Sizing = build.Sizing with { Prefer = Prefer.FewestSizes } };
        var problem = new ChoiceProblem(build);
        Assessment answer = Assessed.Of(build);
        if (problem.Best(Prefer.FewestSizes) is not { } best) return;
        Assert.Equal(Sizes(best), Sizes(Chosen(answer)));
        Near.Relative(problem.Task.WeightOf(best), problem.Task.WeightOf(Chosen(answer)), 1e-6, $"build {i}");
    });

    private static int Sizes(ConductorChoice[] choice) => choice.Select(each => each.Conductor).Distinct().Count();

    private static Build BuildOf(string kind, RandomBuilds random) => kind switch
    {
        nameof(RandomBuilds.ThreeOpen) => random.ThreeOpen(),
        nameof(RandomBuilds.FourOpen) => random.FourOpen(),
        nameof(RandomBuilds.Priced) => random.Priced(),
        nameof(RandomBuilds.Looped) => random.Looped(),
        nameof(RandomBuilds.Parallel) => random.Parallel(),
        _ => random.TwoBatteries(),
    };

    private static ConductorChoice[] Chosen(Assessment answer) =>
        [.. answer.Runs.Select(
            run => new ConductorChoice(
                Conductor.Of(ConductorSize.Of(run.Conductor.Size), run.Conductor.Material), run.Conductor.Count))];
}
