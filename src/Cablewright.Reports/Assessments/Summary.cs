using Cablewright.Contract.Assessments;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Findings;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Assessments;

/// <summary>A few plain sentences that can be read out: what to buy, what it does, what to mind.</summary>
internal sealed class Summary
{
    private readonly Variant variant;
    private readonly Verdict verdict;
    private readonly IReadOnlyList<Finding> findings;
    private readonly CableSentence cable;

    private Summary(Variant variant, Verdict verdict, IReadOnlyList<Finding> findings)
    {
        this.variant = variant;
        this.verdict = verdict;
        this.findings = findings;
        cable = new CableSentence(variant);
    }

    public static string Of(Variant variant, Verdict verdict, IReadOnlyList<Finding> findings)
    {
        var summary = new Summary(variant, verdict, findings);
        return $"{summary.TrueOutput()}{summary.Opening()} {summary.Numbers()}{summary.Reason()}{summary.Charging()}";
    }

    /// <summary>What an amplifier is whose label its own fuses belie.</summary>
    private string TrueOutput() => string.Concat(variant.Violations
        .Where(violation => violation.Kind is ViolationKind.RatingAboveOnBoardFuse)
        .Select(violation => new SupplyWording(variant.Build, variant.Supply).TrueOutput(violation) + " "));

    private string Opening() => verdict switch
    {
        Verdict.Fail => $"Do not build it like this: {Counted(Severity.Fail, "rule does", "rules do")} not hold."
            + cable.FusesToFit(),
        Verdict.Caution =>
            $"It can be built once {Counted(Severity.Caution, "point is", "points are")} settled. {Cable("It is made of")}",
        _ => Cable("It can be built like this:"),
    };

    private string Cable(string given)
    {
        bool isChosen = variant.Build.Runs.Any(run => run.Given is null);
        return $"{(isChosen ? "Use" : given)} {cable.Cable()}.{cable.FusesToFit()}";
    }

    private string Counted(Severity severity, string one, string several)
    {
        int count = findings.Count(finding => finding.Severity == severity);
        return count == 1 ? $"1 {one}" : $"{count} {several}";
    }

    private string Numbers()
    {
        CompleteBuild build = variant.Build;
        CircuitModel circuit = variant.Evaluator.Model.Circuit;
        DesignEvaluation evaluation = variant.Sized.Evaluation;
        int worst = Enumerable.Range(0, build.Draws.Count)
            .MaxBy(amplifier => Significant.Round(
                circuit.LostVolts(amplifier, evaluation.Envelope) / circuit.SourceVoltsOf(amplifier)));
        string when = evaluation.SolvableShare < 1 ? "At the most that the wiring can carry" : "At full volume";
        double source = circuit.SourceVoltsOf(worst), terminal = evaluation.Envelope.TerminalVolts[worst];
        return $"{when} the system draws {Phrase.Amps(evaluation.Envelope.LoadAmps.Sum())}, and amplifier "
            + $"\"{build.Stated.Amplifiers[worst].Id}\" gets {Phrase.Volts(terminal)} of {Phrase.Volts(source)}"
            + $"{Effect(source, terminal)}.";
    }

    private string Reason() => verdict is Verdict.Pass ? "" : $" First: {findings[0].Message}";

    private string Charging() => verdict is Verdict.Fail || variant.Build.Supply.HotAmps is not null
        ? ""
        : " State what the alternator is rated for to have the charging judged.";

    private static string Effect(double source, double terminal) => DropWording.Decibels(source, terminal) is > 0 and var decibels
        ? $", up to {Phrase.Number(decibels)} dB less than at the battery"
        : "";
}
