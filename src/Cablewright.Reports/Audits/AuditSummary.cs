using Cablewright.Contract.Assessments;
using Cablewright.Engine.Audits;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Audits;

/// <summary>Two or three plain sentences that can be read out.</summary>
internal static class AuditSummary
{
    public static string Of(BenchReport report, MetalReading metal, AuditJudgement judged)
    {
        var speech = new Speech(report.Units);
        Params values = new()
        {
            ["areaMm2"] = metal.AreaMm2.Estimate,
            ["leastMm2"] = metal.AreaMm2.Least,
            ["mostMm2"] = metal.AreaMm2.Most,
            ["gauge"] = CableWords.Gauge(metal.AreaMm2.Estimate, speech),
            ["possible"] = Param.Of(metal.Possible.Select(material => material.InText())),
            ["claim"] = Claim(report, speech),
        };
        string metalKey = metal switch
        {
            { IsConsistent: false } => "metals-disagree",
            { IsTested: false } => "metal-untested",
            { CanBeCopper: true } => "can-be-copper",
            _ => "cannot-be-copper",
        };
        string[] keys = judged.Verdict is { } verdict ? ["area", metalKey, verdict.Word()] : ["area", metalKey];
        return string.Join(' ', keys.Select(key => speech.Text("summary.cable." + key, values)));
    }

    private static string Claim(BenchReport report, Speech speech)
    {
        string? size = report.ClaimedSize?.Label, material = report.ClaimedMaterial?.Word().Replace('-', ' ');
        return size is not null && material is not null
            ? speech.Text("summary.cable.claim", new Params { ["size"] = size, ["material"] = material })
            : size ?? material ?? "";
    }
}
