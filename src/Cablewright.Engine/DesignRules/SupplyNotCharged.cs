using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class SupplyNotCharged() : AmplifierRule(
    ViolationKind.SupplyNotCharged, Severity.Caution, "amplifier.supply-not-charged", rules => rules.Supply.ChargingReach,
    "The amplifier hangs on a battery that nothing charges.")
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Supply;

    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int amplifier) =>
        facts.Circuit.FeedsAlone(amplifier) && !facts.Circuit.IsFedByCharger(amplifier) ? By(amplifier) : null;
}
