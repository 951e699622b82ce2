using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class DropOverTarget() : AmplifierRule(
    ViolationKind.DropOverTarget, Severity.Info, "amplifier.drop-over-target", rules => rules.Drop.Target,
    "The voltage drop over the conductors to the amplifier and back is above the design target.")
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Performance;

    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int amplifier)
    {
        double share = facts.Circuit.SourceShareOf(amplifier), target = facts.Build.Drop.TargetVolts * share;
        double drop = facts.ConductorVolts(amplifier, target);
        return Significant.Exceeds(drop, target) && !Significant.Exceeds(drop, facts.Build.Drop.CleanVolts * share)
            ? By(amplifier, drop, target)
            : null;
    }
}
