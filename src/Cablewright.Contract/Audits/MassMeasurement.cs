using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;

namespace Cablewright.Contract.Audits;

/// <summary>
/// The mass of a length of conductor without its insulation. An uncertainty that is left out is assumed, and said so.
/// </summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record MassMeasurement
{
    /// <summary>The mass of the bare metal.</summary>
    [Quantity(QuantityKind.Mass, "0.01 g", "500 kg", "38 g")]
    public required string Mass { get; init; }

    /// <summary>How far off it may be either way.</summary>
    [Quantity(QuantityKind.Mass, "0 g", "100 kg", "0.5 g")]
    [Quantity(QuantityKind.Ratio, "0 %", "50 %", "1 %")]
    public string? MassUncertainty { get; init; }

    /// <summary>The length of cable that it was taken from.</summary>
    [Quantity(QuantityKind.Length, "1 cm", "1000 m", "20 cm")]
    public required string Length { get; init; }

    /// <summary>How far off the length may be either way.</summary>
    [Quantity(QuantityKind.Length, "0 mm", "100 m", "1 mm")]
    [Quantity(QuantityKind.Ratio, "0 %", "50 %", "0.5 %")]
    public string? LengthUncertainty { get; init; }
}
