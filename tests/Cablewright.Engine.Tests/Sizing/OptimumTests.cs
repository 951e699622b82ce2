using System.Collections.Concurrent;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>
/// Against going through every choice with the full assessment: the choice is nearly always the optimum and never much more, and
/// what is said to be proven is.
/// </summary>
public class OptimumTests
{
    /// <summary>
    /// Of how many builds, all but one at least, the choice has to be the optimum, and what any other may weigh.
    /// </summary>
    private const double ShareOptimal = 0.98, MostOverOptimum = 1.05;

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
        var found = new ConcurrentBag<Compared>();
        Parallel.For(0, builds, i =>
        {
            if (Compare(kind, firstSeed + i) is { } compared) found.Add(compared);
        });
        Assert.True(found.Count >= leastFound, $"only {found.Count} of {builds} builds have a choice at all");
        AreNearlyAllOptimal(found);
    }

    /// <summary>Where single conductors do not keep the hard limit, or a count is stated.</summary>
    [Fact]
    public void Is_the_best_of_all_choices_in_parallel()
    {
        const int Builds = 120;
        var found = new ConcurrentBag<Compared>();
        Parallel.For(0, Builds, i =>
        {
            if (Compare(nameof(RandomBuilds.Parallel), 70_000 + i) is { } compared) found.Add(compared);
        });
        int inParallel = found.Count(each => each.Best.Any(pair => pair.Wish.Count is null && pair.Choice.Count > 1));
        int stated = found.Count(each => each.Best.Any(pair => pair.Wish.Count is not null));
        AreNearlyAllOptimal(found);
        Assert.True(inParallel >= Builds / 4, $"only {inParallel} of {Builds} builds need conductors in parallel");
        Assert.True(stated >= Builds / 4, $"only {stated} of {Builds} builds state a count");
    }

    private static void AreNearlyAllOptimal(IReadOnlyCollection<Compared> found)
    {
        Compared[] heavier = [.. found.Where(each => Significant.Exceeds(each.Over, 1))];
        Assert.True(
            heavier.Length <= Math.Max(1, (1 - ShareOptimal) * found.Count),
            $"{heavier.Length} of {found.Count} are not the best: {string.Join(", ", heavier.Select(each => each.Seed))}");
        Assert.All(heavier, each => Assert.InRange(each.Over, 1, MostOverOptimum));
    }

    /// <summary>The choice against the best; <c>null</c>: there is no choice.</summary>
    private static Compared? Compare(string kind, int seed)
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

        Assert.DoesNotContain(answer.Findings, finding => finding.Severity is Severity.Fail);
        double over = problem.Task.WeightOf(Chosen(answer)) / problem.Task.WeightOf(best);
        if (answer.Sizing!.Optimal) Near.Relative(1, over, 1e-6, $"{kind} {seed} is said to be proven");
        if (answer.Sizing.Gap is { } gap)
            Assert.True(1 / over >= (1 - gap) * (1 - 1e-6), $"{kind} {seed}: 1/{over} is below what is said to be proven");
        return new Compared(seed, over, [.. problem.Task.Open.Select(run => (problem.Build.Runs[run].Wish, best[run]))]);
    }

    /// <summary>A choice against the best.</summary>
    /// <param name="Seed">Of which build.</param>
    /// <param name="Over">How much it weighs, as a multiple of the best.</param>
    /// <param name="Best">What the open runs are made of in the best.</param>
    private sealed record Compared(int Seed, double Over, (ConductorWish Wish, ConductorChoice Choice)[] Best);

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
