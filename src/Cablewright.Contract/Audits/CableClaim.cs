using System.Text.Json.Serialization;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Audits;

/// <summary>What a cable is sold as.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record CableClaim
{
    /// <summary>The size on its label.</summary>
    [ConductorSize]
    public string? Size { get; init; }

    /// <summary>The metal on its label.</summary>
    public Material? Material { get; init; }
}
