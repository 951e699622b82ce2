using Cablewright.Engine.Completion;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Supply;
using Cablewright.Reports.Messages;
using Param = Cablewright.Contract.Assessments.Param;

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
            new Params
            {
                ["minutes"] = violation.Measured,
                ["batteries"] = Names(shortest),
                ["wishedMinutes"] = violation.Limit,
            },
            $"{Phrase.Amps(amps)} on average; t = u H (C / (I H))^k: "
            + string.Join("; ", shortest.Batteries.Select(battery => Energy(build.Batteries[battery]))),
            "min")
        {
            Variant = Several(shortest),
            Remedy = cures.ForEngineOff(shortest, violation.Limit),
        };
    }

    public Wording Mixed(Violation violation) => new(
        $"/vehicle/batteries/{violation.Index}/chemistry",
        new Params
        {
            ["lithium"] = build.Batteries[violation.Index].Id,
            ["leadAcid"] = build.Batteries[violation.Other].Id,
        },
        $"rest voltage {Phrase.Volts(build.Batteries[violation.Index].RestVolts)} against "
        + $"{Phrase.Volts(build.Batteries[violation.Other].RestVolts)}");

    public Wording AboveCharger(Violation violation)
    {
        SupplyGroup group = balance.BehindChargers.First(each => each.ChargersTo.Contains(violation.Index));
        double minutes = balance.Minutes(group, violation.Measured - violation.Limit);
        return new Wording(
            build.Runs[violation.Index].Pointer + "/isolator/ratedCurrent",
            new Params
            {
                ["batteries"] = Names(group),
                ["averageAmps"] = violation.Measured,
                ["run"] = build.Runs[violation.Index].Id,
                ["chargerAmps"] = violation.Limit,
                ["minutes"] = minutes,
            },
            Unit: "A")
        {
            Variant = Several(group),
        };
    }

    public Wording Capacitor(Violation violation)
    {
        CapacitorResult part = Stiffening.Of(build, balance, violation.Index);
        return new Wording(
            $"/vehicle/capacitors/{violation.Index}",
            new Params
            {
                ["place"] = part.At,
                ["farads"] = part.Farads,
                ["amps"] = part.DrawAmps,
                ["fallVolts"] = part.FallVolts,
                ["milliseconds"] = violation.Measured,
                ["noteMilliseconds"] = violation.Limit,
                ["joules"] = part.GivesJoules,
            },
            $"t = C (dV - I ESR) / I = {Phrase.Number(part.Farads)} F x ({Phrase.Volts(part.FallVolts)} - "
            + $"{Phrase.Amps(part.DrawAmps)} x "
            + $"{Phrase.Milliohms(part.SeriesMilliohms / 1000)}) / {Phrase.Amps(part.DrawAmps)} = "
            + $"{Phrase.Number(violation.Measured)} ms",
            "ms");
    }

    private Param Names(SupplyGroup group) => Param.Of(group.Batteries.Select(battery => build.Batteries[battery].Id));

    private static string Several(SupplyGroup group) => group.Batteries.Length == 1 ? "" : ".several";

    private static string Energy(CompleteBattery battery) =>
        $"\"{battery.Id}\" C = {Phrase.Number(battery.Energy.AmpHours)} Ah, H = {Phrase.Number(battery.Energy.RatingHours)} h, "
        + $"k = {Phrase.Number(battery.Energy.Exponent)}, u = {Phrase.Percent(battery.Energy.Share)}";
}
