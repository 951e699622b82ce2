using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>What conductors cost: the stated prices, else their metal by the ruleset's relative prices.</summary>
/// <remarks>
/// Where prices are stated, a conductor without one is a candidate only where nothing else is; it then counts by its metal, at
/// what the stated prices are on average for theirs.
/// </remarks>
internal sealed class ConductorCosts
{
    private readonly Dictionary<(ConductorSize Size, Material Material), double> stated = [];
    private readonly double[] relative;
    private readonly double unit = 1;

    public ConductorCosts(SizingWishes wishes, Ruleset ruleset)
    {
        Currency = wishes.Currency;
        relative = [.. Enum.GetValues<Material>().Select(material => ruleset.Sizing.RelativePrice(material).Value)];
        foreach (ConductorPrice price in wishes.Prices)
        {
            (ConductorSize, Material) key = (price.Size, price.Material);
            stated[key] = Math.Min(stated.GetValueOrDefault(key, double.PositiveInfinity), price.PerMetre);
        }

        if (stated.Count > 0)
            unit = stated.Average(price => price.Value / Relative(Conductor.Of(price.Key.Size, price.Key.Material)));
    }

    /// <summary>The currency of the stated prices; <c>null</c> where none was named.</summary>
    public string? Currency { get; }

    /// <summary>Whether any price is stated.</summary>
    public bool ArePriced => stated.Count > 0;

    /// <summary>The sizes that have a price, the least metal first.</summary>
    public IEnumerable<ConductorSize> PricedSizes =>
        stated.Keys.Select(price => price.Size).Distinct().OrderBy(size => size.MetalAreaMm2);

    /// <summary>The metals that have a price.</summary>
    public IEnumerable<Material> PricedMaterials => stated.Keys.Select(price => price.Material).Distinct().Order();

    /// <summary>Whether a conductor has a stated price.</summary>
    public bool IsPriced(Conductor conductor) => stated.ContainsKey((conductor.Size, conductor.Material));

    /// <summary>The stated price of one metre; <c>null</c> where none is stated for this size and metal.</summary>
    public double? StatedPerMetre(ConductorSize size, Material material) =>
        stated.TryGetValue((size, material), out double price) ? price : null;

    /// <summary>The price of one metre, in the currency of the build or in what a kilogram of copper costs.</summary>
    public double PerMetre(Conductor conductor) =>
        stated.TryGetValue((conductor.Size, conductor.Material), out double price) ? price : unit * Relative(conductor);

    /// <summary>What all conductors of a run cost.</summary>
    public double Of(CompleteRun run, ConductorChoice choice) => PerMetre(choice.Conductor) * choice.Count * run.LengthMetres;

    private double Relative(Conductor conductor) => relative[(int)conductor.Material] * conductor.KilogramsPerMetre;
}
