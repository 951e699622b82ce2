using Cablewright.Contract.Assessments;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Findings;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Assessments;

/// <summary>A few plain sentences that can be read out: what to buy, what it does, what to mind.</summary>
internal sealed class Summary
{
    private readonly Variant variant;
    private readonly Verdict verdict;
    private readonly IReadOnlyList<Finding> findings;
    private readonly CableSentence cable;
    private readonly Speech speech;

    private Summary(Variant variant, Verdict verdict, IReadOnlyList<Finding> findings)
    {
        this.variant = variant;
        this.verdict = verdict;
        this.findings = findings;
        cable = new CableSentence(variant);
        speech = variant.Build.Speech;
    }

    public static string Of(Variant variant, Verdict verdict, IReadOnlyList<Finding> findings)
    {
        var summary = new Summary(variant, verdict, findings);
        IEnumerable<string?> sentences =
        [
            .. summary.TrueOutputs(), summary.Opening(), summary.Cable(), summary.cable.FusesToFit(), summary.Numbers(),
            summary.Reason(), summary.Charging(),
        ];
        return string.Join(' ', sentences.OfType<string>());
    }

    /// <summary>What an amplifier is whose label its own fuses belie.</summary>
    private IEnumerable<string> TrueOutputs() => variant.Violations
        .Where(violation => violation.Kind is ViolationKind.RatingAboveOnBoardFuse)
        .Select(new SupplyWording(variant.Build, variant.Supply).TrueOutput);

    private string? Opening() => verdict switch
    {
        Verdict.Fail => Counted("summary.fail", Severity.Fail),
        Verdict.Caution => Counted("summary.caution", Severity.Caution),
        _ => null,
    };

    private string? Cable()
    {
        if (verdict is Verdict.Fail) return null;
        bool isChosen = variant.Build.Runs.Any(run => run.Given is null);
        return speech.Text(
            isChosen ? "summary.use" : verdict is Verdict.Caution ? "summary.made-of" : "summary.like-this",
            new Params { ["cable"] = cable.Cable() });
    }

    private string Counted(string key, Severity severity)
    {
        int count = findings.Count(finding => finding.Severity == severity);
        return speech.Text(count == 1 ? key + ".one" : key, new Params { ["count"] = count });
    }

    private string Numbers()
    {
        CompleteBuild build = variant.Build;
        CircuitModel circuit = variant.Evaluator.Model.Circuit;
        DesignEvaluation evaluation = variant.Sized.Evaluation;
        int worst = Enumerable.Range(0, build.Draws.Count)
            .MaxBy(amplifier => Significant.Round(
                circuit.LostVolts(amplifier, evaluation.Envelope) / circuit.SourceVoltsOf(amplifier)));
        double source = circuit.SourceVoltsOf(worst), terminal = evaluation.Envelope.TerminalVolts[worst];
        double decibels = DropWording.Decibels(source, terminal);
        return speech.Text(
            "summary.numbers" + (evaluation.SolvableShare < 1 ? ".collapse" : "") + (decibels > 0 ? ".quieter" : ""),
            new Params
            {
                ["amps"] = evaluation.Envelope.LoadAmps.Sum(),
                ["amplifier"] = build.Stated.Amplifiers[worst].Id,
                ["terminalVolts"] = terminal,
                ["sourceVolts"] = source,
                ["lostDecibels"] = decibels,
            });
    }

    private string? Reason() => verdict is Verdict.Pass
        ? null
        : speech.Text("summary.first", new Params { ["finding"] = findings[0].Message });

    private string? Charging() => verdict is Verdict.Fail || variant.Build.Supply.HotAmps is not null
        ? null
        : speech.Text("summary.charging-unknown", []);
}
