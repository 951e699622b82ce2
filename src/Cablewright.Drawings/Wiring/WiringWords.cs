using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Drawings.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Wiring;

/// <summary>What the drawing shows, for those who hear it.</summary>
internal static class WiringWords
{
    /// <summary>What it is a drawing of, and the verdict.</summary>
    public static string Title(Build build, Assessment answer) =>
        (string.IsNullOrWhiteSpace(build.Name) ? "Wiring" : "Wiring of " + Names.Isolated(Names.Clean(build.Name)))
        + ": " + answer.Verdict.Word();

    /// <summary>The verdicts, what is wrong, and every run with what is on it.</summary>
    public static string Description(Build build, Assessment answer)
    {
        UnitSystem units = build.Units ?? UnitSystem.Us;
        ConcernVerdicts verdicts = answer.Verdicts;
        IEnumerable<string> sentences =
        [
            $"Safety: {verdicts.Safety.Word()}. Performance: {verdicts.Performance.Word()}. Supply: {verdicts.Supply.Word()}.",
            .. answer.Findings.Where(finding => finding.Severity is not Severity.Info).Select(finding => finding.Message),
            .. answer.Runs.Select(run => OfRun(run, units)),
            .. answer.Amplifiers.Select(amplifier =>
                $"Amplifier {amplifier.Name ?? amplifier.Id} draws {Figures.Amps(amplifier.PeakCurrentAmps)} at full output "
                + $"and gets {Figures.Volts(amplifier.TerminalVolts)}."),
        ];
        return Names.Clean(string.Join(' ', sentences));
    }

    private static string OfRun(RunResult run, UnitSystem units)
    {
        string fuse = run.Fuse is { } near ? $", with a fuse of {Figures.Fuse(near)} at {run.From}" : "";
        string far = run.FarFuse is { } end ? $", with a fuse of {Figures.Fuse(end)} at {run.To}" : "";
        string isolator = run.Isolator is { } part ? $", over a {part.Kind.Word()}" : "";
        return $"Run {run.Name ?? run.Id} leads from {run.From} to {run.To}, {Figures.Length(run.LengthMetres, units)} of "
            + $"{Figures.Conductor(run.Conductor)} ({Figures.Place(run.Route)}){fuse}{far}{isolator}; it carries "
            + $"{Figures.Amps(run.PeakCurrentAmps)} and loses {Figures.Volts(run.DropVolts)}.";
    }
}
