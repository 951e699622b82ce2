using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;

namespace Cablewright.Engine.Wiring;

/// <summary>What every run is made of and where the fuses stand: the given and the chosen together.</summary>
internal sealed class Design(ConductorChoice[] conductors, FittedFuse?[] near, FittedFuse?[] far)
{
    /// <summary>The conductor of each run.</summary>
    public ConductorChoice[] Conductors { get; } = conductors;

    /// <summary>The fuse at each run's start.</summary>
    public FittedFuse?[] Near { get; } = near;

    /// <summary>The fuse at each run's end.</summary>
    public FittedFuse?[] Far { get; } = far;

    /// <summary>The fuse at an end of a run.</summary>
    public FittedFuse? FuseAt(RunEnd end) => (end.IsFar ? Far : Near)[end.Run];

    /// <summary>The rating of the fuse at an end of a run, its parallel parts together; infinite where there is none.</summary>
    public double TotalRatingAmpsAt(RunEnd end) =>
        FuseAt(end)?.TotalRatingAmps(Conductors[end.Run].Count) ?? double.PositiveInfinity;

    /// <summary>Resistance of the fuses of a run, in ohms.</summary>
    public double FuseOhms(int run) =>
        (Near[run]?.Ohms(Conductors[run].Count) ?? 0) + (Far[run]?.Ohms(Conductors[run].Count) ?? 0);

    /// <summary>The same conductors with other fuses.</summary>
    public Design With(FittedFuse?[] nearFuses, FittedFuse?[] farFuses) => new(Conductors, nearFuses, farFuses);

    /// <summary>Whether the same fuses stand in another design.</summary>
    public bool HasFusesOf(Design other) => Near.AsSpan().SequenceEqual(other.Near) && Far.AsSpan().SequenceEqual(other.Far);
}
