using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class OutsideSupplyRange() : AmplifierRule(
    ViolationKind.OutsideSupplyRange, Severity.Fail, "amplifier.outside-supply-range", rules => rules.Load.HighestSupply,
    "The amplifier's supply is outside the range that it works in.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int amplifier)
    {
        Amplifier stated = facts.Build.Stated.Amplifiers[amplifier];
        double highest = stated.HighestSupplyVolts ?? facts.Build.Ruleset.Load.HighestSupply.Value;
        double lowest = stated.LowestSupplyVolts ?? facts.Build.Ruleset.Load.LowestSupply.Value;
        double source = facts.Circuit.SourceVoltsOf(amplifier), terminal = facts.Envelope.TerminalVolts[amplifier];
        if (Significant.Exceeds(source, highest)) return By(amplifier, source, highest);
        return Significant.Exceeds(lowest, terminal) ? By(amplifier, terminal, lowest) : null;
    }
}
