using Cablewright.Contract.Kits;
using Cablewright.Contract.Words;
using Cablewright.Engine;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Assessments;

namespace Cablewright.Service.Kits;

/// <summary>From the engine's check of a kit to the contract's.</summary>
internal static class KitAnswerMapping
{
    /// <summary>The answer to a kit check.</summary>
    public static KitAnswer ToContract(Engine.Kits.KitCheck check, Ruleset ruleset) => new()
    {
        Verdict = (KitVerdict)check.Verdict,
        Summary = check.Summary,
        Ruleset = check.Ruleset,
        EngineVersion = Assessor.EngineVersion,
        Findings = [.. check.Findings.Select(AssessmentMapping.FindingOf)],
        Needs = [.. check.Needs.Select(AssessmentMapping.MaterialOf)],
        Trial = check.Trial is { } trial
            ? AssessmentMapping.ToContract(trial.Assessment, AssessmentIdentity.Of(trial.Build, ruleset))
            : null,
        Assumptions = [.. check.Assumptions.Select(AssessmentMapping.AssumptionOf)],
        SafetyNotes = check.SafetyNotes,
    };
}
