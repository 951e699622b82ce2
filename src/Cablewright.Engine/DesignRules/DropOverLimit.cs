using Cablewright.Engine.Completion;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class DropOverLimit() : DropRule(
    ViolationKind.DropOverLimit, Severity.Fail, "amplifier.drop-over-limit", rules => rules.Drop.Limit,
    "The voltage drop over the conductors to the amplifier and back is above the limit.")
{
    /// <inheritdoc/>
    protected override double LimitOf(DropLimits drop) => drop.HardVolts;
}
