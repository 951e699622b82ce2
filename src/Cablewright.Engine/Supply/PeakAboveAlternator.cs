using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

internal sealed class PeakAboveAlternator() : SupplyRule(
    ViolationKind.PeakAboveAlternator, Severity.Info, "supply.peak-above-alternator", rules => rules.Supply.AverageOfAvailable,
    "At full output the system draws more than the alternator has left; the battery gives the rest for as long.")
{
    /// <inheritdoc/>
    public override IEnumerable<Violation> Check(SupplyFacts facts)
    {
        if (!facts.Build.Supply.IsConverter && facts.Available is { } left
            && !Significant.Exceeds(facts.Balance.AverageAmps, left) && Significant.Exceeds(facts.Balance.PeakAmps, left))
            yield return By(0, facts.Balance.PeakAmps, left);
    }
}
