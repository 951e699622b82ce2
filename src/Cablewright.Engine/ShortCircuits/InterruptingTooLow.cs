using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class InterruptingTooLow() : FaultRule(
    ViolationKind.InterruptingTooLow, Severity.Fail, "fuse.interrupting-rating-too-low", rules => rules.Fuse.InterruptingRating,
    "The fuse is not rated to interrupt what its batteries ask for.")
{
    /// <inheritdoc/>
    public override Violation? Check(FaultFacts facts, RunEnd end, FittedFuse fuse)
    {
        if (fuse.InterruptingRatingAmps is null) return null;
        double needed = RequiredInterrupting.Of(facts.Model, end, facts.LargestAmpsAt(end));
        if (!Significant.Exceeds(needed, fuse.InterruptsAmps)) return null;
        Violation violation = At(end, needed, fuse.InterruptsAmps);
        return RequiredInterrupting.IsUsualPlugIn(facts.Model, end, fuse) ? violation with { Severity = Severity.Info }
            : violation;
    }
}
