using Cablewright.Engine.Completion;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Supply;

namespace Cablewright.Reports.Findings;

/// <summary>Words for batteries and capacitors.</summary>
internal sealed class BatteryWording(CompleteBuild build, SupplyReport report)
{
    private readonly EnergyBalance balance = report.Balance;
    private readonly SupplyCures cures = new(build, report);

    public Wording EngineOff(Violation violation)
    {
        SupplyGroup shortest = balance.Playing.MinBy(group => Significant.Round(balance.EngineOffMinutes(group)))!;
        double amps = balance.EngineOffAmps(shortest);
        return new Wording(
            "/limits/engineOffTime",
            $"With the engine off the music plays for about {Phrase.Minutes(violation.Measured)} until {Names(shortest)} "
            + $"{(shortest.Batteries.Length == 1 ? "reaches its" : "reach their")} limit, and {Phrase.Minutes(violation.Limit)} "
            + "are asked for.",
            cures.ForEngineOff(shortest, violation.Limit) + ", or less power",
            $"{Phrase.Amps(amps)} on average; t = u H (C / (I H))^k: "
            + string.Join("; ", shortest.Batteries.Select(battery => Energy(build.Batteries[battery]))),
            "min");
    }

    public Wording Mixed(Violation violation) => new(
        $"/vehicle/batteries/{violation.Index}/chemistry",
        $"Batteries \"{build.Batteries[violation.Index].Id}\" (lithium iron phosphate) and "
        + $"\"{build.Batteries[violation.Other].Id}\" "
        + "(lead-acid) are tied together by wire, relay or diode. They charge and rest at different voltages: one is never "
        + "full, or "
        + "the other overcharged, and when they are joined a large current flows between them.",
        "a DC-DC charger between them, made for the second battery's chemistry",
        $"rest voltage {Phrase.Volts(build.Batteries[violation.Index].RestVolts)} against "
        + $"{Phrase.Volts(build.Batteries[violation.Other].RestVolts)}");

    public Wording AboveCharger(Violation violation)
    {
        SupplyGroup group = balance.BehindChargers.First(each => each.ChargersTo.Contains(violation.Index));
        double minutes = balance.Minutes(group, violation.Measured - violation.Limit);
        return new Wording(
            build.Runs[violation.Index].Pointer + "/isolator/ratedCurrent",
            $"What hangs on {Names(group)} draws {Phrase.Amps(violation.Measured)} on average, and the charger of run "
            + $"\"{build.Runs[violation.Index].Id}\" gives {Phrase.Amps(violation.Limit)}: it empties while driving, in about "
            + $"{Phrase.Minutes(minutes)} of such music.",
            $"a charger of {Phrase.Amps(violation.Measured)}, or less power",
            $"average {Phrase.Amps(violation.Measured)} > {Phrase.Amps(violation.Limit)}",
            "A");
    }

    public Wording Capacitor(Violation violation)
    {
        CapacitorResult part = Stiffening.Of(build, balance, violation.Index);
        return new Wording(
            $"/vehicle/capacitors/{violation.Index}",
            $"The capacitor at \"{part.At}\" ({Phrase.Number(part.Farads)} F) alone holds {Phrase.Amps(part.DrawAmps)} within "
            + $"{Phrase.Volts(part.FallVolts)} for {Phrase.Number(violation.Measured)} ms; a bass note lasts "
            + $"{Phrase.Number(violation.Limit)} ms. It gives {Phrase.Number(part.GivesJoules)} J, and does not replace "
            + "alternator, battery or "
            + "conductor.",
            "none needed; spend on conductors, battery or alternator first",
            $"t = C (dV - I ESR) / I = {Phrase.Number(part.Farads)} F x ({Phrase.Volts(part.FallVolts)} - "
            + $"{Phrase.Amps(part.DrawAmps)} x "
            + $"{Phrase.Milliohms(part.SeriesMilliohms / 1000)}) / {Phrase.Amps(part.DrawAmps)} = "
            + $"{Phrase.Number(violation.Measured)} ms",
            "ms");
    }

    private string Names(SupplyGroup group) => group.Batteries.Length == 1
        ? $"battery \"{build.Batteries[group.Batteries[0]].Id}\""
        : "batteries " + string.Join(", ", group.Batteries.Select(battery => $"\"{build.Batteries[battery].Id}\""));

    private static string Energy(CompleteBattery battery) =>
        $"\"{battery.Id}\" C = {Phrase.Number(battery.Energy.AmpHours)} Ah, H = {Phrase.Number(battery.Energy.RatingHours)} h, "
        + $"k = {Phrase.Number(battery.Energy.Exponent)}, u = {Phrase.Percent(battery.Energy.Share)}";
}
