using Cablewright.Engine.Completion;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class DropOverTarget() : DropRule(
    ViolationKind.DropOverTarget, Severity.Info, "amplifier.drop-over-target", rules => rules.Drop.Target,
    "The voltage drop over the conductors to the amplifier and back is above the design target.")
{
    /// <inheritdoc/>
    protected override double LimitOf(DropLimits drop) => drop.TargetVolts;

    /// <inheritdoc/>
    protected override double NextLimitOf(DropLimits drop) => drop.CleanVolts;
}
