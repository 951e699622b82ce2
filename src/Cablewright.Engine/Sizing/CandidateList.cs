using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>The conductors that an open run may be made of.</summary>
internal static class CandidateList
{
    private const int MostUnlessAsked = 4;

    private static readonly ConductorSize[] StockedAmerican =
        [.. new[] { "18", "16", "14", "12", "10", "8", "4", "2", "1/0" }.Select(size => ConductorSize.Of(size + " AWG"))];

    private static readonly ConductorSize[] StockedMetric =
        [.. new[] { "1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50" }
            .Select(size => ConductorSize.Of(size + " mm2"))];

    private static readonly ConductorSize[] UsualAmerican =
        [.. new[] { "18", "16", "14", "12", "10", "8", "6", "4", "2", "1/0", "2/0", "3/0", "4/0" }
            .Select(size => ConductorSize.Of(size + " AWG"))];

    private static readonly ConductorSize[] UsualMetric =
        [.. new[] { "1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50", "70", "95", "120" }
            .Select(size => ConductorSize.Of(size + " mm2"))];

    /// <summary>The sizes that are made, where a build names none.</summary>
    public static IReadOnlyList<ConductorSize> Usual(UnitSystem units) => units is UnitSystem.Us ? UsualAmerican : UsualMetric;

    /// <summary>The sizes that the trade keeps in stock (common practice, no source).</summary>
    public static IReadOnlyList<ConductorSize> Stocked(UnitSystem units) =>
        units is UnitSystem.Us ? StockedAmerican : StockedMetric;

    /// <summary>What the trade keeps in stock, and above its largest what is made: what cures are looked for in.</summary>
    public static IEnumerable<ConductorSize> Offered(UnitSystem units) =>
        Stocked(units).Concat(Usual(units).Where(size => size.IsLargerThan(Stocked(units)[^1])));

    /// <summary>How many conductors of a run may lie in parallel.</summary>
    public static int MostParallel(Stock stock, CompleteBuild build) => stock switch
    {
        Stock.Single => 1,
        Stock.Paired => build.Stated.Sizing.MaxParallel ?? (int)build.Ruleset.Sizing.StockedParallel.Value,
        _ => build.Stated.Sizing.MaxParallel ?? MostUnlessAsked,
    };

    /// <summary>
    /// The candidates for one run, the one with the highest resistance first. What a terminal usually accepts bars none: a
    /// reducer before it takes a larger one.
    /// </summary>
    /// <param name="run">The run.</param>
    /// <param name="build">The build, with its own lists.</param>
    /// <param name="costs">Its prices.</param>
    /// <param name="stock">What it may be made of.</param>
    public static IReadOnlyList<ConductorChoice> For(CompleteRun run, CompleteBuild build, PriceList costs, Stock stock)
    {
        Build stated = build.Stated;
        ConductorWish wish = run.Wish;
        TerminalLimit[] terminals = [.. run.Terminals.Where(terminal => !terminal.IsAssumed)];
        ConductorSize? largest = terminals.Select(terminal => terminal.Largest).MinBy(size => size.NominalAreaMm2);
        ConductorSize[] sizes = Fitting(SizesOf(stated, costs, stock), largest);
        double leastParallel = Math.Min(Stocked(stated.Units)[^1].NominalAreaMm2, sizes.Max(size => size.NominalAreaMm2));
        return [.. Conductors(sizes, MaterialsOf(wish, stated, costs), costs)
            .SelectMany(conductor => Laid(conductor, Counts(conductor), terminals))
            .OrderByDescending(choice => choice.OhmsPerMetreAt20)
            .ThenBy(choice => choice.Conductor.Material)
            .ThenBy(choice => choice.Count)];

        IEnumerable<int> Counts(Conductor conductor)
        {
            if (wish.Count is { } count) return [count];
            return Enumerable.Range(1, stated.Sizing.MaxParallel is null && IsThin(conductor) ? 1 : MostParallel(stock, build));
        }

        bool IsThin(Conductor conductor) => conductor.Size.NominalAreaMm2 < leastParallel;
    }

    private static IEnumerable<ConductorSize> SizesOf(Build build, PriceList costs, Stock stock) =>
        build.Sizing.Sizes.Count > 0 ? build.Sizing.Sizes
        : costs.ArePriced ? costs.PricedSizes
        : stock is Stock.Any ? Usual(build.Units)
        : Stocked(build.Units);

    private static IEnumerable<Material> MaterialsOf(ConductorWish wish, Build build, PriceList costs) =>
        wish.Material is { } stated ? [stated]
        : build.Sizing.Materials.Count > 0 ? build.Sizing.Materials.Distinct()
        : costs.ArePriced ? costs.PricedMaterials
        : [Material.Copper];

    private static Conductor[] Conductors(
        IEnumerable<ConductorSize> sizes, IEnumerable<Material> materials, PriceList costs)
    {
        Conductor[] all = [.. sizes.SelectMany(size => materials.Select(material => Conductor.Of(size, material)))];
        Conductor[] priced = [.. all.Where(costs.IsPriced)];
        return priced.Length > 0 ? priced : all;
    }

    /// <summary>
    /// What the terminals accept; where that is none of the sizes, the smallest of them, which a finding then names.
    /// </summary>
    private static ConductorSize[] Fitting(IEnumerable<ConductorSize> sizes, ConductorSize? largest)
    {
        ConductorSize[] known = [.. sizes.Distinct()];
        ConductorSize[] fitting = [.. known.Where(size => largest is null || size.FitsWhere(largest))];
        return fitting.Length > 0 ? fitting : [known.MinBy(size => size.MetalAreaMm2)!];
    }

    /// <summary>
    /// As many in parallel as the terminals take; one, which a finding then names, where they do not take even that.
    /// </summary>
    private static ConductorChoice[] Laid(
        Conductor conductor, IEnumerable<int> counts, IReadOnlyList<TerminalLimit> terminals)
    {
        ConductorChoice[] all = [.. counts.Select(parallel => new ConductorChoice(conductor, parallel))];
        ConductorChoice[] taken = [.. all.Where(choice => terminals.All(terminal => terminal.Takes(choice)))];
        return taken.Length > 0 ? taken : all[..1];
    }
}
