using Cablewright.Contract.Assessments;
using Cablewright.Contract.Comparisons;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Assessments;

/// <summary>Puts the answers to several builds side by side.</summary>
public static class ComparisonWriter
{
    /// <summary>What the answers come to, and where they differ.</summary>
    /// <param name="answers">Two or more, in the order in which they are shown.</param>
    /// <param name="names">The names of their builds, where they have one.</param>
    public static Comparison Of(IReadOnlyList<Assessment> answers, IReadOnlyList<string?> names) => new()
    {
        Builds = [.. answers.Select((answer, index) => Compared(answer, names[index]))],
        Differences = [.. Differences(answers).Where(difference => difference.Values.Distinct().Skip(1).Any())],
        SafetyNotes = answers[0].SafetyNotes,
    };

    private static ComparedBuild Compared(Assessment answer, string? name) => new()
    {
        Id = answer.Id,
        Name = name,
        Verdict = answer.Verdict,
        Fails = answer.Findings.Count(finding => finding.Severity is Severity.Fail),
        Cautions = answer.Findings.Count(finding => finding.Severity is Severity.Caution),
        WorstDropPercent = answer.Amplifiers.Max(amplifier => amplifier.DropPercent),
        HottestCelsius = answer.Runs.Max(run => run.TemperatureCelsius),
        LargestUtilisation = answer.Runs.Max(run => run.Utilisation),
        LostInWireWatts = answer.Amplifiers.Sum(amplifier => amplifier.LostInWireWatts),
        ConductorGrams = answer.Runs.Sum(run => run.Conductor.MassGrams),
        Cost = answer.Sizing?.Cost,
        EngineOffMinutes = answer.Supply.EngineOffMinutes,
    };

    private static IEnumerable<Difference> Differences(IReadOnlyList<Assessment> answers)
    {
        foreach (string id in answers.SelectMany(answer => answer.Runs).Select(run => run.Id).Distinct())
        {
            RunResult?[] runs = [.. answers.Select(answer => answer.Runs.FirstOrDefault(run => run.Id == id))];
            yield return Of("run", id, "conductor", runs, run => Words(run.Conductor));
            yield return Of("run", id, "fuse", runs, run => Words(run.Fuse));
            yield return Of("run", id, "farFuse", runs, run => Words(run.FarFuse));
            yield return Of("run", id, "lengthMetres", runs, run => Phrase.Number(run.LengthMetres));
            yield return Of("run", id, "dropVolts", runs, run => Phrase.Number(run.DropVolts));
            yield return Of("run", id, "temperatureCelsius", runs, run => Phrase.Number(run.TemperatureCelsius));
        }

        foreach (string id in answers.SelectMany(answer => answer.Amplifiers).Select(amplifier => amplifier.Id).Distinct())
        {
            AmplifierResult?[] amplifiers =
                [.. answers.Select(answer => answer.Amplifiers.FirstOrDefault(amplifier => amplifier.Id == id))];
            yield return Of("amplifier", id, "dropPercent", amplifiers, amplifier => Phrase.Number(amplifier.DropPercent));
            yield return Of(
                "amplifier", id, "peakCurrentAmps", amplifiers, amplifier => Phrase.Number(amplifier.PeakCurrentAmps));
        }

        foreach (string code in answers.SelectMany(answer => answer.Findings).Select(finding => finding.Code).Distinct())
        {
            IEnumerable<string> counts = answers.Select(answer =>
                Phrase.Number(answer.Findings.Count(finding => finding.Code == code)));
            yield return new Difference { Subject = "finding", Id = code, What = "count", Values = [.. counts] };
        }
    }

    private static Difference Of<T>(string subject, string id, string what, T?[] parts, Func<T, string?> words)
        where T : class => new()
        {
            Subject = subject,
            Id = id,
            What = what,
            Values = [.. parts.Select(part => part is null ? "" : words(part) ?? "")],
        };

    private static string Words(ConductorResult conductor) =>
        (conductor.Count > 1 ? $"{Phrase.Number(conductor.Count)} x " : "")
            + $"{conductor.Size} {conductor.Material.InText()}";

    private static string? Words(FuseResult? fuse) =>
        fuse is null ? null : $"{Phrase.Amps(fuse.RatingAmps)} {fuse.Family.Word()}";
}
