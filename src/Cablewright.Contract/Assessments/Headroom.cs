using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>By how much all amplifiers could be larger, the wiring left as it is, until a rule fails.</summary>
public sealed record Headroom
{
    /// <summary>The largest factor on all ratings at which no rule fails; below 1 where one fails now, at most 16.</summary>
    [Figure("1", 1.3, Largest = 16)]
    public required double RatedOutputFactor { get; init; }

    /// <summary>The code of the finding that stops it; absent where none does up to 16.</summary>
    [Example("amplifier.drop-over-limit")]
    public string? LimitedBy { get; init; }

    /// <summary>What that points at: a JSON pointer into the build.</summary>
    [Example("/amplifiers/0")]
    public string? At { get; init; }
}
