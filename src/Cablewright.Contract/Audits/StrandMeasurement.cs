using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Audits;

/// <summary>The strands of a cable. An uncertainty that is left out is assumed, and said so.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record StrandMeasurement
{
    /// <summary>How many there are; 1 for a solid wire.</summary>
    [Figure("1", 1568, Smallest = 1, Largest = ContractLimits.Strands)]
    public required int Count { get; init; }

    /// <summary>How far off the count may be either way.</summary>
    [Quantity(QuantityKind.Ratio, "0 %", "50 %", "1 %")]
    public string? CountUncertainty { get; init; }

    /// <summary>Diameter of one bare strand.</summary>
    [Quantity(QuantityKind.Length, "0.02 mm", "15 mm", "0.12 mm")]
    public required string Diameter { get; init; }

    /// <summary>How far off the diameter may be either way.</summary>
    [Quantity(QuantityKind.Length, "0 mm", "5 mm", "0.002 mm")]
    [Quantity(QuantityKind.Ratio, "0 %", "50 %", "2 %")]
    public string? DiameterUncertainty { get; init; }
}
