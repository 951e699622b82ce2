using System.Text.Json.Serialization;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Builds;

/// <summary>What a terminal (lug) costs.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record TerminalPrice
{
    /// <summary>The conductor size that it is made for.</summary>
    [ConductorSize]
    public required string Size { get; init; }

    /// <summary>The price of one, in the currency of <c>sizing.currency</c>; more than 0.</summary>
    [Figure("see currency", 1.2, Smallest = 0.0001, Largest = ContractLimits.HighestPrice)]
    public required double Price { get; init; }
}
