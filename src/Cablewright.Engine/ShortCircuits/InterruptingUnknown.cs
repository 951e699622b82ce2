using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class InterruptingUnknown() : FaultRule(
    ViolationKind.InterruptingUnknown, Severity.Caution, "fuse.interrupting-rating-unknown",
    rules => rules.Fuse.InterruptingRating,
    "The largest short-circuit current is above what the fuse family is known to interrupt, and the part's "
    + "own rating is not stated.")
{
    /// <inheritdoc/>
    public override Violation? Check(FaultFacts facts, RunEnd end, FittedFuse fuse)
    {
        double fault = facts.LargestAmpsAt(end);
        return fuse.InterruptingRatingAmps is null && Significant.Exceeds(fault, fuse.InterruptsAmps)
            ? At(end, fault, fuse.InterruptsAmps)
            : null;
    }
}
