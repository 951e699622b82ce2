using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class FuseBelowLoad() : FuseRule(
    ViolationKind.FuseBelowLoad, Severity.Fail, "fuse.below-load", rules => rules.Fuse.MinOfLoad,
    "The fuse will open in normal use.")
{
    /// <inheritdoc/>
    protected override Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse)
    {
        double amps = facts.Envelope.ThermalAmps[end.Run];
        double continuous = fuse.ContinuousAmps(facts.Design.Conductors[end.Run].Count);
        return Significant.Exceeds(amps, continuous) ? At(end, amps, continuous) : null;
    }
}
