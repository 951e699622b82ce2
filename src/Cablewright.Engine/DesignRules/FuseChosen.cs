using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>A fuse was left out and one is needed: it must be fitted.</summary>
/// <remarks>Where no fuse fits a run, asking for one would contradict that.</remarks>
internal sealed class FuseChosen() : FuseRule(
    ViolationKind.FuseChosen, Severity.Caution, "fuse.must-be-fitted", "fuse.at-source",
    "A fuse was left out and one is needed: it must be fitted.")
{
    private static readonly NoFuseFits NoneFits = new();

    /// <inheritdoc/>
    protected override Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse)
    {
        if (fuse.Decided is Decided.Given) return null;
        bool noneFits = RunEnd.Of(end.Run).Any(each => NoneFits.Check(facts, each) is not null);
        return noneFits ? null : At(end, fuse.RatingAmps);
    }
}
