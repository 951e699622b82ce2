using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Assessments;
using Cablewright.Service.Computing;
using Cablewright.Service.Problems;
using Cablewright.Service.Rulesets;

namespace Cablewright.Service.Assessments;

/// <summary>The straight line from a body to its answer.</summary>
internal static class Answering
{
    /// <summary>The assessment as the contract has it, or the problem with the build.</summary>
    /// <param name="build">The build as sent.</param>
    /// <param name="computation">Counts the work.</param>
    /// <param name="place">Names the place of a fault in the request, where the build is not the request itself.</param>
    public static (Assessment? Assessment, ProblemAnswer? Problem) Answer(
        Build build, Computation computation, Func<Fault, Fault>? place = null)
    {
        Answered answered = Work(build, computation);
        return answered.Assessment is { } assessment
            ? (assessment, null)
            : (null, FaultyRequest.Answer(ProblemKinds.FaultyBuild, [.. answered.Faults.Select(place ?? (fault => fault))]));
    }

    /// <summary>The assessment, or every fault that makes one impossible.</summary>
    /// <param name="build">The build as sent.</param>
    /// <param name="computation">Counts the work.</param>
    /// <param name="compared">Among how many builds it is compared: then nothing advises; 1: it stands alone.</param>
    public static Answered Work(Build build, Computation computation, int compared = 1)
    {
        Engine.Builds.Build mapped = BuildMapping.ToEngine(build);
        IReadOnlyList<Fault> faults = BuildFaults.Of(build, mapped, computation.HasKey);
        if (faults.Count > 0) return new Answered(null, faults);
        Ruleset ruleset = RulesetCheck.Named(build.Ruleset);
        return new Answered(
            Assessor.Assess(mapped, ruleset, computation.MeterFor(mapped, compared), advises: compared == 1), faults);
    }
}

/// <summary>What came of a build.</summary>
/// <param name="Assessment">Its assessment; <c>null</c> where there are faults.</param>
/// <param name="Faults">What makes an assessment impossible.</param>
internal sealed record Answered(Assessment? Assessment, IReadOnlyList<Fault> Faults);
