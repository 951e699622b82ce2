using Cablewright.Engine.Results;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Reports;

/// <summary>Puts the answers to several builds side by side.</summary>
public static class Comparison
{
    /// <summary>What the answers come to, and where they differ.</summary>
    /// <param name="answers">Two or more, in the order in which they are shown.</param>
    public static ComparisonResult Of(IReadOnlyList<Assessment> answers) =>
        new([.. answers.Select(Compared)], [.. Differences(answers).Where(difference => difference.Differs)]);

    private static ComparedBuild Compared(Assessment answer) => new(
        answer.Verdict,
        answer.Findings.Count(finding => finding.Severity is Severity.Fail),
        answer.Findings.Count(finding => finding.Severity is Severity.Caution),
        answer.Amplifiers.Max(amplifier => amplifier.DropPercent),
        answer.Runs.Max(run => run.TemperatureCelsius),
        answer.Runs.Max(run => run.Utilisation),
        answer.Amplifiers.Sum(amplifier => amplifier.LostInWireWatts),
        answer.Runs.Sum(run => run.Conductor.MassGrams),
        answer.Sizing?.Cost,
        answer.Supply.EngineOffMinutes);

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
            yield return new Difference("finding", code, "count", [.. counts]);
        }
    }

    private static Difference Of<T>(string subject, string id, string what, T?[] parts, Func<T, string?> words)
        where T : class =>
        new(subject, id, what, [.. parts.Select(part => part is null ? null : words(part))]);

    private static string Words(ConductorResult conductor) =>
        (conductor.Count > 1 ? $"{Phrase.Number(conductor.Count)} x " : "")
            + $"{conductor.Size.Label} {conductor.Material.Word()}";

    private static string? Words(FuseResult? fuse) =>
        fuse is null ? null : $"{Phrase.Amps(fuse.RatingAmps)} {fuse.Family.Word()}";
}
