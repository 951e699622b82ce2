using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;

namespace Cablewright.Contract.Builds;

/// <summary>
/// How far off what is stated or assumed may be, each either way; used where <c>include</c> asks for robustness.
/// </summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Tolerances
{
    /// <summary>Of the efficiency, or of the stated input current, as a share of it.</summary>
    [Quantity(QuantityKind.Ratio, "0 %", "50 %", "5 %")]
    public string? Efficiency { get; init; }

    /// <summary>Of the charging voltage.</summary>
    [Quantity(QuantityKind.Voltage, "0 V", "3 V", "0.3 V")]
    public string? ChargingVoltage { get; init; }

    /// <summary>Of every length, as a share of it.</summary>
    [Quantity(QuantityKind.Ratio, "0 %", "50 %", "5 %")]
    public string? Length { get; init; }

    /// <summary>Of the temperature of all surroundings: a difference, so that 10 K are 18 F.</summary>
    [Quantity(QuantityKind.TemperatureDifference, "0 K", "50 K", "10 K")]
    public string? Surroundings { get; init; }
}
