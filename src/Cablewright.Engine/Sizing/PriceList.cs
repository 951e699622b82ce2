using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>What the parts of a job cost: the stated prices, else the ruleset's relative ones.</summary>
/// <remarks>
/// Relative prices are in what a kilogram of copper costs in conductors; where prices are stated they count at what the stated
/// ones, of conductors if any, are on average for theirs. Where prices of conductors are stated, a conductor without one is a
/// candidate only where nothing else is.
/// </remarks>
internal sealed class PriceList
{
    private readonly Dictionary<(ConductorSize Size, Material Material), double> conductors = [];
    private readonly Dictionary<FuseFamilyName, double> fuses;
    private readonly Dictionary<ConductorSize, double> terminals;
    private readonly SizingSection figures;
    private readonly double unit = 1;

    public PriceList(SizingWishes wishes, Ruleset ruleset)
    {
        Currency = wishes.Currency;
        figures = ruleset.Sizing;
        PerBlock = wishes.BlockPrice;
        foreach (ConductorPrice price in wishes.Prices)
        {
            (ConductorSize, Material) key = (price.Size, price.Material);
            conductors[key] = Math.Min(conductors.GetValueOrDefault(key, double.PositiveInfinity), price.PerMetre);
        }

        fuses = wishes.FusePrices.GroupBy(price => price.Family).ToDictionary(
            like => like.Key, like => like.Min(price => price.Each));
        terminals = wishes.TerminalPrices.GroupBy(price => price.Size).ToDictionary(
            like => like.Key, like => like.Min(price => price.Each));
        double[] over = [.. conductors.Select(price => price.Value / Relative(Conductor.Of(price.Key.Size, price.Key.Material)))];
        if (over.Length == 0)
        {
            over =
            [
                .. fuses.Select(price => price.Value / ruleset.FuseFamilies.Of(price.Key).RelativePrice.Value),
                .. terminals.Select(price => price.Value / Relative(price.Key)),
            ];
        }

        if (over.Length > 0) unit = over.Average();
    }

    /// <summary>The currency of the stated prices; <c>null</c> where none was named.</summary>
    public string? Currency { get; }

    /// <summary>Whether a price is stated of any part.</summary>
    public bool IsStated => ArePriced || fuses.Count > 0 || terminals.Count > 0 || PerBlock is not null;

    /// <summary>Whether a price is stated of any conductor.</summary>
    public bool ArePriced => conductors.Count > 0;

    /// <summary>The sizes that have a price, the least metal first.</summary>
    public IEnumerable<ConductorSize> PricedSizes =>
        conductors.Keys.Select(price => price.Size).Distinct().OrderBy(size => size.MetalAreaMm2);

    /// <summary>The metals that have a price.</summary>
    public IEnumerable<Material> PricedMaterials => conductors.Keys.Select(price => price.Material).Distinct().Order();

    /// <summary>The stated price of a distribution block.</summary>
    public double? PerBlock { get; }

    /// <summary>Whether a conductor has a stated price.</summary>
    public bool IsPriced(Conductor conductor) => conductors.ContainsKey((conductor.Size, conductor.Material));

    /// <summary>The stated price of one metre; <c>null</c> where none is stated for this size and metal.</summary>
    public double? StatedPerMetre(ConductorSize size, Material material) =>
        conductors.TryGetValue((size, material), out double price) ? price : null;

    /// <summary>The stated price of a fuse with its holder.</summary>
    public double? StatedPerFuse(FuseFamilyName family) => fuses.TryGetValue(family, out double price) ? price : null;

    /// <summary>The stated price of a terminal.</summary>
    public double? StatedPerTerminal(ConductorSize size) => terminals.TryGetValue(size, out double price) ? price : null;

    /// <summary>The price of one metre, in the currency of the build or in what a kilogram of copper costs.</summary>
    public double PerMetre(Conductor conductor) =>
        StatedPerMetre(conductor.Size, conductor.Material) ?? unit * Relative(conductor);

    /// <summary>The price of a fuse with its holder.</summary>
    public double PerFuse(FuseFamily family) => StatedPerFuse(family.Name) ?? unit * family.RelativePrice.Value;

    /// <summary>The price of one end of a conductor: its terminal.</summary>
    public double PerTerminal(ConductorSize size) => StatedPerTerminal(size) ?? unit * Relative(size);

    private double Relative(Conductor conductor) => figures.RelativePrice(conductor.Material).Value * conductor.KilogramsPerMetre;

    private double Relative(ConductorSize size) => figures.TerminalPrice.Value
        + figures.TerminalMetres.Value * Relative(Conductor.Of(size, Material.Copper));
}
