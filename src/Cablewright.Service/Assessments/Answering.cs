using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Engine;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;

namespace Cablewright.Service.Assessments;

/// <summary>The straight line from a body to its answer.</summary>
internal static class Answering
{
    /// <summary>The assessment of a body that was read, or the problem with it.</summary>
    public static (Assessment? Assessment, ProblemAnswer? Problem) Answer(Shaped<Build> body)
    {
        if (body.Outcome != ShapeOutcome.Read) return (null, FaultyRequest.Of(body));
        (Assessment? assessment, IReadOnlyList<Fault> faults) = Answer(body.Value!);
        return (assessment, assessment is null ? FaultyRequest.Answer(ProblemKinds.FaultyBuild, faults) : null);
    }

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
