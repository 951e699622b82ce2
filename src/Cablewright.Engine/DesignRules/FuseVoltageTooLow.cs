using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class FuseVoltageTooLow() : FuseRule(
    ViolationKind.FuseVoltageTooLow, Severity.Fail, "fuse.voltage-rating-too-low", rules => rules.Fuse.VoltageRating,
    "The fuse is not rated for the highest system voltage.")
{
    /// <inheritdoc/>
    protected override Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse) =>
        Significant.Exceeds(facts.Build.HighestSupplyVolts, fuse.VoltageRatingVolts)
            ? At(end, fuse.VoltageRatingVolts, facts.Build.HighestSupplyVolts)
            : null;
}
