using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class DropHigh() : AmplifierRule(
    ViolationKind.DropHigh, Severity.Caution, "amplifier.drop-high", rules => rules.Drop.Clean,
    "The voltage drop over the conductors to the amplifier and back is more than music should lose.")
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Performance;

    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int amplifier)
    {
        double share = facts.Circuit.SourceShareOf(amplifier), clean = facts.Build.Drop.CleanVolts * share;
        double drop = facts.ConductorVolts(amplifier, clean);
        return Significant.Exceeds(drop, clean) && !Significant.Exceeds(drop, facts.Build.Drop.HardVolts * share)
            ? By(amplifier, drop, clean)
            : null;
    }
}
