using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class FuseMissingAtReduction() : AboveAmpacityRule(
    ViolationKind.FuseMissingAtReduction, Severity.Fail, "fuse.missing-at-reduction", rules => rules.Fuse.AtReduction,
    "The conductor is smaller than the one before it, and the fuses before it let through more than it is rated for.")
{
    /// <inheritdoc/>
    protected override bool IsAbout(FittedFuse? own) => own is null;
}
