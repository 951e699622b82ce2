using Cablewright.Engine.Supply;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Results;

/// <summary>The supply as a whole.</summary>
/// <param name="OperatingVolts">The charging voltage that the wiring is judged at.</param>
/// <param name="LowestVolts">The lowest voltage at any amplifier over the cases in which the wiring is judged.</param>
/// <param name="PeakCurrentAmps">All amplifiers at full rated output, at the charging voltage.</param>
/// <param name="AverageCurrentAmps">All amplifiers on their programme, on average.</param>
/// <param name="AlternatorAvailableAmps">What the hot alternator or the converter has left above the base load; <c>null</c>
/// where neither is stated.</param>
/// <param name="IdleAvailableAmps">The same at idle.</param>
public sealed record SupplyResult(
    double OperatingVolts,
    double LowestVolts,
    double PeakCurrentAmps,
    double AverageCurrentAmps,
    double? AlternatorAvailableAmps,
    double? IdleAvailableAmps)
{
    /// <summary>
    /// Minutes of music with the engine off until the first group of batteries reaches its limit; <c>null</c> where no battery
    /// has a capacity or nothing is drawn.
    /// </summary>
    public double? EngineOffMinutes { get; init; }

    /// <summary>The engine speed from which the alternator covers the average draw; <c>null</c> where it never does or its
    /// curve is not known.</summary>
    public double? CoveredFromEngineRpm { get; init; }

    /// <summary>At speed, at idle, with the engine off.</summary>
    public required IReadOnlyList<SupplyCaseResult> Cases { get; init; }

    /// <summary>Each battery, in the order of the build.</summary>
    public required IReadOnlyList<BatteryResult> Batteries { get; init; }

    /// <summary>Half a second of full output; <c>null</c> where neither alternator nor converter is stated.</summary>
    public BurstResult? Burst { get; init; }

    /// <summary>Each capacitor, in the order of the build.</summary>
    public required IReadOnlyList<CapacitorResult> Capacitors { get; init; }
}

/// <summary>One battery.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Chemistry">What it is made of.</param>
/// <param name="RestVolts">Its voltage at rest at its state of charge.</param>
/// <param name="ResistanceMilliohms">Its internal resistance.</param>
/// <param name="CapacityAmpHours">Its capacity at its rating time.</param>
/// <param name="UsableAmpHours">What may be drawn of that from its state of charge, at its rating time.</param>
/// <param name="PeukertExponent">How much faster it is empty under a larger current.</param>
/// <param name="EngineOffMinutes">How long its group plays with the engine off; <c>null</c> where the group feeds
/// nothing.</param>
public sealed record BatteryResult(
    string Id, Chemistry Chemistry, double RestVolts, double ResistanceMilliohms, double CapacityAmpHours, double UsableAmpHours,
    double PeukertExponent, double? EngineOffMinutes);
