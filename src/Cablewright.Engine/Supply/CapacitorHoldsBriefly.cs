using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

internal sealed class CapacitorHoldsBriefly() : SupplyRule(
    ViolationKind.CapacitorHoldsBriefly, Severity.Info, "supply.capacitor-holds-briefly", rules => rules.Supply.CapacitorHelp,
    "The capacitor is empty long before a bass note ends.")
{
    /// <inheritdoc/>
    public override IEnumerable<Violation> Check(SupplyFacts facts)
    {
        double burst = facts.Build.Ruleset.Supply.Burst.Value;
        for (int capacitor = 0; capacitor < facts.Build.Capacitors.Count; capacitor++)
        {
            double holds = Stiffening.Of(facts.Build, facts.Balance, capacitor).HoldsMilliseconds;
            if (Significant.Exceeds(burst, holds)) yield return By(capacitor, holds, burst);
        }
    }
}
