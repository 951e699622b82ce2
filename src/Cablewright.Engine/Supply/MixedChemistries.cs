using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

internal sealed class MixedChemistries() : SupplyRule(
    ViolationKind.MixedChemistries, Severity.Caution, "supply.mixed-chemistries", rules => rules.Supply.OneChemistry,
    "Lead-acid and lithium batteries are tied together without a charger between them.")
{
    /// <inheritdoc/>
    public override IEnumerable<Violation> Check(SupplyFacts facts)
    {
        foreach (SupplyGroup group in facts.Balance.Running)
        {
            int lithium = group.Batteries.FirstOrDefault(IsLithium, -1);
            int lead = group.Batteries.FirstOrDefault(battery => !IsLithium(battery), -1);
            if (lithium >= 0 && lead >= 0) yield return By(lithium) with { Other = lead };
        }

        bool IsLithium(int battery) => facts.Build.Batteries[battery].Chemistry is Chemistry.LiFePo4;
    }
}
