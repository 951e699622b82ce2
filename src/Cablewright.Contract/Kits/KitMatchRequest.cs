using System.Text.Json.Serialization;
using Cablewright.Contract.Builds;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Kits;

/// <summary>A build, and the shop whose kits should serve it.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record KitMatchRequest
{
    /// <summary>The build; what a kit brings does not count, as in a kit check.</summary>
    public required Build Build { get; init; }

    /// <summary>The shop; the key must be one of its keys.</summary>
    [Identifier("demo")]
    public required string Shop { get; init; }

    /// <summary>Most kits to list; 20 where left out.</summary>
    [Figure("1", 20, Smallest = 1, Largest = ContractLimits.KitsOnPage)]
    public int? Limit { get; init; }

    /// <summary>Where to go on: <c>next</c> of the answer before.</summary>
    [Text(ContractLimits.LongestCursor, "QUstMTUw")]
    public string? After { get; init; }
}
