using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class NoFuseFits() : AboveAmpacityRule(
    ViolationKind.NoFuseFits, Severity.Fail, "run.no-fuse-fits", rules => rules.Fuse.MaxOfAmpacity,
    "No standard fuse carries the load and still protects the conductor: the conductor is too small.")
{
    /// <inheritdoc/>
    protected override bool IsAbout(FittedFuse? own) => own is { Decided: Decided.Chosen };
}
