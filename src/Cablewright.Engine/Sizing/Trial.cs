using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.ShortCircuits;

namespace Cablewright.Engine.Sizing;

/// <summary>A choice that was worked out in full and keeps a goal and the rules.</summary>
/// <param name="Evaluation">The choice and what it leads to.</param>
/// <param name="Faults">What short circuits and overloads would do to it.</param>
/// <param name="Weight">What the chosen conductors weigh in the objective.</param>
internal sealed record Trial(DesignEvaluation Evaluation, FaultReport Faults, double Weight)
{
    private const double HalfStep = 5e-7;

    /// <summary>A choice that weighs less than this is lighter by what six digits show.</summary>
    public double Below { get; } = Significant.Round(Weight) * (1 - HalfStep);

    /// <summary>How much less another may weigh at most, as a share, where none weighs less than a bound.</summary>
    public double GapTo(double bound) => bound >= Below ? 0 : Math.Max(0, 1 - bound / Weight);
}
