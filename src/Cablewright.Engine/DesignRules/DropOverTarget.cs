using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class DropOverTarget() : AmplifierRule(
    ViolationKind.DropOverTarget, Severity.Caution, "amplifier.drop-over-target", rules => rules.Drop.Target,
    "More voltage is lost on the way to the amplifier and back than the design target allows.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int amplifier)
    {
        double drop = facts.Circuit.LostVolts(amplifier, facts.Envelope), share = facts.Circuit.SourceShareOf(amplifier);
        double target = facts.Build.Drop.TargetVolts * share;
        bool isOverLimit = Significant.Exceeds(drop, facts.Build.Drop.HardVolts * share);
        return !isOverLimit && Significant.Exceeds(drop, target) ? By(amplifier, drop, target) : null;
    }
}
