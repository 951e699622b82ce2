using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>What one run carries and how it bears it.</summary>
public sealed record RunResult
{
    /// <summary>The id of the run.</summary>
    [Example("main")]
    public required string Id { get; init; }

    /// <summary>Its name, where the build gives one.</summary>
    [Example("Feed along the sill")]
    public string? Name { get; init; }

    /// <summary>Supply or return.</summary>
    public required Side Side { get; init; }

    /// <summary>The place where it starts.</summary>
    [Example("starter")]
    public required string From { get; init; }

    /// <summary>The place where it ends.</summary>
    [Example("block")]
    public required string To { get; init; }

    /// <summary>Its length, in metres.</summary>
    [Figure("m", 4.8768)]
    public required double LengthMetres { get; init; }

    /// <summary>Where it lies.</summary>
    public required Route Route { get; init; }

    /// <summary>Its conductor.</summary>
    public required ConductorResult Conductor { get; init; }

    /// <summary>Largest current with every amplifier at full rated output, engine running, in amperes.</summary>
    [Figure("A", 134.2)]
    public required double PeakCurrentAmps { get; init; }

    /// <summary>The root-mean-square current that heats it, the worst of the operating cases, in amperes.</summary>
    [Figure("A", 134.2)]
    public required double ThermalCurrentAmps { get; init; }

    /// <summary>
    /// Resistance of conductors, joints and fuse in the case of the peak current, engine running, in milliohms. The conductor is
    /// then a little cooler than <c>temperatureCelsius</c> wherever the lowest supply voltage heats it more.
    /// </summary>
    [Figure("mohm", 2.31)]
    public required double ResistanceMilliohms { get; init; }

    /// <summary>Its resistance times its peak current, in volts.</summary>
    [Figure("V", 0.31)]
    public required double DropVolts { get; init; }

    /// <summary>Its resistance times its peak current squared, in watts.</summary>
    [Figure("W", 41.6)]
    public required double LossWatts { get; init; }

    /// <summary>
    /// Conductor temperature under the thermal current, the worst of the operating cases, by the heat balance, in degrees
    /// Celsius.
    /// </summary>
    [Figure("C", 88.1, Smallest = -60)]
    public required double TemperatureCelsius { get; init; }

    /// <summary>The current that it may carry without end, in amperes: the figure that the verdict rests on.</summary>
    [Figure("A", 169)]
    public required double AmpacityAmps { get; init; }

    /// <summary>The published table with its corrections, in amperes; absent where the table does not reach.</summary>
    [Figure("A", 169)]
    public double? AmpacityTableAmps { get; init; }

    /// <summary>The current that holds the conductor at the rating of its insulation by the heat balance, in amperes.</summary>
    [Figure("A", 188)]
    public required double AmpacityHeatBalanceAmps { get; init; }

    /// <summary>Thermal current over ampacity; above 1 is too much. Absent where the surroundings leave no ampacity.</summary>
    [Figure("1", 0.79)]
    public double? Utilisation { get; init; }

    /// <summary>The ids of the runs whose fuses guard it; empty for a return run or an unguarded one.</summary>
    [Example("main")]
    public required IReadOnlyList<string> GuardedBy { get; init; }

    /// <summary>The fuse at its start; absent where there is none.</summary>
    public FuseResult? Fuse { get; init; }

    /// <summary>The fuse at its end, for a run fed from both ends; absent where there is none.</summary>
    public FuseResult? FarFuse { get; init; }

    /// <summary>What parts two batteries on it; absent where nothing does.</summary>
    public IsolatorResult? Isolator { get; init; }

    /// <summary>
    /// The same run with its neighbours in size, metal and count; present where <c>include</c> asks and the work budget reached
    /// it.
    /// </summary>
    public IReadOnlyList<Alternative>? Alternatives { get; init; }
}
