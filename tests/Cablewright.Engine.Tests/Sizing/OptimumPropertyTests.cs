using System.Collections.Concurrent;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;
using Cablewright.Reports.Assessments;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>What must hold of any optimum, and nearly of a choice that is one as a rule.</summary>
public class OptimumPropertyTests
{
    private const int Builds = 60;
    private const double Rounding = 2e-6;

    /// <summary>By how much a choice may miss, and of how many builds.</summary>
    private const double MostMissed = 0.1, ShareMissed = 0.05;

    [Fact]
    public void A_larger_allowed_drop_hardly_ever_costs_more() => NearlyAll(80_000, (build, random) =>
    {
        double volts = 0.3 + 0.4 * random.NextDouble();
        return Over(WithMaxDrop(build, volts * (1.05 + random.NextDouble())), WithMaxDrop(build, volts));
    });

    [Fact]
    public void One_more_size_to_choose_from_hardly_ever_costs_more() => NearlyAll(81_000, (build, random) =>
    {
        ConductorSize left = RandomBuilds.TwelveSizes[random.Next(RandomBuilds.TwelveSizes.Length)];
        ConductorSize[] fewer = [.. RandomBuilds.TwelveSizes.Where(size => size != left)];
        return Over(WithSizes(build, RandomBuilds.TwelveSizes), WithSizes(build, fewer));
    });

    /// <summary>A hundred choices drawn at random, of those that keep every rule.</summary>
    [Fact]
    public void Hardly_any_choice_drawn_at_random_costs_less() => NearlyAll(82_000, (build, random) =>
    {
        var problem = new ChoiceProblem(WithMaxDrop(build, 0.6));
        if (Sized(WithMaxDrop(build, 0.6)) is not { } chosen) return null;
        IReadOnlyList<ConductorChoice>[] candidates = problem.Task.Candidates(Stock.Single);
        var taper = new TaperRule(problem.Task, candidates);
        double least = double.PositiveInfinity;
        for (int i = 0; i < 100; i++)
        {
            ConductorChoice[] drawn = [.. candidates.Select(of => of[random.Next(of.Count)])];
            if (GroundRule.IsKeptBy(drawn, problem.Task.SupplyOf) && taper.IsKeptBy(drawn)
                && problem.Task.Evaluate(drawn) is { } evaluation && problem.Keeps(evaluation, problem.Goals[0]))
                least = Math.Min(least, problem.Task.WeightOf(drawn));
        }

        return chosen.Cost / least;
    });

    [Fact]
    public void Where_the_work_ends_first_the_gap_covers_the_choice_in_the_end() => Parallel.For(0, 20, i =>
    {
        Build build = new RandomBuilds(83_000 + i).Tree(4);
        if (Sized(build) is not { } whole) return;
        if (Sized(build, 2500) is not { } stopped || stopped.Gap is not { } gap) return;
        Assert.True(stopped.Cost * (1 - gap) <= whole.Cost * (1 + Rounding), $"{stopped.Cost}, gap {gap}, {whole.Cost}");
    });

    /// <summary>By how much one figure is above what it may be, on sixty builds.</summary>
    private static void NearlyAll(int firstSeed, Func<Build, Random, double?> over)
    {
        var ratios = new ConcurrentBag<double>();
        Parallel.For(0, Builds, i =>
        {
            if (over(new RandomBuilds(firstSeed + i).Tree(2), new Random(firstSeed + i)) is { } ratio) ratios.Add(ratio);
        });
        Assert.True(ratios.Count >= Builds / 2, $"only {ratios.Count} builds have a choice");
        Assert.All(ratios, ratio => Assert.True(ratio <= 1 + MostMissed, $"{ratio}"));
        Assert.InRange(ratios.Count(ratio => ratio > 1 + Rounding), 0, ShareMissed * Builds);
    }

    private static Build WithMaxDrop(Build build, double volts) =>
        build with { Limits = build.Limits with { MaxDropVolts = volts } };

    private static Build WithSizes(Build build, ConductorSize[] sizes) =>
        WithMaxDrop(build with { Sizing = new SizingWishes { Sizes = sizes } }, 0.5);

    private static double? Over(Build freer, Build stricter) =>
        Sized(stricter) is { } more ? Sized(freer)!.Cost / more.Cost : null;

    /// <summary>How a choice was made that keeps every rule; <c>null</c> where none does.</summary>
    private static SizingResult? Sized(Build build, double? budget = null)
    {
        Assessment answer =
            budget is { } runs ? Assessed.WithinWork(build, runs) : Assessor.Assess(build, RulesetLibrary.Newest);
        bool keeps =
            !answer.Findings.Any(finding => finding.Severity is Severity.Fail || finding.Code == "amplifier.drop-over-target");
        return keeps ? answer.Sizing : null;
    }
}
