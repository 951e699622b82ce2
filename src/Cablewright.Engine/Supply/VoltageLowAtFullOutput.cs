using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

internal sealed class VoltageLowAtFullOutput() : SupplyRule(
    ViolationKind.VoltageLowAtFullOutput, Severity.Caution, "supply.voltage-low-at-full-output",
    rules => rules.Supply.FullOutputVoltage,
    "At full output the batteries have to help and an amplifier's voltage falls low.")
{
    /// <inheritdoc/>
    public override IEnumerable<Violation> Check(SupplyFacts facts)
    {
        double lowest = FigureIn(facts.Build.Ruleset).Value * facts.Build.NominalFactor;
        if (facts[SupplyCaseName.AtSpeed] is { LowestVolts: { } volts } && Significant.Exceeds(lowest, volts))
            yield return By(0, volts, lowest);
    }
}
