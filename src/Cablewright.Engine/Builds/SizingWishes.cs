using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>What may be chosen from where something is left open.</summary>
public sealed record SizingWishes
{
    /// <summary>The metals to choose from; empty: copper.</summary>
    public IReadOnlyList<Material> Materials { get; init; } = [];

    /// <summary>The sizes to choose from; empty: those that have a price, else the trade's usual ones.</summary>
    public IReadOnlyList<ConductorSize> Sizes { get; init; } = [];

    /// <summary>
    /// How many conductors of a run may lie in parallel; <c>null</c>: two of the largest, four where nothing else does.
    /// </summary>
    public int? MaxParallel { get; init; }

    /// <summary>The families that fuses are chosen from; empty: the usual ones.</summary>
    public IReadOnlyList<FuseFamilyName> FuseFamilies { get; init; } = [];

    /// <summary>What the ground of an amplifier is.</summary>
    public GroundSize GroundSize { get; init; }

    /// <summary>What the choice makes least.</summary>
    public Prefer Prefer { get; init; }

    /// <summary>
    /// What conductors cost. Where any is stated, a conductor without one is not chosen, except in a run for which nothing that
    /// has a price is allowed.
    /// </summary>
    public IReadOnlyList<ConductorPrice> Prices { get; init; } = [];

    /// <summary>What fuses with their holders cost.</summary>
    public IReadOnlyList<FusePrice> FusePrices { get; init; } = [];

    /// <summary>What terminals cost.</summary>
    public IReadOnlyList<TerminalPrice> TerminalPrices { get; init; } = [];

    /// <summary>What a distribution block costs.</summary>
    public double? BlockPrice { get; init; }

    /// <summary>The currency of the prices; it is handed through and changes no result.</summary>
    public string? Currency { get; init; }
}
