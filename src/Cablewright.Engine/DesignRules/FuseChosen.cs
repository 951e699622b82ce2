using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <remarks>Where no fuse fits a run, asking for one would contradict that.</remarks>
internal sealed class FuseChosen() : FuseRule(
    ViolationKind.FuseChosen, Severity.Info, "fuse.must-be-fitted", rules => rules.Fuse.AtSource,
    "A fuse was left out and one is needed: it must be fitted.")
{
    private static readonly NoFuseFits NoneFits = new();

    /// <inheritdoc/>
    protected override Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse)
    {
        if (fuse.Decided is Decided.Given) return null;
        return (NoneFits.Check(facts, end) ?? NoneFits.Check(facts, end.Other)) is null ? At(end, fuse.RatingAmps) : null;
    }
}
