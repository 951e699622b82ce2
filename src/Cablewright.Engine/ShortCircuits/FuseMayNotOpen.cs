using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class FuseMayNotOpen() : ClearingRule(
    ViolationKind.FuseMayNotOpen, Severity.Fail, "fuse.may-not-open", rules => rules.Fuse.OpensInTime,
    "The smallest short-circuit current is too small for the fuse to open with certainty.")
{
    /// <inheritdoc/>
    public override Violation? Check(FaultFacts facts, Clearing clearing)
    {
        if (clearing.ClearingSeconds is not null) return null;
        double certain = clearing.Device.Fuse.Band.CertainFrom * clearing.Device.TotalRatingAmps;
        double share = clearing.DeviceAmps / clearing.Device.TotalRatingAmps;
        return AsFarAsKnown(
            By(clearing.Run, clearing.DeviceAmps, certain), facts, clearing,
            Significant.Exceeds(facts.Build.Ruleset.Fuse.CertainOpening.Value, share) ? double.PositiveInfinity : 1);
    }
}
