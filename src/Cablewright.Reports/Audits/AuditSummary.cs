using Cablewright.Engine.Audits;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Audits;

/// <summary>Two or three plain sentences that can be read out.</summary>
internal static class AuditSummary
{
    public static string Of(BenchReport report, MetalReading metal, AuditJudgement judged)
    {
        string size = $"The cable holds {Phrase.Number(metal.AreaMm2.Estimate)} mm2 of metal, "
            + $"{CableWords.Gauge(metal.AreaMm2.Estimate)}, between {Phrase.Number(metal.AreaMm2.Least)} and "
            + $"{Phrase.Number(metal.AreaMm2.Most)} mm2.";
        string kind = metal switch
        {
            { IsConsistent: false } => " No metal agrees with all measurements.",
            { IsTested: false } => " What metal it is was not tested.",
            { CanBeCopper: true } => " It can be copper.",
            _ => $" It cannot be copper, but {CableWords.Possible(metal)}.",
        };
        return size + kind + VerdictOf(report, judged);
    }

    private static string VerdictOf(BenchReport report, AuditJudgement judged)
    {
        string claim = string.Join(
            " of ", new[] { report.ClaimedSize?.Label, report.ClaimedMaterial?.Word().Replace('-', ' ') }.OfType<string>());
        return judged.Verdict switch
        {
            AuditVerdict.TrueToClaim => $" It is true to its claim, {claim}.",
            AuditVerdict.Undersized => $" It is smaller than its claim, {claim}.",
            AuditVerdict.OtherMetal => $" It is not what it claims to be, {claim}.",
            AuditVerdict.CannotBeTold => $" Whether it is {claim} cannot be told from these measurements.",
            _ => "",
        };
    }
}
