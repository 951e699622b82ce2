using Cablewright.Engine.Builds;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class AlternatorCableUnprotected() : EndRule(
    ViolationKind.AlternatorCableUnprotected, Severity.Caution, "fuse.missing-at-alternator-cable",
    rules => rules.Alternator.CableGuard,
    "The alternator's own cable has no fuse at the battery.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, RunEnd end) =>
        facts.IsUnfusedAtBattery(end) && facts.IsAlternatorCable(end.Run) ? At(end) : null;
}
