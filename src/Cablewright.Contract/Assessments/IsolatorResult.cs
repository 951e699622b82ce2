using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>What parts two batteries on a run.</summary>
public sealed record IsolatorResult
{
    /// <summary>How it parts them.</summary>
    public required IsolatorKind Kind { get; init; }

    /// <summary>What it is rated for, in amperes; absent where that is not stated.</summary>
    [Figure("A", 40)]
    public double? RatedAmps { get; init; }

    /// <summary>
    /// The lasting current through it, or what a charger puts out, the worst of the operating cases, in amperes.
    /// </summary>
    [Figure("A", 32.5)]
    public required double ThroughAmps { get; init; }

    /// <summary>What it takes of the voltage at that current, in volts; 0 for a charger, which makes its own.</summary>
    [Figure("V", 0.02)]
    public required double LossVolts { get; init; }
}
