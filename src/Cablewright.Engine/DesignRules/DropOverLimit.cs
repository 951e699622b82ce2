using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class DropOverLimit() : AmplifierRule(
    ViolationKind.DropOverLimit, Severity.Fail, "amplifier.drop-over-limit", rules => rules.Drop.Limit,
    "More voltage is lost on the way to the amplifier and back than the limit allows.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int amplifier)
    {
        double drop = facts.Circuit.LostVolts(amplifier, facts.Envelope);
        double limit = facts.Build.Drop.HardVolts * facts.Circuit.SourceShareOf(amplifier);
        return Significant.Exceeds(drop, limit) ? By(amplifier, drop, limit) : null;
    }
}
