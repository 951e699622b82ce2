using Cablewright.Contract.Kits;
using Cablewright.Engine;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Assessments;

namespace Cablewright.Service.Kits;

/// <summary>From the engine's check of a kit to the contract's.</summary>
internal static class KitAnswerMapping
{
    /// <summary>The answer to a kit check.</summary>
    public static KitAnswer ToContract(Engine.Kits.KitCheck check, Ruleset ruleset, long? revision) => new()
    {
        Revision = revision,
        Verdict = check.Verdict,
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

    /// <summary>One kit of a shop, held against a build.</summary>
    public static KitMatch MatchOf(Engine.Kits.KitMatch match) => new()
    {
        Sku = match.Kit.Sku!,
        Name = match.Kit.Name,
        Price = match.Kit.Price,
        Currency = match.Kit.Currency,
        Verdict = match.Check.Verdict,
        Summary = match.Check.Summary,
        Findings = [.. match.Check.Findings.Select(AssessmentMapping.FindingOf)],
    };
}
