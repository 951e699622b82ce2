using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Builds;

/// <summary>The alternator's figures.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Alternator
{
    /// <summary>How many of it charge side by side; its figures are those of one.</summary>
    [Figure("1", 2, Smallest = 1, Largest = 8)]
    public int? Count { get; init; }

    /// <summary>Rated output current, cold, at full speed.</summary>
    [Quantity(QuantityKind.Current, "1 A", "2000 A", "130 A")]
    public string? RatedCurrent { get; init; }

    /// <summary>Output current at idle.</summary>
    [Quantity(QuantityKind.Current, "0 A", "2000 A", "65 A")]
    public string? IdleCurrent { get; init; }

    /// <summary>Share of the rated current that is left when hot.</summary>
    [Quantity(QuantityKind.Ratio, "10 %", "100 %", "80 %")]
    public string? HotFactor { get; init; }

    /// <summary>Output current at the low speed of its label, 1500 turns a minute of its shaft, cold.</summary>
    [Quantity(QuantityKind.Current, "0 A", "2000 A", "70 A")]
    public string? LowSpeedCurrent { get; init; }

    /// <summary>
    /// Points of its output curve, cold, 2 to 12, each at a higher speed than the one before; they win over the label.
    /// </summary>
    [Items(ContractLimits.FewestOutputPoints, ContractLimits.OutputPoints)]
    public IReadOnlyList<OutputPoint>? OutputPoints { get; init; }

    /// <summary>Turns of its shaft for each turn of the engine.</summary>
    [Figure("1", 2.7, Smallest = 1, Largest = 6)]
    public double? PulleyRatio { get; init; }

    /// <summary>The engine's speed at idle.</summary>
    [Quantity(QuantityKind.RotationalSpeed, "300 rpm", "3000 rpm", "800 rpm")]
    public string? IdleSpeed { get; init; }

    /// <summary>The battery that it charges, or a place of its own from which runs lead to one.</summary>
    [Identifier("starter")]
    public string? At { get; init; }
}
