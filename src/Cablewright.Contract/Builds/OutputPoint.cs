using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;

namespace Cablewright.Contract.Builds;

/// <summary>One point of an alternator's output curve.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record OutputPoint
{
    /// <summary>Speed of its shaft.</summary>
    [Quantity(QuantityKind.RotationalSpeed, "0 rpm", "30000 rpm", "2000 rpm")]
    public required string Speed { get; init; }

    /// <summary>Output current there.</summary>
    [Quantity(QuantityKind.Current, "0 A", "2000 A", "85 A")]
    public required string Current { get; init; }
}
