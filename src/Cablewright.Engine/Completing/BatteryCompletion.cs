using Cablewright.Engine.Builds;
using Cablewright.Engine.Findings;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Completing;

/// <summary>Fills in what is not stated of the batteries.</summary>
internal static class BatteryCompletion
{
    public static IReadOnlyList<CompleteBattery> Complete(
        IReadOnlyList<Battery> stated, double nominalFactor, double chargingVolts, int chargingBattery, double spareAmps,
        AssumptionList assumptions)
    {
        if (stated.Count > 0)
            return [.. stated.Select((battery, index) => Complete(
                battery, index, stated.Count > 1, nominalFactor, chargingVolts, chargingBattery, spareAmps, assumptions))];
        assumptions.Note(
            "/vehicle/batteries", $"one, called \"{PlaceNames.AssumedBattery}\"", "no battery is listed",
            "every vehicle has one");
        return [Complete(
            new Battery { Id = PlaceNames.AssumedBattery }, 0, false, nominalFactor, chargingVolts, chargingBattery, spareAmps,
            assumptions)];
    }

    /// <summary>
    /// Only where there are several does a battery's own voltage and resistance enter the circuit. Recharging, it takes no more
    /// for long than its makers allow, so unless its resistance is stated it then counts as at least what holds it to that.
    /// </summary>
    private static CompleteBattery Complete(
        Battery battery, int index, bool matters, double nominalFactor, double chargingVolts, int chargingBattery,
        double spareAmps, AssumptionList assumptions)
    {
        Ruleset ruleset = assumptions.Ruleset;
        string at = $"/vehicle/batteries/{index}";
        Chemistry chemistry = battery.Chemistry ?? Chemistry.Flooded;
        if (matters && battery.Chemistry is null)
            assumptions.Note(at + "/chemistry", chemistry.Word(), "the chemistry is not stated", "the usual starter battery");
        double capacity = battery.CapacityAmpHours ?? ruleset["supply.battery-capacity"].Value;
        double halfCharged = ruleset["supply.half-charged-" + chemistry.Word()].Value * nominalFactor;
        double ohms = battery.InternalOhms ?? ResistanceOf(battery, at, chemistry, capacity, nominalFactor, matters, assumptions);

        Figure rate = ruleset[chemistry is Chemistry.LiFePo4 ? "supply.lifepo4-charging-rate" : "supply.lead-acid-charging-rate"];
        double most = Math.Min(rate.Value * capacity, spareAmps);
        double recharging = battery.InternalOhms ?? Math.Max(ohms, (chargingVolts - halfCharged) / most);
        if (matters && index != chargingBattery && recharging > ohms)
        {
            assumptions.Note(
                at, $"{Phrase.Amps(most)} of lasting charging current",
                $"a battery takes no more for long than {Phrase.Number(rate.Value)} times its capacity of "
                + $"{Phrase.Number(capacity)} Ah, and no more than the alternator has left",
                rate.Citation);
        }

        double least = battery.InternalOhms ?? ohms * ruleset["supply.least-resistance-share"].Value;
        return new CompleteBattery(battery.Id, ohms, least, recharging, halfCharged, ruleset["supply.strap-resistance"].Value);
    }

    private static double ResistanceOf(
        Battery battery, string at, Chemistry chemistry, double capacity, double nominalFactor, bool matters,
        AssumptionList assumptions)
    {
        Ruleset ruleset = assumptions.Ruleset;
        (double ohms, string reason, Figure figure) = battery.ColdCrankingAmps is { } cranking
            ? FromCranking(ruleset["supply.cranking-test-fall"], cranking)
            : FromCapacity(ruleset[chemistry is Chemistry.LiFePo4
                ? "supply.lifepo4-resistance-capacity"
                : "supply.lead-acid-resistance-capacity"]);
        if (matters) assumptions.Note(at + "/internalResistance", Phrase.Milliohms(ohms), reason, figure.Citation);
        return ohms;

        (double, string, Figure) FromCranking(Figure fall, double amps) =>
            (fall.Value * nominalFactor / amps, "from the cold-cranking test, an upper bound", fall);

        (double, string, Figure) FromCapacity(Figure product) =>
            (
                product.Value * nominalFactor / capacity,
                $"from a capacity of {Phrase.Number(capacity)} Ah, since neither resistance nor cold-cranking current is stated",
                product);
    }
}
