using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;

namespace Cablewright.Contract.Audits;

/// <summary>The resistance of a length of cable. An uncertainty that is left out is assumed, and said so.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record ResistanceMeasurement
{
    /// <summary>The resistance between the points of measurement, leads not counted (four-wire).</summary>
    [Quantity(QuantityKind.Resistance, "1 uOhm", "1000 ohm", "4.9 mOhm")]
    public required string Resistance { get; init; }

    /// <summary>How far off it may be either way.</summary>
    [Quantity(QuantityKind.Resistance, "0 mOhm", "1000 ohm", "0.05 mOhm")]
    [Quantity(QuantityKind.Ratio, "0 %", "50 %", "1 %")]
    public string? ResistanceUncertainty { get; init; }

    /// <summary>The length between the points of measurement.</summary>
    [Quantity(QuantityKind.Length, "1 cm", "1000 m", "5 m")]
    public required string Length { get; init; }

    /// <summary>How far off the length may be either way.</summary>
    [Quantity(QuantityKind.Length, "0 mm", "100 m", "1 cm")]
    [Quantity(QuantityKind.Ratio, "0 %", "50 %", "0.5 %")]
    public string? LengthUncertainty { get; init; }

    /// <summary>The conductor's temperature.</summary>
    [Quantity(QuantityKind.Temperature, "-40 C", "120 C", "20 C")]
    public string? Temperature { get; init; }

    /// <summary>How far off the temperature may be either way, as a difference: <c>2 K</c> is 2 degrees Celsius.</summary>
    [Quantity(QuantityKind.TemperatureDifference, "0 K", "50 K", "2 K")]
    public string? TemperatureUncertainty { get; init; }
}
