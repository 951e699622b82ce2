using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Builds;

/// <summary>The alternator's figures.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Alternator
{
    /// <summary>Rated output current, cold, at full speed.</summary>
    [Quantity(QuantityKind.Current, "1 A", "2000 A", "130 A")]
    public string? RatedCurrent { get; init; }

    /// <summary>Output current at idle.</summary>
    [Quantity(QuantityKind.Current, "0 A", "2000 A", "65 A")]
    public string? IdleCurrent { get; init; }

    /// <summary>Share of the rated current that is left when hot.</summary>
    [Quantity(QuantityKind.Ratio, "10 %", "100 %", "80 %")]
    public string? HotFactor { get; init; }

    /// <summary>The id of the battery that it charges.</summary>
    [Identifier("starter")]
    public string? At { get; init; }
}
