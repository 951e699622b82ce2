using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

internal sealed class AverageAboveIdle() : SupplyRule(
    ViolationKind.AverageAboveIdle, Severity.Info, "supply.average-above-idle", rules => rules.Supply.AverageOfAvailable,
    "At idle the system draws more than the alternator has left.")
{
    /// <inheritdoc/>
    public override IEnumerable<Violation> Check(SupplyFacts facts)
    {
        if (facts.Build.Supply is not { IsConverter: false, HotAmps: not null, IdleAmps: { } idle }) yield break;
        double left = Math.Max(0, facts.Balance.Available(idle));
        if (Significant.Exceeds(facts.Balance.AverageAmps, left)) yield return By(0, facts.Balance.AverageAmps, left);
    }
}
