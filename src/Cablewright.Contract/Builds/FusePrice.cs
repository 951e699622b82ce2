using System.Text.Json.Serialization;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Builds;

/// <summary>What a fuse with its holder costs.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record FusePrice
{
    /// <summary>Its family.</summary>
    public required FuseFamilyName Family { get; init; }

    /// <summary>The price of one with its holder, in the currency of <c>sizing.currency</c>; more than 0.</summary>
    [Figure("see currency", 14.5, Smallest = 0.0001, Largest = ContractLimits.HighestPrice)]
    public required double Price { get; init; }
}
