using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rules;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>Words for what short circuits and overloads would do.</summary>
internal sealed class FaultWording(
    CompleteBuild build, SupplyTopology topology, DesignEvaluation evaluation, FaultReport report, FaultRemedies remedies)
{
    public Wording MayNotOpen(Violation violation)
    {
        Clearing clearing = ClearingOf(violation.Index);
        return new Wording(
            build.Runs[violation.Index].Pointer,
            $"In a short circuit at the end of run \"{Id(violation.Index)}\" the {Name(clearing.Device)} carries as "
            + "little as "
            + $"{Phrase.Amps(violation.Measured)}, and it is certain to open only from {Phrase.Amps(violation.Limit)}: "
            + "it may not open at all.",
            remedies.For(clearing),
            $"battery \"{build.Batteries[clearing.Battery].Id}\" alone, hot conductors, joints, fuses and body: "
            + $"{Phrase.Amps(violation.Measured)} = "
            + $"{Phrase.Percent(violation.Measured / clearing.Device.TotalRatingAmps)} of "
            + $"{Phrase.Amps(clearing.Device.TotalRatingAmps)}; certain from "
            + $"{Phrase.Percent(clearing.Device.Fuse.Band.CertainFrom)} ({Band(clearing)})",
            "A");
    }

    public Wording ClearsTooLate(Violation violation)
    {
        Clearing clearing = ClearingOf(violation.Index);
        return new Wording(
            build.Runs[violation.Index].Pointer,
            $"In a short circuit at the end of run \"{Id(violation.Index)}\" the {Name(clearing.Device)} may take "
            + $"{Phrase.Seconds(violation.Measured)} to open, and {evaluation.Design.Conductors[violation.Index]} withstands it for "
            + $"{Phrase.Seconds(violation.Limit)}.",
            remedies.For(clearing),
            $"smallest fault {Phrase.Amps(clearing.DeviceAmps)} = "
            + $"{Phrase.Percent(clearing.DeviceAmps / clearing.Device.TotalRatingAmps)} of "
            + $"{Phrase.Amps(clearing.Device.TotalRatingAmps)}: "
            + $"opens within {Phrase.Seconds(violation.Measured)} ({Band(clearing)}); "
            + $"withstand {Phrase.Seconds(violation.Limit)} at {Phrase.Amps(clearing.ConductorAmps)}, t = (k S / I)^2 to 5 s, "
            + "heat balance with storage above",
            "s");
    }

    public Wording BandRecalled(Violation violation)
    {
        FittedFuse fuse = Fuse(violation);
        Clearing clearing = report.WorstOf(violation.End)!;
        return new Wording(
            Slot(violation).Pointer,
            $"The fuse of run \"{Id(violation.Index)}\" opens in time by a time-current band of {fuse.Family.Name.Word()} that "
            + "is "
            + $"from memory: within {Phrase.Seconds(clearing.ClearingSeconds ?? 0)} against "
            + $"{Phrase.Seconds(clearing.WithstandSeconds)}.",
            "compare with the part's own time-current curve",
            $"{fuse.Band.Source} (from memory); smallest fault {Phrase.Amps(clearing.DeviceAmps)} at the end "
            + "of "
            + $"run \"{Id(clearing.Run)}\"");
    }

    public Wording Interrupting(Violation violation)
    {
        FittedFuse fuse = Fuse(violation);
        bool stated = fuse.InterruptingRatingAmps is not null;
        string what = stated
            ? $"the fuse is rated for {Phrase.Amps(violation.Limit)}"
            : $"its family is known for {Phrase.Amps(violation.Limit)}";
        bool isToBuy = RequiredInterrupting.IsThereAPart(fuse, violation.Measured);
        string end = isToBuy ? "buy a part that is rated for so much, which there are"
            : violation.Severity is Severity.Info ? "vehicle makers fit plug-in fuses there all the same"
            : "it may burst instead of opening";
        double bolted = report.LargestAmps.GetValueOrDefault(topology.NodeAt(violation.End), violation.Measured);
        return new Wording(
            Slot(violation).Pointer,
            $"The fuse of run \"{Id(violation.Index)}\" should interrupt {Phrase.Amps(
                violation.Measured)} at these batteries, and "
            + $"{what}: {end}.",
            isToBuy ? $"a {fuse.Family.Name.Word()} fuse with an interrupting rating of {Phrase.Amps(violation.Measured)} or more"
                : (stated ? "" : $"state the part's own interrupting rating, if it is {Phrase.Amps(violation.Measured)} or more; else ")
                + remedies.FamilyThatInterrupts(violation.Measured),
            $"{Phrase.Amps(violation.Measured)} by the batteries' cold-cranking current (ABYC E-11), by the computed current for "
            + $"lithium; bolted at the fuse, every battery full: {Phrase.Amps(bolted)}; "
            + fuse.FamilyInterrupts.Source,
            "A");
    }

    public Wording Overload(Violation violation)
    {
        Clearing clearing = ClearingOf(violation.Index);
        var overload = new Overload(build, evaluation);
        (double share, double celsius) = overload.Worst(violation.Index, clearing.Device, violation.Limit)!.Value;
        double? from = overload.HurtFrom(violation.Index, clearing.Device, violation.Limit);
        string range = from is { } start
            ? $" It is hurt from about {Phrase.Amps(start * clearing.Device.TotalRatingAmps)}."
            : "";
        return new Wording(
            build.Runs[violation.Index].Pointer,
            $"At {Phrase.Percent(share)} of its rating the {Name(clearing.Device)} may take so long that run "
            + $"\"{Id(violation.Index)}\" reaches {build.Phrase.Temperature(celsius)}; "
            + $"its insulation is good for {build.Phrase.Temperature(violation.Limit)} for a few hours.{range}",
            "a smaller fuse that still carries the load, or a larger conductor",
            $"heated at {Phrase.Amps(share * clearing.Device.TotalRatingAmps)} for "
            + (clearing.Device.Fuse.Band.SlowestSeconds(share) is { } seconds
                ? Phrase.Seconds(seconds)
                : "ever, since opening is not certain")
            + $" ({Band(clearing)})",
            "C");
    }

    public Wording NotSelective(Violation violation) => new(
        Slot(violation).Pointer,
        $"In a short circuit behind the fuse of run \"{Id(violation.Index)}\" it may take {Phrase.Seconds(violation.Measured)}, "
        + $"and the fuse of run \"{Id(violation.Other)}\" before it may open within {Phrase.Seconds(violation.Limit)}: "
        + "everything behind that goes dead.",
        "a smaller or faster fuse here, or a larger or slower one before it, as far as the conductors allow",
        $"slow edge here {Phrase.Seconds(violation.Measured)} > fast edge before {Phrase.Seconds(violation.Limit)}, smallest fault",
        "s");

    public static Wording BodyDrop(Violation violation) => new(
        "/vehicle/body/returnResistance",
        $"{Phrase.Volts(violation.Measured)} is lost in the body and the battery's strap at full output; "
        + $"a good ground path loses less than {Phrase.Volts(violation.Limit)}.",
        "a larger strap from the battery to the body, cleaner ground points, or a return wire to the battery",
        $"{Phrase.Volts(violation.Measured)} > {Phrase.Volts(violation.Limit)}",
        "V");

    private static string Band(Clearing clearing) =>
        clearing.Device.Fuse.Band is { IsRead: false } recalled
            ? recalled.Source + ", from memory"
            : clearing.Device.Fuse.Band.Source;

    private string Name(ProtectiveDevice device) =>
        $"{Phrase.Amps(device.Fuse.RatingAmps)} {device.Fuse.Family.Name.Word()} fuse of run \"{Id(device.Run)}\"";

    private string Id(int run) => build.Runs[run].Id;

    private Clearing ClearingOf(int run) => report.Clearings.First(clearing => clearing.Run == run);

    private FittedFuse Fuse(Violation violation) => evaluation.Design.FuseAt(violation.End)!;

    private FuseSlot Slot(Violation violation) => build.SlotAt(violation.End);
}
