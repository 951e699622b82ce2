using System.Text.Json.Serialization;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Kits;

/// <summary>A wiring kit as a shop sells it: what it holds.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Kit
{
    /// <summary>The shop's own number for it, where it has one. 1 to 40 letters, digits, <c>-</c> and <c>_</c>.</summary>
    [Identifier("AK-150")]
    public string? Sku { get; init; }

    /// <summary>What it is called. At most 100 characters.</summary>
    [Text(ContractLimits.NameLength, "Amplifier wiring kit, 4 AWG copper")]
    public required string Name { get; init; }

    /// <summary>What the kit costs, in <c>currency</c>.</summary>
    [Figure("see currency", 79.9, Smallest = 0, Largest = ContractLimits.HighestPrice)]
    public double? Price { get; init; }

    /// <summary>The currency of every price in it; due where one is stated.</summary>
    [Currency]
    public string? Currency { get; init; }

    /// <summary>What it holds, 1 to 64 parts.</summary>
    [Items(1, ContractLimits.KitParts)]
    public required IReadOnlyList<KitPart> Parts { get; init; }
}
