using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Results;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Audits;

/// <summary>Finds the true size and metal of a cable from what can be measured on the bench.</summary>
/// <remarks>
/// Errors are carried through as intervals: each measurement lies within its reading plus or minus its uncertainty, and each
/// result between what the corners give. A verdict is given only where the whole interval supports it.
/// </remarks>
public static class CableAuditor
{
    /// <summary>Audits a cable.</summary>
    /// <param name="report">At least one of strands, resistance and mass.</param>
    /// <param name="ruleset">The limits to apply.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static CableAudit Audit(BenchReport report, Ruleset ruleset)
    {
        if (report.Strands is null && report.Resistance is null && report.Mass is null)
            throw new ArgumentException("Nothing was measured.", nameof(report));
        var assumptions = new AssumptionList(ruleset, new Phrase(report.Units));
        var bench = new Bench(report, assumptions);
        MetalReading metal = MetalReading.Of(bench, report, assumptions);
        double insulation = assumptions.Take(
            report.InsulationCelsius, "/insulationRating", ruleset.Heat.InsulationRating,
            "the insulation's rating is not stated");
        var judged = new AuditJudgement(report, metal, ruleset);
        IReadOnlyList<Finding> findings = new AuditWording(report, metal, judged, bench, ruleset).Findings();
        return new CableAudit
        {
            Verdict = judged.Verdict,
            Summary = AuditSummary.Of(report, metal, judged),
            Ruleset = ruleset.Id,
            Areas = metal.Areas,
            AreaMm2 = metal.AreaMm2,
            Gauge = TrueSize.Gauge(metal.AreaMm2),
            Shortfall = judged.Shortfall,
            Metals = metal.Candidates,
            Material = metal.Taken.Material,
            CanBeCopper = metal.CanBeCopper,
            ConductivityPercentIacs = Conductivity(bench, metal.Taken.Properties),
            DensityKilogramsPerCubicMetre = (bench.KilogramsPerMetre / bench.AreaByStrands)?.Times(1e6),
            MassResistivityOhmGramsPerSquareMetre =
                (bench.OhmsPerMetreAt20(metal.Taken.Properties) * bench.KilogramsPerMetre)?.Times(1000),
            CopperEquivalentMm2 = metal.CopperEquivalentMm2,
            SoldAsGauge = TrueSize.LargestGaugeFor(metal.AreaMm2.Estimate, ruleset),
            SoldAsMetric = TrueSize.LargestMetricFor(metal.AreaMm2.Estimate, ruleset),
            Ampacities =
            [
                Bears(report, metal, insulation, ruleset.Heat.Cabin.Value, ruleset),
                Bears(report, metal, insulation, ruleset.Heat.EngineBay.Value, ruleset),
            ],
            Findings = findings,
            Assumptions = assumptions.Noted,
            SafetyNotes = ruleset.SafetyNotes,
        };
    }

    private static Interval? Conductivity(Bench bench, MaterialProperties metal)
    {
        double standard = MaterialProperties.Of(Material.Copper).ResistivityOhmMm2PerMetre * 100;
        return Interval.Exactly(standard) / (bench.OhmsPerMetreAt20(metal) * bench.AreaByStrands);
    }

    private static TrueAmpacity Bears(
        BenchReport report, MetalReading metal, double insulation, double air, Ruleset ruleset) => new(
        air,
        TrueSize.AmpsOf(metal.AreaMm2.Estimate, metal.Taken.Material, insulation, air, ruleset),
        TrueSize.AmpsOf(metal.AreaMm2.Least, metal.Taken.Material, insulation, air, ruleset),
        report.ClaimedSize is { } size
            ? Heat.Ampacity.Of(
                Conductor.Of(size, report.ClaimedMaterial ?? Material.Copper), insulation, air, 1, ruleset).LimitAmps
            : null);
}
