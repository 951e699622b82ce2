using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;
using Cablewright.Reports.Assessments;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>What must hold of any optimum.</summary>
public class OptimumPropertyTests
{
    private const int Builds = 60;
    private const double Rounding = 2e-6;

    [Fact]
    public void A_larger_allowed_drop_never_costs_more() => ForEach(80_000, (build, random) =>
    {
        double volts = 0.3 + 0.4 * random.NextDouble();
        CostsNoMore(WithMaxDrop(build, volts * (1.05 + random.NextDouble())), WithMaxDrop(build, volts));
    });

    [Fact]
    public void One_more_size_to_choose_from_never_costs_more() => ForEach(81_000, (build, random) =>
    {
        ConductorSize left = RandomBuilds.TwelveSizes[random.Next(RandomBuilds.TwelveSizes.Length)];
        ConductorSize[] fewer = [.. RandomBuilds.TwelveSizes.Where(size => size != left)];
        CostsNoMore(WithSizes(build, RandomBuilds.TwelveSizes), WithSizes(build, fewer));
    });

    /// <summary>A hundred choices drawn at random; those that keep every rule cost no less.</summary>
    [Fact]
    public void No_choice_drawn_at_random_costs_less() => ForEach(82_000, (build, random) =>
    {
        var problem = new ChoiceProblem(WithMaxDrop(build, 0.6));
        if (Sized(WithMaxDrop(build, 0.6)) is not { } optimum) return;
        IReadOnlyList<ConductorChoice>[] candidates = problem.Task.Candidates(Stock.Single);
        for (int i = 0; i < 100; i++)
        {
            ConductorChoice[] drawn = [.. candidates.Select(of => of[random.Next(of.Count)])];
            if (GroundRule.IsKeptBy(drawn, problem.Task.SupplyOf)
                && problem.Task.Evaluate(drawn) is { } evaluation && problem.Keeps(evaluation, problem.Goals[0]))
                Assert.True(problem.Task.WeightOf(drawn) >= optimum.Cost * (1 - Rounding));
        }
    });

    [Fact]
    public void Where_the_work_ends_first_the_gap_covers_the_optimum() => Parallel.For(0, 20, i =>
    {
        Build build = new RandomBuilds(83_000 + i).Tree(4);
        if (Sized(build) is not { } optimum) return;
        if (Sized(build, 2500) is not { } stopped || stopped.Gap is not { } gap) return;
        Assert.True(
            stopped.Cost * (1 - gap) <= optimum.Cost * (1 + Rounding), $"{stopped.Cost}, gap {gap}, optimum {optimum.Cost}");
    });

    private static void ForEach(int firstSeed, Action<Build, Random> check) => Parallel.For(0, Builds, i =>
    {
        Build build = new RandomBuilds(firstSeed + i).Tree(2);
        check(build, new Random(firstSeed + i));
    });

    private static Build WithMaxDrop(Build build, double volts) =>
        build with { Limits = build.Limits with { MaxDropVolts = volts } };

    private static Build WithSizes(Build build, ConductorSize[] sizes) =>
        WithMaxDrop(build with { Sizing = new SizingWishes { Sizes = sizes } }, 0.5);

    private static void CostsNoMore(Build freer, Build stricter)
    {
        if (Sized(stricter) is not { } more) return;
        Assert.True(Sized(freer)!.Cost <= more.Cost * (1 + Rounding));
    }

    /// <summary>How a choice was made that keeps every rule; <c>null</c> where none does.</summary>
    private static SizingResult? Sized(Build build, double? budget = null)
    {
        Assessment answer =
            budget is { } runs ? Assessed.WithinWork(build, runs) : Assessor.Assess(build, RulesetLibrary.Newest);
        bool keeps =
            !answer.Findings.Any(finding => finding.Severity is Severity.Fail || finding.Code == "amplifier.drop-over-target");
        if (keeps && budget is null) Assert.True(answer.Sizing!.Optimal);
        return keeps ? answer.Sizing : null;
    }
}
