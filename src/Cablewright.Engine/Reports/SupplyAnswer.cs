using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Results;
using Cablewright.Engine.Supply;

namespace Cablewright.Engine.Reports;

/// <summary>Writes what the answer says of the supply.</summary>
internal static class SupplyAnswer
{
    public static SupplyResult Of(CompleteBuild build, DesignEvaluation evaluation, SupplyReport report)
    {
        EnergyBalance balance = report.Balance;
        double? hot = build.Supply.HotAmps;
        return new SupplyResult(
            build.ChargingVolts,
            evaluation.Envelope.LowestVolts,
            evaluation.Envelope.LoadAmps.Sum(),
            evaluation.Envelope.LoadAmps.Zip(build.Draws, (amps, draw) => amps * draw.AverageShare).Sum(),
            hot is { } atSpeed ? Math.Max(0, balance.Available(atSpeed)) : null,
            hot is not null && build.Supply.IdleAmps is { } idle ? Math.Max(0, balance.Available(idle)) : null)
        {
            EngineOffMinutes = report.EngineOffMinutes,
            CoveredFromEngineRpm = new SupplyCures(build, report).CoveredFromRpm,
            Cases = report.Cases,
            Batteries = build.CountsEnergy
                ? [.. Enumerable.Range(0, build.Batteries.Count).Select(battery => BatteryOf(build, balance, battery))]
                : [],
            Burst = hot is { } given && report.Circuit is { } circuit
                ? Burst.Of(build, circuit, given, SupplyCases.IsHeld(balance, given))
                : null,
            Capacitors = [.. Enumerable.Range(0, build.Capacitors.Count).Select(part => Stiffening.Of(build, balance, part))],
        };
    }

    private static BatteryResult BatteryOf(CompleteBuild build, EnergyBalance balance, int battery)
    {
        CompleteBattery described = build.Batteries[battery];
        SupplyGroup? group = balance.Playing.FirstOrDefault(each => each.Batteries.Contains(battery));
        double? minutes = group is null ? null : balance.EngineOffMinutes(group);
        return new BatteryResult(
            described.Id,
            described.Chemistry,
            described.RestVolts,
            described.InternalOhms * 1000,
            described.Energy.AmpHours,
            described.Energy.UsableAmpHours,
            described.Energy.Exponent,
            minutes is { } finite && double.IsFinite(finite) ? finite : null);
    }
}
