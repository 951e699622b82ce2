using Cablewright.Contract.Assessments;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Supply;
using Cablewright.Reports.Findings;
using BatteryResult = Cablewright.Contract.Assessments.BatteryResult;
using Burst = Cablewright.Contract.Assessments.Burst;
using CapacitorResult = Cablewright.Contract.Assessments.CapacitorResult;
using SupplyFigures = Cablewright.Contract.Assessments.Supply;

namespace Cablewright.Reports.Assessments;

/// <summary>Writes what the answer says of the supply.</summary>
internal static class SupplyAnswer
{
    public static SupplyFigures Of(CompleteBuild build, DesignEvaluation evaluation, SupplyReport report)
    {
        EnergyBalance balance = report.Balance;
        double? hot = build.Supply.HotAmps;
        return new SupplyFigures
        {
            OperatingVolts = build.ChargingVolts,
            LowestVolts = evaluation.Envelope.LowestVolts,
            PeakCurrentAmps = evaluation.Envelope.LoadAmps.Sum(),
            AverageCurrentAmps =
                evaluation.Envelope.LoadAmps.Zip(build.Draws, (amps, draw) => amps * draw.AverageShare).Sum(),
            AlternatorAvailableAmps = hot is { } atSpeed ? Math.Max(0, balance.Available(atSpeed)) : null,
            IdleAvailableAmps =
                hot is not null && build.Supply.IdleAmps is { } idle ? Math.Max(0, balance.Available(idle)) : null,
            EngineOffMinutes = report.EngineOffMinutes,
            CoveredFromEngineRpm = new SupplyCures(build, report).CoveredFromRpm,
            Cases = [.. report.Cases.Select(CaseOf)],
            Batteries = build.CountsEnergy
                ? [.. Enumerable.Range(0, build.Batteries.Count).Select(battery => BatteryOf(build, balance, battery))]
                : [],
            Burst = hot is { } given && report.Circuit is { } circuit
                ? BurstOf(Engine.Supply.Burst.Of(build, circuit, given, SupplyCases.IsHeld(balance, given)))
                : null,
            Capacitors =
                [.. Enumerable.Range(0, build.Capacitors.Count).Select(part => CapacitorOf(Stiffening.Of(build, balance, part)))],
        };
    }

    private static SupplyCase CaseOf(SupplyCaseResult supplyCase) => new()
    {
        Case = supplyCase.Name,
        AvailableAmps = supplyCase.AvailableAmps,
        AverageBalanceAmps = supplyCase.AverageBalanceAmps,
        PeakBalanceAmps = supplyCase.PeakBalanceAmps,
        MinutesToLimit = supplyCase.MinutesToLimit,
        LowestVolts = supplyCase.LowestVolts,
    };

    private static BatteryResult BatteryOf(CompleteBuild build, EnergyBalance balance, int battery)
    {
        CompleteBattery described = build.Batteries[battery];
        SupplyGroup? group = balance.Playing.FirstOrDefault(each => each.Batteries.Contains(battery));
        double? minutes = group is null ? null : balance.EngineOffMinutes(group);
        return new BatteryResult
        {
            Id = described.Id,
            Name = build.Stated.Vehicle.Batteries.ElementAtOrDefault(battery)?.Name,
            Chemistry = described.Chemistry,
            RestVolts = described.RestVolts,
            ResistanceMilliohms = described.InternalOhms * 1000,
            CapacityAmpHours = described.Energy.AmpHours,
            UsableAmpHours = described.Energy.UsableAmpHours,
            PeukertExponent = described.Energy.Exponent,
            EngineOffMinutes = minutes is { } finite && double.IsFinite(finite) ? finite : null,
        };
    }

    private static Burst? BurstOf(BurstResult? burst) => burst is null ? null : new Burst
    {
        Milliseconds = burst.Milliseconds,
        Amplifier = burst.AmplifierId,
        LowestVolts = burst.LowestVolts,
        LowestVoltsWithoutCapacitors = burst.LowestVoltsWithoutCapacitors,
    };

    private static CapacitorResult CapacitorOf(Engine.Supply.CapacitorResult capacitor) => new()
    {
        At = capacitor.At,
        Farads = capacitor.Farads,
        SeriesMilliohms = capacitor.SeriesMilliohms,
        DrawAmps = capacitor.DrawAmps,
        FallVolts = capacitor.FallVolts,
        HoldsMilliseconds = capacitor.HoldsMilliseconds,
        GivesJoules = capacitor.GivesJoules,
    };
}
