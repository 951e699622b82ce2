using Cablewright.Contract.Assessments;
using static Cablewright.Service.Assessments.AssessmentMapping;

namespace Cablewright.Service.Assessments;

/// <summary>From the engine's figures of the supply to the contract's.</summary>
internal static class SupplyAnswerMapping
{
    /// <summary>The figures of the supply.</summary>
    public static Supply ToContract(Engine.Results.SupplyResult supply) => new()
    {
        OperatingVolts = Shown(supply.OperatingVolts),
        LowestVolts = Shown(supply.LowestVolts),
        PeakCurrentAmps = Shown(supply.PeakCurrentAmps),
        AverageCurrentAmps = Shown(supply.AverageCurrentAmps),
        AlternatorAvailableAmps = Shown(supply.AlternatorAvailableAmps),
        IdleAvailableAmps = Shown(supply.IdleAvailableAmps),
        EngineOffMinutes = Shown(supply.EngineOffMinutes),
        CoveredFromEngineRpm = Shown(supply.CoveredFromEngineRpm),
        Cases = [.. supply.Cases.Select(CaseOf)],
        Batteries = [.. supply.Batteries.Select(BatteryOf)],
        Burst = BurstOf(supply.Burst),
        Capacitors = [.. supply.Capacitors.Select(CapacitorOf)],
    };

    private static SupplyCase CaseOf(Engine.Supply.SupplyCaseResult supplyCase) => new()
    {
        Case = supplyCase.Name,
        AvailableAmps = Shown(supplyCase.AvailableAmps),
        AverageBalanceAmps = Shown(supplyCase.AverageBalanceAmps),
        PeakBalanceAmps = Shown(supplyCase.PeakBalanceAmps),
        MinutesToLimit = Shown(supplyCase.MinutesToLimit),
        LowestVolts = Shown(supplyCase.LowestVolts),
    };

    private static BatteryResult BatteryOf(Engine.Results.BatteryResult battery) => new()
    {
        Id = battery.Id,
        Chemistry = battery.Chemistry,
        RestVolts = Shown(battery.RestVolts),
        ResistanceMilliohms = Shown(battery.ResistanceMilliohms),
        CapacityAmpHours = Shown(battery.CapacityAmpHours),
        UsableAmpHours = Shown(battery.UsableAmpHours),
        PeukertExponent = Shown(battery.PeukertExponent),
        EngineOffMinutes = Shown(battery.EngineOffMinutes),
    };

    private static Burst? BurstOf(Engine.Supply.BurstResult? burst) => burst is null ? null : new Burst
    {
        Milliseconds = Shown(burst.Milliseconds),
        Amplifier = burst.AmplifierId,
        LowestVolts = Shown(burst.LowestVolts),
        LowestVoltsWithoutCapacitors = Shown(burst.LowestVoltsWithoutCapacitors),
    };

    private static CapacitorResult CapacitorOf(Engine.Supply.CapacitorResult capacitor) => new()
    {
        At = capacitor.At,
        Farads = Shown(capacitor.Farads),
        SeriesMilliohms = Shown(capacitor.SeriesMilliohms),
        DrawAmps = Shown(capacitor.DrawAmps),
        FallVolts = Shown(capacitor.FallVolts),
        HoldsMilliseconds = Shown(capacitor.HoldsMilliseconds),
        GivesJoules = Shown(capacitor.GivesJoules),
    };
}
