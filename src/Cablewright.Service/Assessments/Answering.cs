using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Engine;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;

namespace Cablewright.Service.Assessments;

/// <summary>The straight line from a build that has the right shape to its answer.</summary>
internal static class Answering
{
    /// <summary>The assessment as the contract has it, or every fault that makes one impossible.</summary>
    public static (Assessment? Assessment, IReadOnlyList<Fault> Faults) Answer(Build build)
    {
        Answered answered = Work(build);
        return (
            answered.Assessment is null ? null : AssessmentMapping.ToContract(answered.Assessment, answered.Id!), answered.Faults);
    }

    /// <summary>The engine's assessment and its id, or every fault that makes one impossible.</summary>
    public static Answered Work(Build build)
    {
        Engine.Builds.Build mapped = BuildMapping.ToEngine(build);
        IReadOnlyList<Fault> faults = BuildFaults.Of(build, mapped);
        if (faults.Count > 0) return new Answered(null, null, faults);
        Ruleset ruleset = build.Ruleset is { } id ? RulesetLibrary.Find(id)! : RulesetLibrary.Newest;
        return new Answered(Assessor.Assess(mapped, ruleset), AssessmentIdentity.Of(mapped, ruleset), faults);
    }
}

/// <summary>What came of a build.</summary>
/// <param name="Assessment">The engine's assessment; <c>null</c> where there are faults.</param>
/// <param name="Id">Its id.</param>
/// <param name="Faults">What makes an assessment impossible.</param>
internal sealed record Answered(Engine.Answers.Assessment? Assessment, string? Id, IReadOnlyList<Fault> Faults);
