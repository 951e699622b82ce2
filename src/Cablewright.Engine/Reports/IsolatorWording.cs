using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Reports;

/// <summary>Words for what lies between batteries, and for the alternator's own cable.</summary>
internal sealed class IsolatorWording(CompleteBuild build, DesignEvaluation evaluation, Remedies remedies)
{
    public Wording OverRated(Breach breach) => new(
        Isolator(breach) + "/ratedCurrent",
        $"The {Kind(breach)} on run \"{build.Runs[breach.Index].Id}\" is rated {Phrase.Amps(breach.Limit)}, and the lasting "
        + $"current through it is {Phrase.Amps(breach.Measured)}: it overheats.",
        $"one rated for {Phrase.Amps(breach.Measured)} or more, or less power behind it",
        $"{Phrase.Amps(breach.Measured)} > {Phrase.Amps(breach.Limit)}, the worst of the operating cases",
        "A");

    public Wording Unrated(Breach breach) => new(
        Isolator(breach),
        $"Nothing says what the {Kind(breach)} on run \"{build.Runs[breach.Index].Id}\" may carry; the lasting current through "
        + $"it is {Phrase.Amps(breach.Measured)}.",
        $"state its rating; it needs {Phrase.Amps(breach.Measured)} or more",
        "lasting current, the worst of the operating cases",
        "A",
        HasLimit: false);

    public Wording AlternatorCable(Breach breach)
    {
        CompleteRun run = build.Runs[breach.Index];
        return new Wording(
            (breach.IsFar ? run.Far : run.Near).Pointer,
            $"No fuse protects the alternator's cable \"{run.Id}\" from battery \"{(breach.IsFar ? run.To : run.From)}\". Makers "
            + "leave their own short, routed cable without one; a longer or larger one fitted later should have it.",
            $"a fuse at the battery; {remedies.FuseFor(breach.Index, breach.IsFar)}",
            "no fuse stands between the battery's positive terminal and the run");
    }

    public Wording AlternatorDrop(Breach breach)
    {
        CompleteRun run = build.Runs[breach.Index];
        return new Wording(
            run.Pointer + "/conductor",
            $"The alternator's cable \"{run.Id}\" takes {Phrase.Volts(breach.Measured)} at the alternator's rated current; more "
            + $"than {Phrase.Volts(breach.Limit)} keeps the battery from charging fully.",
            "a larger conductor or a shorter way",
            $"{Phrase.Amps(evaluation.Currents.PeakAmps[breach.Index])} x "
            + $"{Phrase.Milliohms(evaluation.Currents.Ohms[breach.Index])} = {Phrase.Volts(breach.Measured)}",
            "V");
    }

    private string Isolator(Breach breach) => build.Runs[breach.Index].Pointer + "/isolator";

    private string Kind(Breach breach) =>
        build.Runs[breach.Index].Isolator!.Kind is IsolatorKind.Relay ? "isolating relay" : "isolating diode";
}
