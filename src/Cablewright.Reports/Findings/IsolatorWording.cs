using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Rules;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>Words for what lies between batteries, and for the alternator's own cable.</summary>
internal sealed class IsolatorWording(CompleteBuild build, DesignEvaluation evaluation, Remedies remedies)
{
    public Wording OverRated(Violation violation) => new(
        Isolator(violation) + "/ratedCurrent",
        new Params
        {
            ["run"] = build.Runs[violation.Index].Id,
            ["ratedAmps"] = violation.Limit,
            ["amps"] = violation.Measured,
        },
        Unit: "A")
    {
        Variant = Kind(violation),
        Remedy = build.Speech.Text("remedy.isolator.rated-higher", Usual(violation)),
    };

    public Wording Unrated(Violation violation) => new(
        Isolator(violation),
        new Params { ["run"] = build.Runs[violation.Index].Id, ["amps"] = violation.Measured },
        Unit: "A",
        HasLimit: false)
    {
        Variant = Kind(violation),
        Remedy = build.Speech.Text("remedy.isolator.state-rating", Usual(violation)),
    };

    public Wording AlternatorCable(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        return new Wording(
            build.SlotAt(violation.End).Pointer,
            new Params { ["run"] = run.Id, ["battery"] = build.PlaceAt(violation.End) })
        {
            Remedy = build.Speech.Text(
                "remedy.fuse.missing-at-alternator-cable", new Params { ["fuse"] = remedies.FuseFor(violation.End) }),
        };
    }

    public Wording AlternatorDrop(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        return new Wording(
            run.Pointer + "/conductor",
            new Params { ["run"] = run.Id, ["volts"] = violation.Measured, ["limitVolts"] = violation.Limit },
            $"{Phrase.Amps(evaluation.Envelope.PeakAmps[violation.Index])} x "
            + $"{Phrase.Milliohms(evaluation.Envelope.Ohms[violation.Index])} = "
            + $"{Phrase.Volts(violation.Measured)}",
            "V");
    }

    /// <summary>The usual rating that bears it; beyond the largest of them the current itself.</summary>
    private Params Usual(Violation violation) =>
        new() { ["amps"] = build.Ruleset.IsolatorRatings.Next(violation.Measured) ?? violation.Measured };

    private string Isolator(Violation violation) => build.Runs[violation.Index].Pointer + "/isolator";

    private string Kind(Violation violation) =>
        build.Runs[violation.Index].Isolator!.Kind is IsolatorKind.Relay ? ".relay" : ".diode";
}
