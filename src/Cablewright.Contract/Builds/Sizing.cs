using System.Text.Json.Serialization;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Builds;

/// <summary>What may be chosen from where something is left open.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Sizing
{
    /// <summary>The metals to choose from; copper where left out. A conductor given without a metal is of the first.</summary>
    [Items(1, ContractLimits.Materials)]
    public IReadOnlyList<Material>? Materials { get; init; }

    /// <summary>
    /// The sizes to choose from, at most 64; where left out, those that have a price, or, without
    /// prices, those that the trade keeps in stock, and the sizes between and above them only where nothing else does.
    /// </summary>
    [ConductorSize]
    [Items(1, ContractLimits.Sizes)]
    public IReadOnlyList<string>? Sizes { get; init; }

    /// <summary>
    /// How many conductors of a run may lie in parallel. Where left out: one, two of the largest size where one does not do, and
    /// up to four where nothing else does.
    /// </summary>
    [Figure("1", 2, Smallest = 1, Largest = ContractLimits.ParallelConductors)]
    public int? MaxParallel { get; init; }

    /// <summary>
    /// The families that fuses are chosen from. Where left out: plug-in fuses of type C to 30 A, small bolt-in ones
    /// (<c>mini-ANL</c>) to 100 A, <c>ANL</c> above; where one of these is not known to interrupt what its batteries ask for, or
    /// is not rated for the voltage, <c>single-bolt</c> or <c>class-t</c>.
    /// </summary>
    [Items(1, ContractLimits.FuseFamilies)]
    public IReadOnlyList<FuseFamilyName>? FuseFamilies { get; init; }

    /// <summary>What the ground of an amplifier is: <c>as-supply</c> where left out.</summary>
    public GroundSize? GroundSize { get; init; }

    /// <summary>What the choice makes least: <c>cost</c> where left out.</summary>
    public Prefer? Prefer { get; init; }

    /// <summary>
    /// What conductors cost, at most 256. Where any price is stated, a conductor without one is chosen only for a run that allows
    /// none that has one; without prices the ruleset's relative price of the metal counts.
    /// </summary>
    [Items(1, ContractLimits.Prices)]
    public IReadOnlyList<ConductorPrice>? Prices { get; init; }

    /// <summary>What fuses with their holders cost, by family; without one the ruleset's relative price counts.</summary>
    [Items(1, ContractLimits.FuseFamilies)]
    public IReadOnlyList<FusePrice>? FusePrices { get; init; }

    /// <summary>What terminals cost, by size, at most 64; without one the ruleset's relative price counts.</summary>
    [Items(1, ContractLimits.Sizes)]
    public IReadOnlyList<TerminalPrice>? TerminalPrices { get; init; }

    /// <summary>What a distribution block costs; the list of materials alone counts it.</summary>
    [Figure("see currency", 19, Smallest = 0.0001, Largest = ContractLimits.HighestPrice)]
    public double? DistributionBlockPrice { get; init; }

    /// <summary>The currency of the prices, for people; it changes no figure. At most 8 characters.</summary>
    [Text(ContractLimits.CurrencyLength, "EUR")]
    public string? Currency { get; init; }
}
