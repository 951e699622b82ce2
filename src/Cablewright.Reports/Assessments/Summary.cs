using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Assessments;

/// <summary>Two or three plain sentences that can be read out.</summary>
internal static class Summary
{
    public static string Of(Variant variant, Verdict verdict, IReadOnlyList<Finding> findings) =>
        $"{Opening(verdict, findings)} {Numbers(variant)}{Reason(verdict, findings)}{FusesToFit(variant)}";

    private static string Opening(Verdict verdict, IReadOnlyList<Finding> findings)
    {
        int fails = findings.Count(finding => finding.Severity is Severity.Fail);
        int cautions = findings.Count(finding => finding.Severity is Severity.Caution);
        return verdict switch
        {
            Verdict.Fail => $"Do not build it like this: {Counted(fails, "rule does", "rules do")} not hold.",
            Verdict.Caution => $"It can be built once {Counted(cautions, "point is", "points are")} settled.",
            _ => "It can be built like this.",
        };
    }

    private static string Counted(int count, string one, string several) => count == 1 ? $"1 {one}" : $"{count} {several}";

    private static string Numbers(Variant variant)
    {
        CompleteBuild build = variant.Build;
        CircuitModel circuit = variant.Evaluator.Model.Circuit;
        DesignEvaluation evaluation = variant.Sized.Evaluation;
        double peak = evaluation.Envelope.LoadAmps.Sum();
        int worst = Enumerable.Range(0, build.Draws.Count)
            .MaxBy(amplifier => Significant.Round(
                circuit.LostVolts(amplifier, evaluation.Envelope) / circuit.SourceVoltsOf(amplifier)));
        string id = build.Stated.Amplifiers[worst].Id;
        string when = evaluation.SolvableShare < 1 ? "At the most that the wiring can carry" : "At full output";
        return $"{when} the system draws {Phrase.Amps(peak)}, and amplifier \"{id}\" gets "
            + $"{Phrase.Volts(evaluation.Envelope.TerminalVolts[worst])} of "
            + $"{Phrase.Volts(circuit.SourceVoltsOf(worst))}.";
    }

    private static string Reason(Verdict verdict, IReadOnlyList<Finding> findings) =>
        verdict is Verdict.Pass ? "" : $" First: {findings[0].Message}";

    /// <summary>A fuse that was left open is part of the answer, and what must never be left out.</summary>
    private static string FusesToFit(Variant variant)
    {
        string[] fuses = [.. variant.Violations.Where(violation => violation.Kind is ViolationKind.FuseChosen)
            .Select(violation => Named(variant, violation.End))];
        return fuses.Length == 0 ? "" : $" FIT {(fuses.Length == 1 ? "A FUSE" : "FUSES")}: {string.Join("; ", fuses)}.";
    }

    private static string Named(Variant variant, RunEnd end)
    {
        FittedFuse fuse = variant.Sized.Evaluation.Design.FuseAt(end)!;
        int count = fuse.PerConductor ? variant.Sized.Evaluation.Design.Conductors[end.Run].Count : 1;
        string each = count > 1 ? $"{count} x " : "";
        return $"{each}{Phrase.Amps(fuse.RatingAmps)} ({fuse.Family.Name.Word()}) in run \"{variant.Build.Runs[end.Run].Id}\" at "
            + $"\"{variant.Build.PlaceAt(end)}\"";
    }
}
