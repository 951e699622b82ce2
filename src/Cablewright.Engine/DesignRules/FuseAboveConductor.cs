using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>The fuse lets through more than the conductor behind it bears.</summary>
internal sealed class FuseAboveConductor() : EndRule(
    ViolationKind.FuseAboveConductor, Severity.Fail, "fuse.above-conductor-rating", "fuse.max-of-ampacity",
    "The fuse lets through more than the conductor behind it bears.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, RunEnd end) =>
        facts.Design.FuseAt(end) is { Decided: Decided.Given } && facts.TooMuchEntering(end) is { } entering
            && Significant.Exceeds(entering, facts.AmpacityOfAll(end.Run))
                ? At(end, entering, facts.AmpacityOfAll(end.Run))
                : null;
}
