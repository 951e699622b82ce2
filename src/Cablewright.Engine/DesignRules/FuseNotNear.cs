using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class FuseNotNear() : FuseRule(
    ViolationKind.FuseNotNear, Severity.Info, "fuse.not-near-source", rules => rules.Fuse.NearDistance,
    "The fuse is within the limit, but stricter rules ask for it nearer.")
{
    /// <inheritdoc/>
    protected override Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse)
    {
        double most = facts.Build.Ruleset.Fuse.MaxDistance.Value, close = FigureIn(facts.Build.Ruleset).Value;
        if (fuse.Decided is Decided.Chosen || !facts.Topology.IsAtBattery(end)) return null;
        return Significant.Exceeds(fuse.DistanceMetres, close) && !Significant.Exceeds(fuse.DistanceMetres, most)
            ? At(end, fuse.DistanceMetres, close)
            : null;
    }
}
