using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Sizing;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Variations;

/// <summary>Each run with its neighbours in size, metal and count, everything else left as it is.</summary>
/// <remarks>
/// The other conductors stay; fuses that were chosen are chosen anew, since they follow from the conductors. Once the work budget
/// is used up no further run is looked at.
/// </remarks>
internal sealed class Alternatives
{
    private readonly Variant present;
    private readonly Build frozen;
    private readonly JobCosts costs;
    private readonly WorkMeter meter;

    private Alternatives(Variant present, WorkMeter meter)
    {
        this.meter = meter;
        this.present = present;
        frozen = FrozenBuild.WithFusesOpen(present.Build, present.Sized.Evaluation.Design);
        costs = new JobCosts(
            present.Evaluator, ShortestWays.Of(present.Evaluator.Model.Circuit, present.Build.Draws.Count));
    }

    /// <summary>The alternatives of each run; <c>null</c> for a run that the budget did not reach.</summary>
    /// <param name="present">The build as it is.</param>
    /// <param name="meter">Counts the work.</param>
    /// <param name="write">What is kept of an alternative of a run: each is a whole build, too much to keep them all.</param>
    public static IReadOnlyList<IReadOnlyList<T>?> Of<T>(Variant present, WorkMeter meter, Func<int, Alternative, T> write)
    {
        var alternatives = new Alternatives(present, meter);
        return [.. Enumerable.Range(0, present.Build.Runs.Count).Select(run => alternatives.OfRun(run, write))];
    }

    private T[]? OfRun<T>(int run, Func<int, Alternative, T> write) => meter.Within(
        meter.Budget, part => Neighbours(run).Select(choice => write(run, Of(run, choice, part))).ToArray());

    private IEnumerable<ConductorChoice> Neighbours(int run)
    {
        ConductorChoice now = present.Sized.Evaluation.Design.Conductors[run];
        (ConductorSize size, Material metal) = (now.Conductor.Size, now.Conductor.Material);
        SizingWishes wishes = present.Build.Stated.Sizing;
        ConductorSize[] sizes =
            [.. (wishes.Sizes.Count > 0 ? wishes.Sizes : CandidateList.Offered(present.Build.Stated.Units))
                .OrderBy(each => each.MetalAreaMm2)];
        if (sizes.LastOrDefault(each => size.IsLargerThan(each)) is { } smaller)
            yield return now with { Conductor = Conductor.Of(smaller, metal) };
        if (sizes.FirstOrDefault(each => each.IsLargerThan(size)) is { } larger)
            yield return now with { Conductor = Conductor.Of(larger, metal) };
        IEnumerable<Material> metals = wishes.Materials.Count > 0 ? wishes.Materials.Distinct() : Enum.GetValues<Material>();
        foreach (Material other in metals.Where(other => other != metal))
            yield return now with { Conductor = Conductor.Of(size, other) };
        if (now.Count > 1) yield return now with { Count = now.Count - 1 };
        if (now.Count < ConductorChoice.MostInParallel) yield return now with { Count = now.Count + 1 };
    }

    private Alternative Of(int run, ConductorChoice choice, WorkMeter part)
    {
        Run[] runs = [.. frozen.Runs];
        runs[run] = runs[run] with
        {
            Conductor = runs[run].Conductor with
            {
                Size = choice.Conductor.Size,
                Material = choice.Conductor.Material,
                Count = choice.Count,
            },
        };
        var variant = Variant.Of(frozen with { Runs = runs }, present.Build.Ruleset, part);
        double? cost = !costs.Prices.ArePriced || costs.Prices.IsPriced(choice.Conductor) ? costs.Of(run, choice) : null;
        return new Alternative(choice, variant, cost);
    }
}

/// <summary>A run with another conductor in it, everything else left as it is.</summary>
/// <param name="Choice">The conductor.</param>
/// <param name="Variant">The whole build with it.</param>
/// <param name="Cost">What the run costs, or its relative price; <c>null</c> where prices are stated and this
/// conductor has none.</param>
internal sealed record Alternative(ConductorChoice Choice, Variant Variant, double? Cost);
