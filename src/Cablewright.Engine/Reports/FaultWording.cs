using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rules;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Reports;

/// <summary>Words for what short circuits and overloads would do.</summary>
internal sealed class FaultWording(CompleteBuild build, DesignEvaluation evaluation, FaultReport report, FaultRemedies remedies)
{
    public Wording MayNotOpen(Breach breach)
    {
        Clearing clearing = ClearingOf(breach.Index);
        return new Wording(
            build.Runs[breach.Index].Pointer,
            $"In a short circuit at the end of run \"{Id(breach.Index)}\" the {Name(clearing.Guard)} carries as little as "
            + $"{Phrase.Amps(breach.Measured)}, and it is certain to open only from {Phrase.Amps(breach.Limit)}: "
            + "it may not open at all.",
            remedies.For(clearing),
            $"battery \"{build.Batteries[clearing.Battery].Id}\" alone, hot conductors, joints, fuses and body: "
            + $"{Phrase.Amps(breach.Measured)} = {Phrase.Percent(breach.Measured / clearing.Guard.PassingAmps)} of "
            + $"{Phrase.Amps(clearing.Guard.PassingAmps)}; certain from "
            + $"{Phrase.Percent(clearing.Guard.Fuse.Family.OpeningBand.CertainFrom)} ({Band(clearing)})",
            "A");
    }

    public Wording OpensTooLate(Breach breach)
    {
        Clearing clearing = ClearingOf(breach.Index);
        return new Wording(
            build.Runs[breach.Index].Pointer,
            $"In a short circuit at the end of run \"{Id(breach.Index)}\" the {Name(clearing.Guard)} may take "
            + $"{Seconds(breach.Measured)} to open, and {evaluation.Decision.Conductors[breach.Index]} withstands it for "
            + $"{Seconds(breach.Limit)}.",
            remedies.For(clearing),
            $"smallest fault {Phrase.Amps(clearing.GuardAmps)} = "
            + $"{Phrase.Percent(clearing.GuardAmps / clearing.Guard.PassingAmps)} of {Phrase.Amps(clearing.Guard.PassingAmps)}: "
            + $"opens within {Seconds(breach.Measured)} ({Band(clearing)}); "
            + $"withstand {Seconds(breach.Limit)} at {Phrase.Amps(clearing.ConductorAmps)}, t = (k S / I)^2 to 5 s, "
            + "heat balance with storage above",
            "s");
    }

    public Wording BandRecalled(Breach breach)
    {
        FittedFuse fuse = Fuse(breach);
        Clearing clearing = report.WorstOf(breach.End)!;
        return new Wording(
            Slot(breach).Pointer,
            $"The fuse of run \"{Id(breach.Index)}\" opens in time by a time-current band of {fuse.Family.Name.Word()} that is "
            + $"only recalled: within {Seconds(clearing.OpensSeconds ?? 0)} against {Seconds(clearing.WithstandSeconds)}.",
            "compare with the part's own time-current curve",
            $"{fuse.Family.OpeningBand.Source} (from memory); smallest fault {Phrase.Amps(clearing.GuardAmps)} at the end of "
            + $"run \"{Id(clearing.Run)}\"");
    }

    public Wording Interrupting(Breach breach)
    {
        FittedFuse fuse = Fuse(breach);
        bool stated = fuse.InterruptingRatingAmps is not null;
        string what = stated
            ? $"is rated to interrupt {Phrase.Amps(breach.Limit)}: it may burst instead of opening"
            : $"has no interrupting rating stated; its family is known for {Phrase.Amps(breach.Limit)}";
        return new Wording(
            Slot(breach).Pointer,
            $"A short circuit behind the fuse of run \"{Id(breach.Index)}\" can reach {Phrase.Amps(breach.Measured)}, "
            + $"and the fuse {what}.",
            (stated ? "" : $"state the part's own interrupting rating, if it is {Phrase.Amps(breach.Measured)} or more; else ")
                + FaultRemedies.FamilyThatInterrupts(breach.Measured),
            "every battery full and at its least resistance, alternator besides, cold conductors: "
            + $"{Phrase.Amps(breach.Measured)}; {fuse.Family.InterruptingRatingAmps.Source}",
            "A");
    }

    public Wording Overload(Breach breach)
    {
        Clearing clearing = ClearingOf(breach.Index);
        var overload = new Overload(build, evaluation);
        (double share, double celsius) = overload.Worst(breach.Index, clearing.Guard, breach.Limit)!.Value;
        double? from = overload.HurtFrom(breach.Index, clearing.Guard, breach.Limit);
        string range = from is { } start ? $" It is hurt from about {Phrase.Amps(start * clearing.Guard.PassingAmps)}." : "";
        return new Wording(
            build.Runs[breach.Index].Pointer,
            $"At {Phrase.Percent(share)} of its rating the {Name(clearing.Guard)} may take so long that run "
            + $"\"{Id(breach.Index)}\" reaches {build.Phrase.Temperature(celsius)}; "
            + $"its insulation bears {build.Phrase.Temperature(breach.Limit)} for a few hours.{range}",
            "a smaller fuse that still carries the load, or a larger conductor",
            $"heated at {Phrase.Amps(share * clearing.Guard.PassingAmps)} for "
            + (clearing.Guard.Fuse.Family.OpeningBand.SlowestSeconds(share) is { } seconds
                ? Seconds(seconds)
                : "ever, since opening is not certain")
            + $" ({Band(clearing)})",
            "C");
    }

    public Wording NotSelective(Breach breach) => new(
        Slot(breach).Pointer,
        $"In a short circuit behind the fuse of run \"{Id(breach.Index)}\" it may take {Seconds(breach.Measured)}, "
        + $"and the fuse of run \"{Id(breach.Other)}\" before it may open within {Seconds(breach.Limit)}: "
        + "everything behind that goes dead.",
        "a smaller or faster fuse here, or a larger or slower one before it, as far as the conductors allow",
        $"slow edge here {Seconds(breach.Measured)} > fast edge before {Seconds(breach.Limit)}, smallest fault",
        "s");

    public static Wording BodyDrop(Breach breach) => new(
        "/vehicle/body/returnResistance",
        $"{Phrase.Volts(breach.Measured)} is lost in the body and the battery's strap at full output; "
        + $"a good ground path loses less than {Phrase.Volts(breach.Limit)}.",
        "a larger strap from the battery to the body, cleaner ground points, or a return wire to the battery",
        $"{Phrase.Volts(breach.Measured)} > {Phrase.Volts(breach.Limit)}",
        "V");

    private static string Seconds(double value) =>
        double.IsInfinity(value) ? "as long as it lasts" : value < 1 ? Phrase.Number(value * 1000) + " ms"
        : value < 600 ? Phrase.Number(value) + " s" : Phrase.Number(value / 60) + " min";

    private static string Band(Clearing clearing) =>
        clearing.Guard.Fuse.Family.OpeningBand.Source + (clearing.Guard.Fuse.Family.OpeningBand.IsRead ? "" : ", from memory");

    private string Name(Guard guard) =>
        $"{Phrase.Amps(guard.Fuse.RatingAmps)} {guard.Fuse.Family.Name.Word()} fuse of run \"{Id(guard.Run)}\"";

    private string Id(int run) => build.Runs[run].Id;

    private Clearing ClearingOf(int run) => report.Clearings.First(clearing => clearing.Run == run);

    private FittedFuse Fuse(Breach breach) => evaluation.Decision.FuseAt(breach.End)!;

    private FuseSlot Slot(Breach breach) => build.SlotAt(breach.End);
}
