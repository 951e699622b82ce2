using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class FuseNotStandard() : FuseRule(
    ViolationKind.FuseNotStandard, Severity.Caution, "fuse.not-standard-rating", rules => rules.Fuse.StandardRating,
    "The fuse family is not made in this rating.")
{
    /// <inheritdoc/>
    protected override Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse) =>
        fuse.Family.IsMadeIn(fuse.RatingAmps) ? null : At(end, fuse.RatingAmps);
}
