using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sources;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Completion;

/// <summary>Fills in what is not stated of the batteries.</summary>
internal sealed class BatteryCompletion
{
    private readonly IReadOnlyList<Battery> stated;
    private readonly SupplySetting setting;
    private readonly AssumptionList assumptions;
    private readonly Ruleset ruleset;

    private BatteryCompletion(IReadOnlyList<Battery> stated, SupplySetting setting, AssumptionList assumptions)
    {
        this.stated = stated;
        this.setting = setting;
        this.assumptions = assumptions;
        ruleset = assumptions.Ruleset;
    }

    /// <summary>Only where there are several does a battery's own voltage and resistance enter the wiring's circuit.</summary>
    private bool IsOneOfSeveral => stated.Count > 1;

    public static IReadOnlyList<CompleteBattery> Complete(
        IReadOnlyList<Battery> stated, SupplySetting setting, AssumptionList assumptions)
    {
        var completion = new BatteryCompletion(stated, setting, assumptions);
        if (stated.Count > 0) return [.. stated.Select(completion.Complete)];
        assumptions.Note(
            "/vehicle/batteries", $"one, called \"{PlaceNames.AssumedBattery}\"", "no battery is listed",
            "every vehicle has one");
        return [completion.Complete(new Battery { Id = PlaceNames.AssumedBattery }, 0)];
    }

    private CompleteBattery Complete(Battery battery, int index)
    {
        string at = $"/vehicle/batteries/{index}";
        Chemistry chemistry = battery.Chemistry ?? Chemistry.Flooded;
        if ((IsOneOfSeveral || setting.CountsEnergy) && battery.Chemistry is null)
            assumptions.Note(at + "/chemistry", chemistry.Word(), "the chemistry is not stated", "the usual starter battery");
        Peukert.Cell energy = EnergyOf(battery, at, chemistry);
        double ohms = battery.InternalOhms ?? ResistanceOf(battery, at, chemistry, energy.AmpHours);
        double cranking = battery.ColdCrankingAmps ?? ruleset.Supply.CrankingOfCapacity.Value * energy.AmpHours;
        double state = battery.StateOfCharge ?? 1;
        return new CompleteBattery
        {
            Id = battery.Id,
            Chemistry = chemistry,
            InternalOhms = ohms,
            LeastOhms = battery.InternalOhms ?? LeastOhms(chemistry, energy.AmpHours, cranking),
            MostOhms = battery.InternalOhms ?? (chemistry is Chemistry.LiFePo4 ? ohms : ColdOhms(cranking)),
            CrankingAmps = chemistry is Chemistry.LiFePo4 ? null : cranking,
            RechargingOhms = battery.InternalOhms ?? RechargingOhms(at, index, chemistry, energy.AmpHours, ohms),
            HalfChargedVolts = HalfCharged(chemistry),
            FullVolts = ruleset.RestVoltages.At(chemistry, 1) * setting.NominalFactor,
            RestVolts = ruleset.RestVoltages.At(chemistry, state) * setting.NominalFactor,
            WorkingVolts = ruleset.RestVoltages.At(chemistry, state - energy.Share / 2) * setting.NominalFactor,
            StrapOhms = ruleset.Supply.StrapResistance.Value,
            Energy = energy,
            Polarisation = battery.Polarisation,
        };
    }

    /// <summary>
    /// A cold-cranking current is measured cold and over half a minute, so a warm battery has less resistance in the first
    /// moment; where it is not stated it follows from the capacity, so that both say the same of the same battery.
    /// </summary>
    private double LeastOhms(Chemistry chemistry, double capacity, double crankingAmps) => chemistry is Chemistry.LiFePo4
        ? ruleset.Supply.LiFePo4LeastResistanceCapacity.Value * setting.NominalFactor / capacity
        : ColdOhms(crankingAmps) * ruleset.Supply.LeastResistanceShare.Value;

    private double ColdOhms(double crankingAmps) =>
        ruleset.Supply.CrankingTestFall.Value * setting.NominalFactor / crankingAmps;

    private double HalfCharged(Chemistry chemistry) =>
        ruleset.Supply.HalfCharged(chemistry).Value * setting.NominalFactor;

