using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Text;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Assessments;

/// <summary>Two or three plain sentences that can be read out.</summary>
internal static class Summary
{
    public static string Of(Variant variant, Verdict verdict, IReadOnlyList<Finding> findings) =>
        $"{Opening(verdict, findings)} {Numbers(variant)}{Reason(verdict, findings)}";

    private static string Opening(Verdict verdict, IReadOnlyList<Finding> findings)
    {
        int fails = findings.Count(finding => finding.Severity is Severity.Fail);
        int cautions = findings.Count(finding => finding.Severity is Severity.Caution);
        return verdict switch
        {
            Verdict.Fail => $"Do not build it like this: {Counted(fails, "rule does", "rules do")} not hold.",
            Verdict.Caution => $"It can be built once {Counted(cautions, "point is", "points are")} settled.",
            _ => "Every rule holds.",
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
}
