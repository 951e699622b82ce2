using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class InterruptingUnknown() : InterruptingRule(
    ViolationKind.InterruptingUnknown, Severity.Caution, "fuse.interrupting-rating-unknown",
    "The fuse family is known to interrupt less than its batteries ask for, and the part's "
    + "own rating is not stated.")
{
    /// <inheritdoc/>
    protected override bool IsAbout(FittedFuse fuse) => fuse.InterruptingRatingAmps is null;
}
