using Cablewright.Contract.Audits;
using Cablewright.Engine;
using Cablewright.Engine.Audits;
using Cablewright.Engine.Numerics;
using static Cablewright.Service.Assessments.AssessmentMapping;
using AreaByWay = Cablewright.Contract.Audits.AreaByWay;
using MetalCandidate = Cablewright.Contract.Audits.MetalCandidate;
using TrueAmpacity = Cablewright.Contract.Audits.TrueAmpacity;

namespace Cablewright.Service.Audits;

/// <summary>From the engine's audit to the contract's; numbers at six significant digits.</summary>
internal static class AuditMapping
{
    private const double Percent = 100;
    private const double GramsPerCm3 = 0.001;

    /// <summary>The answer to a bench report.</summary>
    public static ConductorAudit ToContract(CableAudit audit) => new()
    {
        Verdict = audit.Verdict,
        Summary = audit.Summary,
        Ruleset = audit.Ruleset,
        EngineVersion = Assessor.EngineVersion,
        Areas = [.. audit.Areas.Select(area => new AreaByWay { Way = area.Way, AreaMm2 = BoundsOf(area.AreaMm2) })],
        AreaMm2 = BoundsOf(audit.AreaMm2),
        Gauge = BoundsOf(audit.Gauge),
        ShortfallPercent = BoundsOf(audit.Shortfall, Percent),
        Material = audit.Material,
        Metals = [.. audit.Metals.Select(metal => new MetalCandidate
        {
            Material = metal.Material,
            Possible = metal.IsPossible,
        })],
        CanBeCopper = audit.CanBeCopper,
        ConductivityPercentIacs = BoundsOf(audit.ConductivityPercentIacs),
        DensityGramsPerCm3 = BoundsOf(audit.DensityKilogramsPerCubicMetre, GramsPerCm3),
        MassResistivityOhmGramsPerM2 = BoundsOf(audit.MassResistivityOhmGramsPerSquareMetre),
        CopperEquivalentMm2 = Shown(audit.CopperEquivalentMm2),
        SoldAsGauge = audit.SoldAsGauge?.Label,
        SoldAsMetric = audit.SoldAsMetric?.Label,
        Ampacities = [.. audit.Ampacities.Select(bears => new TrueAmpacity
        {
            SurroundingsCelsius = Shown(bears.AirCelsius),
            AmpacityAmps = Shown(bears.Amps),
            LeastAmpacityAmps = Shown(bears.LeastAmps),
            ClaimedAmpacityAmps = Shown(bears.ClaimedAmps),
        })],
        Findings = [.. audit.Findings.Select(FindingOf)],
        Assumptions = [.. audit.Assumptions.Select(AssumptionOf)],
        SafetyNotes = audit.SafetyNotes,
    };

    private static Bounds BoundsOf(Interval interval, double factor = 1) => new()
    {
        Estimate = Shown(interval.Estimate * factor),
        Least = Shown(interval.Least * factor),
        Most = Shown(interval.Most * factor),
    };

    private static Bounds? BoundsOf(Interval? interval, double factor = 1) =>
        interval is { } known ? BoundsOf(known, factor) : null;
}
