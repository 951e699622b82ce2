using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;

namespace Cablewright.Contract.Builds;

/// <summary>The supply voltages that an amplifier works at, as its maker states them.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record SupplyRange
{
    /// <summary>Below it the amplifier switches off.</summary>
    [Quantity(QuantityKind.Voltage, "1 V", "100 V", "10 V")]
    public string? Lowest { get; init; }

    /// <summary>Above it the amplifier may be damaged.</summary>
    [Quantity(QuantityKind.Voltage, "1 V", "100 V", "16 V")]
    public string? Highest { get; init; }
}
