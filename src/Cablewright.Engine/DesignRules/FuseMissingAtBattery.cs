using Cablewright.Engine.Builds;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class FuseMissingAtBattery() : EndRule(
    ViolationKind.FuseMissingAtBattery, Severity.Fail, "fuse.missing-at-battery", rules => rules.Fuse.AtSource,
    "A battery feeds the run with no fuse between.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, RunEnd end) =>
        facts.IsUnfusedAtBattery(end) && !facts.IsAlternatorCable(end.Run) ? At(end) : null;
}
