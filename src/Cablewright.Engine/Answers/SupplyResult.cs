using Cablewright.Engine.Builds;

namespace Cablewright.Engine.Answers;

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

/// <summary>What the supply is doing while the energy is counted.</summary>
public enum SupplyCaseName
{
    /// <summary>Engine running, alternator hot and at its rated speed.</summary>
    AtSpeed,

    /// <summary>Engine idling, alternator hot.</summary>
    Idle,

    /// <summary>Engine off: the batteries alone.</summary>
    EngineOff,
}

/// <summary>The energy balance in one case.</summary>
/// <param name="Name">The case.</param>
/// <param name="AvailableAmps">What is left above the vehicle's own draw; negative where that alone is too much.</param>
/// <param name="AverageBalanceAmps">Available less average draw; negative: the batteries give it.</param>
/// <param name="PeakBalanceAmps">Available less the draw at full output.</param>
/// <param name="MinutesToLimit">How long the batteries give the average deficit; <c>null</c> where there is none.</param>
/// <param name="LowestVolts">The lowest voltage at any amplifier at full output, with the batteries at their own voltage where
/// they have to give; <c>null</c> where the supply cannot hold full output.</param>
public sealed record SupplyCaseResult(
    SupplyCaseName Name, double AvailableAmps, double AverageBalanceAmps, double PeakBalanceAmps, double? MinutesToLimit,
    double? LowestVolts);

/// <summary>One battery.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Chemistry">What it is made of.</param>
/// <param name="RestVolts">Its voltage at rest at its state of charge.</param>
/// <param name="ResistanceMilliohms">Its internal resistance.</param>
/// <param name="CapacityAmpHours">Its capacity at its rating time.</param>
/// <param name="UsableAmpHours">What may be drawn of that from its state of charge, at its rating time.</param>
/// <param name="PeukertExponent">How much faster it is empty under a larger current.</param>
/// <param name="EngineOffMinutes">How long its group plays with the engine off; <c>null</c> where the group feeds nothing.</param>
public sealed record BatteryResult(
    string Id, Chemistry Chemistry, double RestVolts, double ResistanceMilliohms, double CapacityAmpHours, double UsableAmpHours,
    double PeukertExponent, double? EngineOffMinutes);

/// <summary>A burst of full output on what the alternator has left, the batteries and the capacitors.</summary>
/// <param name="Milliseconds">How long it lasts.</param>
/// <param name="AmplifierId">The amplifier whose voltage ends lowest.</param>
/// <param name="LowestVolts">Its lowest voltage in that time; <c>null</c> where the supply cannot hold full output.</param>
/// <param name="LowestVoltsWithoutCapacitors">The same with the capacitors taken away.</param>
public sealed record BurstResult(
    double Milliseconds, string AmplifierId, double? LowestVolts, double? LowestVoltsWithoutCapacitors);

/// <summary>What one capacitor really gives.</summary>
/// <param name="At">Where it is connected.</param>
/// <param name="Farads">Its capacitance.</param>
/// <param name="SeriesMilliohms">Its equivalent series resistance.</param>
/// <param name="DrawAmps">The full draw that it stands beside.</param>
/// <param name="FallVolts">The fall that is allowed while it alone gives that.</param>
/// <param name="HoldsMilliseconds">How long it does; 0 where its own resistance takes the whole fall at once.</param>
/// <param name="GivesJoules">The energy that it gives over that fall.</param>
public sealed record CapacitorResult(
    string At, double Farads, double SeriesMilliohms, double DrawAmps, double FallVolts, double HoldsMilliseconds,
    double GivesJoules);
