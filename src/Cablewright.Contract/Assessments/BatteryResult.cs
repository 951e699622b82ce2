using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>One battery as it was reckoned with.</summary>
public sealed record BatteryResult
{
    /// <summary>The id of the battery.</summary>
    [Example("starter")]
    public required string Id { get; init; }

    /// <summary>Its name, where the build gives one.</summary>
    [Example("Battery under the seat")]
    public string? Name { get; init; }

    /// <summary>What it is made of.</summary>
    public required Chemistry Chemistry { get; init; }

    /// <summary>Its voltage at rest at its state of charge, in volts.</summary>
    [Figure("V", 12.8)]
    public required double RestVolts { get; init; }

    /// <summary>Its internal resistance, in milliohms.</summary>
    [Figure("mohm", 5)]
    public required double ResistanceMilliohms { get; init; }

    /// <summary>Its capacity at its rating time, in ampere-hours.</summary>
    [Figure("Ah", 70)]
    public required double CapacityAmpHours { get; init; }

    /// <summary>What may be drawn of that from its state of charge, at its rating time, in ampere-hours.</summary>
    [Figure("Ah", 35)]
    public required double UsableAmpHours { get; init; }

    /// <summary>Peukert's exponent: how much sooner it is empty under a larger current.</summary>
    [Figure("1", 1.2, Smallest = 1, Largest = 2)]
    public required double PeukertExponent { get; init; }

    /// <summary>
    /// How long the music plays with the engine off on its group of batteries, in minutes; absent where the group feeds nothing.
    /// </summary>
    [Figure("min", 154)]
    public double? EngineOffMinutes { get; init; }
}
