using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>What becomes of the verdict when what was stated or assumed is a little off.</summary>
public sealed record Robustness
{
    /// <summary>The worst verdict over all corners of the tolerances, the wiring left as it is.</summary>
    public required Verdict VerdictAcrossTolerances { get; init; }

    /// <summary>The smallest set of tolerances that leads there, in words; absent where the verdict stays.</summary>
    [Example("efficiency 5 % lower and lengths 5 % longer")]
    public string? TippedBy { get; init; }

    /// <summary>The code of the finding that it leads to.</summary>
    [Example("amplifier.drop-over-limit")]
    public string? TipsInto { get; init; }
}
