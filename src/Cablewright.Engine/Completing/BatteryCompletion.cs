using Cablewright.Engine.Builds;
using Cablewright.Engine.Findings;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Completing;

/// <summary>Fills in what is not stated of the batteries.</summary>
internal static class BatteryCompletion
{
    public static IReadOnlyList<CompleteBattery> Complete(IReadOnlyList<Battery> stated, double nominalFactor, AssumptionList assumptions)
    {
        if (stated.Count > 0) return [.. stated.Select((battery, index) => Complete(battery, index, stated.Count > 1, nominalFactor, assumptions))];
        assumptions.Note(
            "/vehicle/batteries", $"one, called \"{PlaceNames.AssumedBattery}\"", "no battery is listed", "every vehicle has one");
        return [Complete(new Battery { Id = PlaceNames.AssumedBattery }, 0, false, nominalFactor, assumptions)];
    }

    /// <summary>Only where there are several does a battery's own voltage and resistance enter the circuit.</summary>
    private static CompleteBattery Complete(Battery battery, int index, bool matters, double nominalFactor, AssumptionList assumptions)
    {
        Ruleset ruleset = assumptions.Ruleset;
        string at = $"/vehicle/batteries/{index}";
        Chemistry chemistry = battery.Chemistry ?? Chemistry.Flooded;
        if (matters && battery.Chemistry is null)
            assumptions.Note(at + "/chemistry", TradeWords.Word(chemistry), "the chemistry is not stated", "the usual starter battery");
        Figure halfCharged = ruleset["supply.half-charged-" + TradeWords.Word(chemistry)];
        double ohms = battery.InternalOhms ?? (battery.ColdCrankingAmps is { } cranking
            ? ruleset["supply.cranking-test-fall"].Value * nominalFactor / cranking
            : FromCapacity(battery, at, chemistry, matters, nominalFactor, assumptions));
        if (matters && battery.InternalOhms is null && battery.ColdCrankingAmps is not null)
        {
            assumptions.Note(
                at + "/internalResistance", Phrase.Milliohms(ohms),
                "from the cold-cranking test, an upper bound", ruleset["supply.cranking-test-fall"].Citation);
        }

        return new CompleteBattery(battery.Id, ohms, halfCharged.Value * nominalFactor, ruleset["supply.strap-resistance"].Value);
    }

    private static double FromCapacity(
        Battery battery, string at, Chemistry chemistry, bool matters, double nominalFactor, AssumptionList assumptions)
    {
        Ruleset ruleset = assumptions.Ruleset;
        double capacity = battery.CapacityAmpHours ?? ruleset["supply.battery-capacity"].Value;
        Figure product = ruleset[chemistry is Chemistry.LiFePo4 ? "supply.lifepo4-resistance-capacity" : "supply.lead-acid-resistance-capacity"];
        double ohms = product.Value * nominalFactor / capacity;
        if (matters)
        {
            assumptions.Note(
                at + "/internalResistance", Phrase.Milliohms(ohms),
                $"from a capacity of {Phrase.Number(capacity)} Ah, since neither resistance nor cold-cranking current is stated", product.Citation);
        }

        return ohms;
    }
}
