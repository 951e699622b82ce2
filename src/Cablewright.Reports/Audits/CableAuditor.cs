using Cablewright.Contract.Audits;
using Cablewright.Engine;
using Cablewright.Engine.Audits;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Assessments;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;
using AreaByWay = Cablewright.Contract.Audits.AreaByWay;
using BenchReport = Cablewright.Engine.Audits.BenchReport;
using MetalCandidate = Cablewright.Contract.Audits.MetalCandidate;

namespace Cablewright.Reports.Audits;

/// <summary>Finds the true size and metal of a cable from what can be measured on the bench.</summary>
/// <remarks>
/// Errors are carried through as intervals: each measurement lies within its reading plus or minus its uncertainty, and each
/// result between what the corners give. A verdict is given only where the whole interval supports it.
/// </remarks>
public static class CableAuditor
{
    private const double Percent = 100;

    /// <summary>Audits a cable.</summary>
    /// <param name="report">At least one of strands, resistance and mass.</param>
    /// <param name="ruleset">The limits to apply.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static ConductorAudit Audit(BenchReport report, Ruleset ruleset)
    {
        if (report.Strands is null && report.Resistance is null && report.Mass is null)
            throw new ArgumentException("Nothing was measured.", nameof(report));
        var assumptions = new AssumptionList(ruleset);
        var bench = new Bench(report, assumptions);
        MetalReading metal = MetalReading.Of(bench, report, assumptions);
        double insulation = assumptions.Take(
            report.InsulationCelsius, AssumptionKind.InsulationRating, Target.Of(Part.Bench, Member.InsulationRating),
            ruleset.Heat.InsulationRating);
        var judged = new AuditJudgement(report, metal, ruleset);
        return new ConductorAudit
        {
            Verdict = judged.Verdict,
            Summary = AuditSummary.Of(report, metal, judged),
            Ruleset = ruleset.Id,
            EngineVersion = Release.EngineVersion,
            Areas = [.. metal.Areas.Select(area => new AreaByWay { Way = area.Way, AreaMm2 = BoundsOf(area.AreaMm2) })],
            AreaMm2 = BoundsOf(metal.AreaMm2),
            Gauge = BoundsOf(TrueSize.Gauge(metal.AreaMm2)),
            ShortfallPercent = BoundsOf(judged.Shortfall?.Times(Percent)),
            Material = metal.Taken.Material,
            Metals = [.. metal.Candidates.Select(
                candidate => new MetalCandidate { Material = candidate.Material, Possible = candidate.IsPossible })],
            CanBeCopper = metal.CanBeCopper,
            ConductivityPercentIacs = BoundsOf(Conductivity(bench, metal.Taken.Properties)),
            DensityGramsPerCm3 = BoundsOf((bench.KilogramsPerMetre / bench.AreaByStrands)?.Times(1000)),
            MassResistivityOhmGramsPerM2 =
                BoundsOf((bench.OhmsPerMetreAt20(metal.Taken.Properties) * bench.KilogramsPerMetre)?.Times(1000)),
            CopperEquivalentMm2 = metal.CopperEquivalentMm2,
            SoldAsGauge = TrueSize.LargestGaugeFor(metal.AreaMm2.Estimate, ruleset)?.Label,
            SoldAsMetric = TrueSize.LargestMetricFor(metal.AreaMm2.Estimate, ruleset)?.Label,
            Ampacities =
            [
                Carries(report, metal, insulation, ruleset.Heat.Cabin.Value, ruleset),
                Carries(report, metal, insulation, ruleset.Heat.EngineBay.Value, ruleset),
            ],
            Findings = new AuditWording(report, metal, judged, bench, ruleset).Findings(),
            Assumptions = new AssumptionWriter(new Speech(report.Units)).Write(assumptions.Noted),
            SafetyNotes = ruleset.SafetyNotes,
        };
    }

    private static Bounds BoundsOf(Interval interval) =>
        new() { Estimate = interval.Estimate, Least = interval.Least, Most = interval.Most };

    private static Bounds? BoundsOf(Interval? interval) => interval is { } known ? BoundsOf(known) : null;

    private static Interval? Conductivity(Bench bench, MaterialProperties metal)
    {
        double standard = MaterialProperties.Of(Material.Copper).ResistivityOhmMm2PerMetre * 100;
        return Interval.Exactly(standard) / (bench.OhmsPerMetreAt20(metal) * bench.AreaByStrands);
    }

    private static TrueAmpacity Carries(
        BenchReport report, MetalReading metal, double insulation, double air, Ruleset ruleset) => new()
        {
            SurroundingsCelsius = air,
            AmpacityAmps = TrueSize.AmpsOf(metal.AreaMm2.Estimate, metal.Taken.Material, insulation, air, ruleset),
            LeastAmpacityAmps = TrueSize.AmpsOf(metal.AreaMm2.Least, metal.Taken.Material, insulation, air, ruleset),
            ClaimedAmpacityAmps = report.ClaimedSize is { } size
                ? Ampacity.Of(
                    Conductor.Of(size, report.ClaimedMaterial ?? Material.Copper), insulation, air, 1, ruleset).LimitAmps
                : null,
        };
}
