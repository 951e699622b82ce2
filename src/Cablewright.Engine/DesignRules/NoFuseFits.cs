using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>No standard fuse carries the load and still protects the conductor: the conductor is too small.</summary>
internal sealed class NoFuseFits() : EndRule(
    ViolationKind.NoFuseFits, Severity.Fail, "run.no-fuse-fits", "fuse.max-of-ampacity",
    "No standard fuse carries the load and still protects the conductor: the conductor is too small.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, RunEnd end) =>
        facts.Design.FuseAt(end) is { Decided: Decided.Chosen } && facts.TooMuchEntering(end) is { } entering
            && Significant.Exceeds(entering, facts.AmpacityOfAll(end.Run))
                ? At(end, entering, facts.AmpacityOfAll(end.Run))
                : null;
}
