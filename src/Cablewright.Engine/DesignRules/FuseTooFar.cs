using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class FuseTooFar() : FuseRule(
    ViolationKind.FuseTooFar, Severity.Fail, "fuse.too-far-from-source", rules => rules.Fuse.MaxDistance,
    "Too much conductor lies unguarded between the source and its fuse.")
{
    /// <inheritdoc/>
    protected override Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse)
    {
        double most = FigureIn(facts.Build.Ruleset).Value;
        if (fuse.Decided is Decided.Chosen || !Significant.Exceeds(fuse.DistanceMetres, most)) return null;
        Violation violation = At(end, fuse.DistanceMetres, most);
        return facts.Topology.IsAtBattery(end) ? violation : violation with { Severity = Severity.Caution };
    }
}
