using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>Words for what lies between batteries, and for the alternator's own cable.</summary>
internal sealed class IsolatorWording(CompleteBuild build, DesignEvaluation evaluation, Remedies remedies)
{
    public Wording OverRated(Violation violation) => new(
        Isolator(violation) + "/ratedCurrent",
        $"The {Kind(violation)} on run \"{build.Runs[violation.Index].Id}\" is rated {Phrase.Amps(violation.Limit)}, and the "
        + "continuous current "
        + $"through it is {Phrase.Amps(violation.Measured)}: it overheats.",
        $"one rated for {Phrase.Amps(violation.Measured)} or more, or less power behind it",
        $"{Phrase.Amps(violation.Measured)} > {Phrase.Amps(violation.Limit)}, the worst of the operating cases",
        "A");

    public Wording Unrated(Violation violation) => new(
        Isolator(violation),
        $"Nothing says what the {Kind(violation)} on run \"{build.Runs[violation.Index].Id}\" may carry; the continuous current "
        + "through it is "
        + $"{Phrase.Amps(violation.Measured)}.",
        $"state its rating; it needs {Phrase.Amps(violation.Measured)} or more",
        "continuous current, the worst of the operating cases",
        "A",
        HasLimit: false);

    public Wording AlternatorCable(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        return new Wording(
            build.SlotAt(violation.End).Pointer,
            $"No fuse protects the alternator's cable \"{run.Id}\" from battery \"{build.PlaceAt(violation.End)}\". Makers leave "
            + "their own short, routed cable without one; a longer or larger one fitted later should have it.",
            $"a fuse at the battery; {remedies.FuseFor(violation.End)}",
            "no fuse stands between the battery's positive terminal and the run");
    }

    public Wording AlternatorDrop(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        return new Wording(
            run.Pointer + "/conductor",
            $"The alternator's cable \"{run.Id}\" takes {Phrase.Volts(violation.Measured)} at what the alternator gives hot; "
            + "more than "
            + $"{Phrase.Volts(violation.Limit)} keeps the battery from charging fully.",
            "a larger conductor or a shorter way",
            $"{Phrase.Amps(evaluation.Envelope.PeakAmps[violation.Index])} x "
            + $"{Phrase.Milliohms(evaluation.Envelope.Ohms[violation.Index])} = "
            + $"{Phrase.Volts(violation.Measured)}",
            "V");
    }

    private string Isolator(Violation violation) => build.Runs[violation.Index].Pointer + "/isolator";

    private string Kind(Violation violation) =>
        build.Runs[violation.Index].Isolator!.Kind is IsolatorKind.Relay ? "isolating relay" : "isolating diode";
}
