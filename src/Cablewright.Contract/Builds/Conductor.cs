using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Builds;

/// <summary>What is known of a run's conductor. Without a size it is chosen, and what is stated restricts the choice.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Conductor
{
    /// <summary>The size as the trade writes it.</summary>
    [ConductorSize]
    public string? Size { get; init; }

    /// <summary>The metal.</summary>
    public Material? Material { get; init; }

    /// <summary>Temperature rating of the insulation.</summary>
    [Quantity(QuantityKind.Temperature, "60 C", "125 C", "105 C")]
    public string? InsulationRating { get; init; }

    /// <summary>How many lie in parallel.</summary>
    [Figure("1", 1, Smallest = 1, Largest = ContractLimits.ParallelConductors)]
    public int? Count { get; init; }
}
