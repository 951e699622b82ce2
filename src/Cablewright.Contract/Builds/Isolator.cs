using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Builds;

/// <summary>A part between two batteries that keeps one from emptying the other.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Isolator
{
    /// <summary>How it does that.</summary>
    public required IsolatorKind Kind { get; init; }

    /// <summary>Lasting current that it is rated for; the output current of a charger, which must state it.</summary>
    [Quantity(QuantityKind.Current, "1 A", "2000 A", "40 A")]
    public string? RatedCurrent { get; init; }

    /// <summary>Resistance of a relay's closed contacts; with <c>relay</c> only.</summary>
    [Quantity(QuantityKind.Resistance, "0 mOhm", "0.1 ohm", "0.5 mOhm")]
    public string? ContactResistance { get; init; }

    /// <summary>Forward voltage of a diode; with <c>diode</c> only.</summary>
    [Quantity(QuantityKind.Voltage, "0.01 V", "2 V", "0.7 V")]
    public string? ForwardVoltage { get; init; }

    /// <summary>Output voltage of a charger; with <c>dc-dc-charger</c> only.</summary>
    [Quantity(QuantityKind.Voltage, "6 V", "60 V", "14.4 V")]
    public string? OutputVoltage { get; init; }

    /// <summary>Output over input power of a charger; with <c>dc-dc-charger</c> only.</summary>
    [Quantity(QuantityKind.Ratio, "30 %", "100 %", "90 %")]
    public string? Efficiency { get; init; }
}
