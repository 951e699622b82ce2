using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class InterruptingTooLow() : FaultRule(
    ViolationKind.InterruptingTooLow, Severity.Fail, "fuse.interrupting-rating-too-low", rules => rules.Fuse.InterruptingRating,
    "The fuse cannot interrupt the largest short-circuit current.")
{
    /// <inheritdoc/>
    public override Violation? Check(FaultFacts facts, RunEnd end, FittedFuse fuse)
    {
        double fault = facts.LargestAmpsAt(end);
        return fuse.InterruptingRatingAmps is not null && Significant.Exceeds(fault, fuse.InterruptsAmps)
            ? At(end, fault, fuse.InterruptsAmps)
            : null;
    }
}
