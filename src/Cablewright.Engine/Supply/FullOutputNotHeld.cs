using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

internal sealed class FullOutputNotHeld() : SupplyRule(
    ViolationKind.FullOutputNotHeld, Severity.Caution, "supply.full-output-not-held", rules => rules.Supply.FullOutputVoltage,
    "Alternator and batteries together cannot hold full output: the amplifiers cut out.")
{
    /// <inheritdoc/>
    public override IEnumerable<Violation> Check(SupplyFacts facts)
    {
        if (facts[SupplyCaseName.AtSpeed] is { LowestVolts: null }) yield return By(0);
    }
}
