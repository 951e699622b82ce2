using Cablewright.Engine.Builds;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>The alternator's own cable has no fuse at the battery.</summary>
internal sealed class AlternatorCableUnprotected() : EndRule(
    ViolationKind.AlternatorCableUnprotected, Severity.Caution, "fuse.missing-at-alternator-cable", "alternator.cable-guard",
    "The alternator's own cable has no fuse at the battery.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, RunEnd end) =>
        facts.Design.FuseAt(end) is null && facts.Topology.IsAtBattery(end) && facts.IsAlternatorCable(end.Run) ? At(end) : null;
}
