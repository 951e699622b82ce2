using Cablewright.Engine.Completion;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class DropHigh() : DropRule(
    ViolationKind.DropHigh, Severity.Caution, "amplifier.drop-high", rules => rules.Drop.Clean,
    "The voltage drop over the conductors to the amplifier and back is more than music should lose.")
{
    /// <inheritdoc/>
    protected override double LimitOf(DropLimits drop) => drop.CleanVolts;

    /// <inheritdoc/>
    protected override double NextLimitOf(DropLimits drop) => drop.HardVolts;
}
