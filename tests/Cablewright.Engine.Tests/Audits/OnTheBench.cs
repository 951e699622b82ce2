using Cablewright.Engine.Audits;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Audits;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Audits;

/// <summary>Measurements to audit.</summary>
internal static class OnTheBench
{
    public static Contract.Audits.ConductorAudit Audit(BenchReport report) => CableAuditor.Audit(report, RulesetLibrary.Newest);

    /// <summary>Strands, each diameter within a share of itself.</summary>
    public static StrandMeasurement Strands(double count, double diameterMm, double uncertainty = 0.001) =>
        new(new Reading(count, 0), new Reading(diameterMm / 1000, null, uncertainty));

    /// <summary>Resistance at 20 °C, all within a share of the reading.</summary>
    public static ResistanceMeasurement Resistance(double ohms, double metres, double uncertainty = 0.001) => new(
        new Reading(ohms, null, uncertainty), new Reading(metres, null, uncertainty), 20, 0.1);

    public static MassMeasurement Mass(double kilograms, double metres, double uncertainty = 0.001) =>
        new(new Reading(kilograms, null, uncertainty), new Reading(metres, null, uncertainty));

    public static BenchReport Claiming(this BenchReport report, string? size, Material? material = null) =>
        report with { ClaimedSize = size is null ? null : ConductorSize.Of(size), ClaimedMaterial = material };
}
