using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class FuseHotBelowLoad() : FuseRule(
    ViolationKind.FuseHotBelowLoad, Severity.Caution, "fuse.below-load-when-hot", rules => rules.Fuse.HotMinOfLoad,
    "The fuse carries the load at room temperature, but not continuously where it stands.")
{
    /// <inheritdoc/>
    protected override Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse)
    {
        double amps = facts.ContinuousAmpsAt(end);
        double continuous = fuse.ContinuousAmps(facts.Design.Conductors[end.Run].Count), hot = continuous * fuse.HotShare;
        return !Significant.Exceeds(amps, continuous) && Significant.Exceeds(amps, hot) ? At(end, amps, hot) : null;
    }
}
