using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class FuseClearsTooLate() : ClearingRule(
    ViolationKind.FuseClearsTooLate, Severity.Fail, "fuse.opens-too-late", rules => rules.Fuse.OpensInTime,
    "The conductor is hurt before the fuse opens on the smallest short-circuit current.")
{
    /// <inheritdoc/>
    public override Violation? Check(FaultFacts facts, Clearing clearing) =>
        clearing is { ClearingSeconds: { } seconds, IsInTime: false }
            ? AsFarAsKnown(By(clearing.Run, seconds, clearing.WithstandSeconds), facts, clearing, clearing.Strain)
            : null;
}
