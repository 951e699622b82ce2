using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class FuseBelowLoad() : FuseRule(
    ViolationKind.FuseBelowLoad, Severity.Fail, "fuse.below-load", rules => rules.Fuse.MinOfLoad,
    "The continuous current is above what the fuse carries continuously.")
{
    /// <inheritdoc/>
    protected override Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse)
    {
        double amps = facts.ContinuousAmpsAt(end);
        int count = facts.Design.Conductors[end.Run].Count;
        double continuous = fuse.ContinuousAmps(count);
        if (!Significant.Exceeds(amps, continuous)) return null;
        Violation violation = At(end, amps, continuous);
        return Significant.Exceeds(amps, fuse.TotalRatingAmps(count)) ? violation
            : violation with { Severity = Severity.Caution };
    }
}
