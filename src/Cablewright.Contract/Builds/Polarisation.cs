using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;

namespace Cablewright.Contract.Builds;

/// <summary>A resistance of a battery that shows only after a while.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Polarisation
{
    /// <summary>The resistance.</summary>
    [Quantity(QuantityKind.Resistance, "0.01 mOhm", "1 ohm", "3 mOhm")]
    public required string Resistance { get; init; }

    /// <summary>The time in which 63 % of it has shown.</summary>
    [Quantity(QuantityKind.Duration, "1 ms", "24 h", "10 s")]
    public required string TimeConstant { get; init; }
}
