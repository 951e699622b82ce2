using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class DropOverLimit() : AmplifierRule(
    ViolationKind.DropOverLimit, Severity.Fail, "amplifier.drop-over-limit", rules => rules.Drop.Limit,
    "The voltage drop over the conductors to the amplifier and back is above the limit.")
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Performance;

    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int amplifier)
    {
        double limit = facts.Build.Drop.HardVolts * facts.Circuit.SourceShareOf(amplifier);
        double drop = facts.ConductorVolts(amplifier, limit);
        return Significant.Exceeds(drop, limit) ? By(amplifier, drop, limit) : null;
    }
}
