using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>A fuse.</summary>
public sealed record FuseResult
{
    /// <summary>Given by the build or chosen by the assessment; a chosen fuse must be fitted.</summary>
    public required Decided Decided { get; init; }

    /// <summary>Rated current, in amperes.</summary>
    [Figure("A", 150)]
    public required double RatingAmps { get; init; }

    /// <summary>The family it belongs to.</summary>
    public required FuseFamilyName Family { get; init; }

    /// <summary>Conductor between the end of the run and the fuse, in metres.</summary>
    [Figure("m", 0.3048)]
    public required double DistanceMetres { get; init; }

    /// <summary>Each conductor of a parallel run has a fuse of this rating of its own.</summary>
    [Example(false)]
    public required bool PerConductor { get; init; }

    /// <summary>
    /// What it and its own terminations take of the voltage at the run's peak current, in volts; part of the run's.
    /// </summary>
    [Figure("V", 0.062)]
    public required double DropVolts { get; init; }

    /// <summary>The heat that it and its own terminations make at that current, in watts; part of the run's.</summary>
    [Figure("W", 5.8)]
    public required double LossWatts { get; init; }

    /// <summary>
    /// The largest short-circuit current where it stands: every battery full, the alternator besides, cold conductors, in
    /// amperes.
    /// </summary>
    [Figure("A", 4560)]
    public double? LargestFaultAmps { get; init; }

    /// <summary>
    /// The short-circuit current that it finds hardest to interrupt in time: one battery alone, hot conductors, back over the
    /// body, in amperes. Absent where it guards nothing.
    /// </summary>
    [Figure("A", 1060)]
    public double? SmallestFaultAmps { get; init; }

    /// <summary>
    /// The longest time that it may take to open on that current, in seconds. Absent where its opening is not certain.
    /// </summary>
    [Figure("s", 1.43)]
    public double? OpensSeconds { get; init; }

    /// <summary>How long the conductor behind it withstands that current, in seconds. Absent where it is never hurt.</summary>
    [Figure("s", 31.3)]
    public double? ConductorWithstandSeconds { get; init; }
}
