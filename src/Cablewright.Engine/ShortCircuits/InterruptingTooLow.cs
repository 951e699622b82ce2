using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class InterruptingTooLow() : InterruptingRule(
    ViolationKind.InterruptingTooLow, Severity.Fail, "fuse.interrupting-rating-too-low",
    "The fuse is not rated to interrupt what its batteries ask for.")
{
    /// <inheritdoc/>
    protected override bool IsAbout(FittedFuse fuse) => fuse.InterruptingRatingAmps is not null;
}
