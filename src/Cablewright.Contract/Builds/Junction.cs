using System.Text.Json.Serialization;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Builds;

/// <summary>A distribution block or bus bar about which something is known.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Junction
{
    /// <summary>Its place name, as the runs use it; <c>body</c> and <c>engine</c> are taken.</summary>
    [Identifier("block", NamesPlace = true)]
    public required string Id { get; init; }

    /// <summary>What a person calls it; sentences of the answer use it in the place of the id.</summary>
    [Text(ContractLimits.NameLength, "Block under the rear seat")]
    public string? Name { get; init; }

    /// <summary>The largest conductor that its terminals accept.</summary>
    [ConductorSize]
    public string? LargestConductor { get; init; }
}
