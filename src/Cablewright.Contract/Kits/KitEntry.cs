using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Kits;

/// <summary>One kit in brief.</summary>
public sealed record KitEntry
{
    /// <summary>The shop's number for it.</summary>
    [Example("AK-150")]
    public required string Sku { get; init; }

    /// <summary>What it is called.</summary>
    [Example("Amplifier wiring kit, 4 AWG copper")]
    public required string Name { get; init; }

    /// <summary>What it costs, in <c>currency</c>.</summary>
    [Figure("see currency", 79.9, Smallest = 0, Largest = ContractLimits.HighestPrice)]
    public double? Price { get; init; }

    /// <summary>The currency of its prices.</summary>
    [Example("EUR")]
    public string? Currency { get; init; }

    /// <summary>The entity tag of its present state, as <c>If-Match</c> takes it.</summary>
    [Example("\"0b4af9c1d2e3\"")]
    public required string Etag { get; init; }
}
