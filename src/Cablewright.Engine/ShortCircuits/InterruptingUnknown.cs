using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class InterruptingUnknown() : FaultRule(
    ViolationKind.InterruptingUnknown, Severity.Caution, "fuse.interrupting-rating-unknown",
    rules => rules.Fuse.InterruptingRating,
    "The fuse family is known to interrupt less than its batteries ask for, and the part's "
    + "own rating is not stated.")
{
    /// <inheritdoc/>
    public override Violation? Check(FaultFacts facts, RunEnd end, FittedFuse fuse)
    {
        if (fuse.InterruptingRatingAmps is not null) return null;
        double needed = RequiredInterrupting.Of(facts.Model, end, facts.LargestAmpsAt(end));
        if (!Significant.Exceeds(needed, fuse.InterruptsAmps)) return null;
        Violation violation = At(end, needed, fuse.InterruptsAmps);
        return RequiredInterrupting.IsUsualPlugIn(facts.Model, end, fuse) ? violation with { Severity = Severity.Info }
            : violation;
    }
}