    private Peukert.Cell EnergyOf(Battery battery, string at, Chemistry chemistry)
    {
        double hours = battery.RatingHours ?? ruleset.Supply.RatingHours.Value;
        double exponent = battery.PeukertExponent ?? ruleset.Supply.Peukert(chemistry).Value;
        double capacity = battery.CapacityAmpHours
            ?? FromReserve(battery, hours, exponent)
            ?? ruleset.Supply.BatteryCapacity.Value;
        double usable = battery.UsableShare ?? ruleset.Supply.Usable(chemistry).Value;
        double share = Math.Max(0, (battery.StateOfCharge ?? 1) - (1 - usable));
        if (setting.CountsEnergy) NoteEnergy(battery, at, chemistry);
        return new Peukert.Cell(capacity, hours, exponent, share);
    }

    private void NoteEnergy(Battery battery, string at, Chemistry chemistry)
    {
        if (battery.CapacityAmpHours is null && battery.ReserveMinutes is null)
            assumptions.Take(null, at, "/capacity", ruleset.Supply.BatteryCapacity, "no capacity is stated");
        assumptions.Take(
            battery.PeukertExponent, at, "/peukertExponent", ruleset.Supply.Peukert(chemistry),
            "under a large current a battery gives less than its rated capacity");
        assumptions.Take(battery.UsableShare, at, "/usableShare", ruleset.Supply.Usable(chemistry),
            "a battery that is drawn lower does not last");
        if (battery.StateOfCharge is null)
            assumptions.Note(at + "/stateOfCharge", Phrase.Percent(1), "the state of charge is not stated", "a full battery");
    }

    /// <summary>
    /// The capacity by Peukert's law from the minutes at 25 A that a reserve capacity states, C = I H (t/H)^(1/k).
    /// </summary>
    private double? FromReserve(Battery battery, double hours, double exponent)
    {
        if (battery.ReserveMinutes is not { } minutes) return null;
        return ruleset.Supply.ReserveCurrent.Value * hours * Math.Pow(minutes / 60 / hours, 1 / exponent);
    }

    /// <summary>
    /// Recharging, a battery takes no more continuously than its makers allow and the alternator has left, so unless its
    /// resistance
    /// is stated it then counts as at least what holds it to that.
    /// </summary>
    private double RechargingOhms(string at, int index, Chemistry chemistry, double capacity, double ohms)
    {
        Figure rate = ruleset.Supply.ChargingRate(chemistry);
        double most = Math.Min(rate.Value * capacity, setting.SpareAmps);
        double recharging = Math.Max(ohms, (setting.ChargingVolts - HalfCharged(chemistry)) / most);
        if (IsOneOfSeveral && index != setting.ChargingBattery && recharging > ohms)
        {
            assumptions.Note(
                at, $"{Phrase.Amps(most)} of continuous charging current",
                $"a battery takes no more continuously than {Phrase.Number(rate.Value)} times its capacity of "
                + $"{Phrase.Number(capacity)} Ah, and no more than the alternator has left",
                rate.Citation);
        }

        return recharging;
    }

    private double ResistanceOf(Battery battery, string at, Chemistry chemistry, double capacity)
    {
        (double ohms, string reason, Figure figure) = battery.ColdCrankingAmps is { } cranking
            ? FromCranking(ruleset.Supply.CrankingTestFall, cranking)
            : FromCapacity(ruleset.Supply.ResistanceCapacity(chemistry));
        if (IsOneOfSeveral) assumptions.Note(at + "/internalResistance", Phrase.Milliohms(ohms), reason, figure.Citation);
        return ohms;

        (double, string, Figure) FromCranking(Figure fall, double amps) =>
            (fall.Value * setting.NominalFactor / amps, "from the cold-cranking test, an upper bound", fall);

        (double, string, Figure) FromCapacity(Figure product) =>
            (
                product.Value * setting.NominalFactor / capacity,
                $"from a capacity of {Phrase.Number(capacity)} Ah, since neither resistance nor cold-cranking current is stated",
                product);
    }
}

/// <summary>What the batteries stand in.</summary>
/// <param name="NominalFactor">The system's nominal voltage over 12 V.</param>
/// <param name="ChargingVolts">The charging voltage.</param>
/// <param name="ChargingBattery">The battery that is charged first.</param>
/// <param name="SpareAmps">What is left for recharging others.</param>
/// <param name="CountsEnergy">Whether the build speaks of batteries or of playing time, so that their energy is counted.</param>
internal readonly record struct SupplySetting(
    double NominalFactor, double ChargingVolts, int ChargingBattery, double SpareAmps, bool CountsEnergy);
