using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Builds;

/// <summary>A capacitor across the supply.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Capacitor
{
    /// <summary>The place where it is connected: an amplifier, a battery or a junction of the supply side.</summary>
    [Identifier("bass")]
    public required string At { get; init; }

    /// <summary>Its capacitance.</summary>
    [Quantity(QuantityKind.Capacitance, "0.001 F", "10000 F", "1 F")]
    public required string Capacitance { get; init; }

    /// <summary>Its equivalent series resistance.</summary>
    [Quantity(QuantityKind.Resistance, "0.01 mOhm", "1 ohm", "2 mOhm")]
    public string? SeriesResistance { get; init; }
}
