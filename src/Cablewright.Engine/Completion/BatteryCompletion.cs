using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sources;
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
        assumptions.Note(new Assumption(AssumptionKind.OneBattery, Target.Of(Part.Vehicle, Member.Batteries)));
        return [completion.Complete(new Battery { Id = PlaceNames.AssumedBattery }, 0)];
    }

    private CompleteBattery Complete(Battery battery, int index)
    {
        var at = new Target(Part.Battery, index);
        Chemistry chemistry = battery.Chemistry ?? Chemistry.Flooded;
        if ((IsOneOfSeveral || setting.CountsEnergy) && battery.Chemistry is null)
            assumptions.Note(new AssumedWord(AssumptionKind.Chemistry, at[Member.Chemistry], chemistry));
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

    private Peukert.Cell EnergyOf(Battery battery, Target at, Chemistry chemistry)
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

    private void NoteEnergy(Battery battery, Target at, Chemistry chemistry)
    {
        if (battery.CapacityAmpHours is null && battery.ReserveMinutes is null)
            assumptions.Take(null, AssumptionKind.Capacity, at[Member.Capacity], ruleset.Supply.BatteryCapacity);
        assumptions.Take(
            battery.PeukertExponent, AssumptionKind.PeukertExponent, at[Member.PeukertExponent],
            ruleset.Supply.Peukert(chemistry));
        assumptions.Take(
            battery.UsableShare, AssumptionKind.UsableShare, at[Member.UsableShare], ruleset.Supply.Usable(chemistry));
        if (battery.StateOfCharge is null)
            assumptions.Note(new AssumedFigure(AssumptionKind.StateOfCharge, at[Member.StateOfCharge], 1, Figure.Ratio, null));
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
    private double RechargingOhms(Target at, int index, Chemistry chemistry, double capacity, double ohms)
    {
        Figure rate = ruleset.Supply.ChargingRate(chemistry);
        double most = Math.Min(rate.Value * capacity, setting.SpareAmps);
        double recharging = Math.Max(ohms, (setting.ChargingVolts - HalfCharged(chemistry)) / most);
        if (IsOneOfSeveral && index != setting.ChargingBattery && recharging > ohms)
            assumptions.Note(new AssumedChargingCurrent(at, most, rate, capacity));
        return recharging;
    }

    private double ResistanceOf(Battery battery, Target at, Chemistry chemistry, double capacity)
    {
        Figure fall = ruleset.Supply.CrankingTestFall, product = ruleset.Supply.ResistanceCapacity(chemistry);
        (double ohms, AssumptionKind kind, Figure figure) = battery.ColdCrankingAmps is { } cranking
            ? (fall.Value * setting.NominalFactor / cranking, AssumptionKind.ResistanceFromCranking, fall)
            : (product.Value * setting.NominalFactor / capacity, AssumptionKind.ResistanceFromCapacity, product);
        if (IsOneOfSeveral)
            assumptions.Note(new AssumedFigure(kind, at[Member.InternalResistance], ohms, Figure.Ohms, figure)
            {
                AmpHours = capacity,
            });
        return ohms;
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
