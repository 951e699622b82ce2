using Cablewright.Contract.Builds;
using Cablewright.Contract.Comparisons;
using Cablewright.Engine.Results;
using Cablewright.Service.Assessments;
using static Cablewright.Service.Assessments.AssessmentMapping;
using ComparedBuild = Cablewright.Contract.Comparisons.ComparedBuild;
using Difference = Cablewright.Contract.Comparisons.Difference;

namespace Cablewright.Service.Comparisons;

/// <summary>From the engine's comparison to the contract's.</summary>
internal static class ComparisonMapping
{
    /// <summary>The builds side by side.</summary>
    public static Comparison ToContract(IReadOnlyList<Build> builds, IReadOnlyList<Answered> answers)
    {
        ComparisonResult result = Engine.Reports.Comparison.Of([.. answers.Select(answer => answer.Assessment!)]);
        return new Comparison
        {
            Builds = [.. result.Builds.Select((compared, index) => ComparedOf(compared, answers[index].Id!, builds[index].Name))],
            Differences = [.. result.Differences.Select(difference => new Difference
            {
                Subject = difference.Subject,
                Id = difference.Id,
                What = difference.What,
                Values = [.. difference.Values.Select(value => value ?? "")],
            })],
            SafetyNotes = answers[0].Assessment!.SafetyNotes,
        };
    }

    private static ComparedBuild ComparedOf(Engine.Results.ComparedBuild compared, string id, string? name) => new()
    {
        Id = id,
        Name = name,
        Verdict = compared.Verdict,
        Fails = compared.Fails,
        Cautions = compared.Cautions,
        WorstDropPercent = Shown(compared.WorstDropPercent),
        HottestCelsius = Shown(compared.HottestCelsius),
        LargestUtilisation = Shown(compared.LargestUtilisation),
        LostInWireWatts = Shown(compared.LostInWireWatts),
        ConductorGrams = Shown(compared.ConductorGrams),
        Cost = Shown(compared.Cost),
        EngineOffMinutes = Shown(compared.EngineOffMinutes),
    };
}
