using Cablewright.Contract.Schema;
using Cablewright.Contract.Words;

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
}
