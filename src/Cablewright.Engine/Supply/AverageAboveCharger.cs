using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

/// <remarks>A group behind a charger is named by the charger's run.</remarks>
internal sealed class AverageAboveCharger() : SupplyRule(
    ViolationKind.AverageAboveCharger, Severity.Caution, "supply.average-above-charger", rules => rules.Supply.AverageOfAvailable,
    "What hangs on a battery draws more on average than the charger before it gives: that battery empties.")
{
    /// <inheritdoc/>
    public override bool IsOfRun => true;

    /// <inheritdoc/>
    public override IEnumerable<Violation> Check(SupplyFacts facts)
    {
        foreach (SupplyGroup group in facts.Balance.BehindChargers)
        {
            double asked = facts.Balance.AverageOf(group), given = facts.Balance.ChargedAmps(group);
            if (Significant.Exceeds(asked, given)) yield return By(group.ChargersTo[0], asked, given);
        }
    }
}
