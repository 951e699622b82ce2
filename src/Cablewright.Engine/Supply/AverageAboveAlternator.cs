using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

internal sealed class AverageAboveAlternator() : SupplyRule(
    ViolationKind.AverageAboveAlternator, Severity.Caution, "supply.average-above-alternator",
    rules => rules.Supply.AverageOfAvailable,
    "On its programme the system draws more than the alternator has left: the battery empties while driving.")
{
    /// <inheritdoc/>
    public override IEnumerable<Violation> Check(SupplyFacts facts)
    {
        if (facts.Available is { } left && Significant.Exceeds(facts.Balance.AverageAmps, left))
            yield return By(0, facts.Balance.AverageAmps, left);
    }
}
