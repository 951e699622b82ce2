using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class FuseAboveConductor() : AboveAmpacityRule(
    ViolationKind.FuseAboveConductor, Severity.Fail, "fuse.above-conductor-rating", rules => rules.Fuse.MaxOfAmpacity,
    "The fuse lets through more than the conductor behind it is rated for.")
{
    /// <inheritdoc/>
    protected override bool IsAbout(FittedFuse? own) => own is { Decided: Decided.Given };
}
