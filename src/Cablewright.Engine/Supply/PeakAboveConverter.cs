using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

internal sealed class PeakAboveConverter() : SupplyRule(
    ViolationKind.PeakAboveConverter, Severity.Caution, "supply.peak-above-converter", rules => rules.Supply.ConverterLimit,
    "At full output more is drawn than the vehicle's converter gives, and it may shut down.")
{
    /// <inheritdoc/>
    public override IEnumerable<Violation> Check(SupplyFacts facts)
    {
        if (facts.Build.Supply.IsConverter && facts.Available is { } left
            && !Significant.Exceeds(facts.Balance.AverageAmps, left) && Significant.Exceeds(facts.Balance.PeakAmps, left))
            yield return By(0, facts.Balance.PeakAmps, left);
    }
}
