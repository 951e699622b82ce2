using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>The conductor is smaller than the one before it, and the fuses before it let through more than it bears.</summary>
internal sealed class FuseMissingAtReduction() : EndRule(
    ViolationKind.FuseMissingAtReduction, Severity.Fail, "fuse.missing-at-reduction", "fuse.at-reduction",
    "The conductor is smaller than the one before it, and the fuses before it let through more than it bears.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, RunEnd end) =>
        facts.Design.FuseAt(end) is null && facts.TooMuchEntering(end) is { } entering
            && Significant.Exceeds(entering, facts.AmpacityOfAll(end.Run))
                ? At(end, entering, facts.AmpacityOfAll(end.Run))
                : null;
}
