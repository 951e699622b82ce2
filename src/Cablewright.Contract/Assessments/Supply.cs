using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>The supply as a whole.</summary>
public sealed record Supply
{
    /// <summary>The charging voltage that the wiring is judged at, in volts.</summary>
    [Figure("V", 13.8)]
    public required double OperatingVolts { get; init; }

    /// <summary>The lowest voltage at any amplifier over the cases in which the wiring is judged, in volts.</summary>
    [Figure("V", 11.4)]
    public required double LowestVolts { get; init; }

    /// <summary>All amplifiers at full rated output, at the charging voltage, in amperes.</summary>
    [Figure("A", 134.2)]
    public required double PeakCurrentAmps { get; init; }

    /// <summary>All amplifiers on their programme, on average, in amperes.</summary>
    [Figure("A", 44.7)]
    public required double AverageCurrentAmps { get; init; }

    /// <summary>
    /// What the hot alternator or the converter has left above the base load, in amperes; negative where it has less than none,
    /// absent where neither is stated.
    /// </summary>
    [Figure("A", 59, Smallest = double.NegativeInfinity)]
    public double? AlternatorAvailableAmps { get; init; }

    /// <summary>The same at idle, in amperes.</summary>
    [Figure("A", 7, Smallest = double.NegativeInfinity)]
    public double? IdleAvailableAmps { get; init; }

    /// <summary>
    /// How long the music plays with the engine off until the first group of batteries reaches its limit, in minutes; absent
    /// where no battery has a capacity or nothing is drawn.
    /// </summary>
    [Figure("min", 154)]
    public double? EngineOffMinutes { get; init; }

    /// <summary>
    /// The engine speed from which the alternator covers the average draw, in turns a minute; absent where it never does or its
    /// output curve is not known.
    /// </summary>
    [Figure("rpm", 1120)]
    public double? CoveredFromEngineRpm { get; init; }

    /// <summary>The energy balance at speed, at idle and with the engine off.</summary>
    public required IReadOnlyList<SupplyCase> Cases { get; init; }

    /// <summary>Each battery, in the order of the build.</summary>
    public required IReadOnlyList<BatteryResult> Batteries { get; init; }

    /// <summary>A burst of full output; absent where neither alternator nor converter is stated.</summary>
    public Burst? Burst { get; init; }

    /// <summary>Each capacitor, in the order of the build.</summary>
    public required IReadOnlyList<CapacitorResult> Capacitors { get; init; }
}
