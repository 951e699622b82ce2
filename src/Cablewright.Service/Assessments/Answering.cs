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
    /// <summary>The assessment, or every fault that makes one impossible.</summary>
    public static (Assessment? Assessment, IReadOnlyList<Fault> Faults) Answer(Build build)
    {
        Engine.Builds.Build mapped = BuildMapping.ToEngine(build);
        IReadOnlyList<Fault> faults = BuildFaults.Of(build, mapped);
        if (faults.Count > 0) return (null, faults);

        Ruleset ruleset = build.Ruleset is { } id ? RulesetLibrary.Find(id)! : RulesetLibrary.Newest;
        return (AssessmentMapping.ToContract(Assessor.Assess(mapped, ruleset), AssessmentIdentity.Of(mapped, ruleset)), faults);
    }
}
