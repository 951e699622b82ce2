using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rules;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Messages;
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
            Of(violation.Index, clearing.Device, new Params
            {
                ["amps"] = violation.Measured,
                ["certainAmps"] = violation.Limit,
            }),
            $"battery \"{build.Batteries[clearing.Battery].Id}\" alone, hot conductors, joints, fuses and body: "
            + $"{Phrase.Amps(violation.Measured)} = "
            + $"{Phrase.Percent(violation.Measured / clearing.Device.TotalRatingAmps)} of "
            + $"{Phrase.Amps(clearing.Device.TotalRatingAmps)}; certain from "
            + $"{Phrase.Percent(clearing.Device.Fuse.Band.CertainFrom)} ({Band(clearing)})",
            "A")
        {
            Remedy = remedies.For(clearing),
        };
    }

    public Wording ClearsTooLate(Violation violation)
    {
        Clearing clearing = ClearingOf(violation.Index);
        return new Wording(
            build.Runs[violation.Index].Pointer,
            Of(violation.Index, clearing.Device, new Params
            {
                ["seconds"] = violation.Measured,
                ["conductor"] = evaluation.Design.Conductors[violation.Index].ToString(),
                ["withstandSeconds"] = violation.Limit,
            }),
            $"smallest fault {Phrase.Amps(clearing.DeviceAmps)} = "
            + $"{Phrase.Percent(clearing.DeviceAmps / clearing.Device.TotalRatingAmps)} of "
            + $"{Phrase.Amps(clearing.Device.TotalRatingAmps)}: "
            + $"opens within {Phrase.Seconds(violation.Measured)} ({Band(clearing)}); "
            + $"withstand {Phrase.Seconds(violation.Limit)} at {Phrase.Amps(clearing.ConductorAmps)}, t = (k S / I)^2 to 5 s, "
            + "heat balance with storage above",
            "s")
        {
            Remedy = remedies.For(clearing),
        };
    }

    public Wording BandRecalled(Violation violation)
    {
        FittedFuse fuse = Fuse(violation);
        Clearing clearing = report.WorstOf(violation.End)!;
        return new Wording(
            Slot(violation).Pointer,
            new Params
            {
                ["run"] = Id(violation.Index),
                ["family"] = fuse.Family.Name.Word(),
                ["seconds"] = clearing.ClearingSeconds ?? 0,
                ["withstandSeconds"] = clearing.WithstandSeconds,
            },
            $"{fuse.Band.Source} (from memory); smallest fault {Phrase.Amps(clearing.DeviceAmps)} at the end "
            + "of "
            + $"run \"{Id(clearing.Run)}\"");
    }

    public Wording Interrupting(Violation violation)
    {
        FittedFuse fuse = Fuse(violation);
        bool stated = fuse.InterruptingRatingAmps is not null;
        bool isToBuy = RequiredInterrupting.IsThereAPart(fuse, violation.Measured);
        double bolted = report.LargestAmps.GetValueOrDefault(topology.NodeAt(violation.End), violation.Measured);
        return new Wording(
            Slot(violation).Pointer,
            new Params
            {
                ["run"] = Id(violation.Index),
                ["amps"] = violation.Measured,
                ["ratedAmps"] = violation.Limit,
            },
            $"{Phrase.Amps(violation.Measured)} by the batteries' cold-cranking current (ABYC E-11), by the computed current for "
            + $"lithium; bolted at the fuse, every battery full: {Phrase.Amps(bolted)}; "
            + fuse.FamilyInterrupts.Source,
            "A")
        {
            Variant = (stated ? ".stated" : "") + (isToBuy ? ".to-buy" : violation.Severity is Severity.Info ? ".usual" : ""),
            Remedy = isToBuy
                ? remedies.PartThatInterrupts(fuse.Family, violation.Measured)
                : remedies.FamilyThatInterrupts(violation.Measured, stated),
        };
    }

    public Wording Overload(Violation violation)
    {
        Clearing clearing = ClearingOf(violation.Index);
        var overload = new Overload(build, evaluation);
        (double share, double celsius) = overload.Worst(violation.Index, clearing.Device, violation.Limit)!.Value;
        double? from = overload.HurtFrom(violation.Index, clearing.Device, violation.Limit);
        return new Wording(
            build.Runs[violation.Index].Pointer,
            Of(violation.Index, clearing.Device, new Params
            {
                ["ofRatingShare"] = share,
                ["celsius"] = celsius,
                ["limitCelsius"] = violation.Limit,
            }.And(from is { } start ? new Params { ["hurtFromAmps"] = start * clearing.Device.TotalRatingAmps } : [])),
            $"heated at {Phrase.Amps(share * clearing.Device.TotalRatingAmps)} for "
            + (clearing.Device.Fuse.Band.SlowestSeconds(share) is { } seconds
                ? Phrase.Seconds(seconds)
                : "ever, since opening is not certain")
            + $" ({Band(clearing)})",
            "C")
        {
            Variant = from is null ? "" : ".from",
        };
    }

    public Wording NotSelective(Violation violation) => new(
        Slot(violation).Pointer,
        new Params
        {
            ["run"] = Id(violation.Index),
            ["seconds"] = violation.Measured,
            ["runBefore"] = Id(violation.Other),
            ["beforeSeconds"] = violation.Limit,
        },
        Unit: "s");

    public static Wording BodyDrop(Violation violation) => new(
        "/vehicle/body/returnResistance",
        new Params { ["volts"] = violation.Measured, ["goodVolts"] = violation.Limit },
        $"{Phrase.Volts(violation.Measured)} > {Phrase.Volts(violation.Limit)}",
        "V");

    private static string Band(Clearing clearing) =>
        clearing.Device.Fuse.Band is { IsRead: false } recalled
            ? recalled.Source + ", from memory"
            : clearing.Device.Fuse.Band.Source;

    /// <summary>The values of a run and of the fuse that protects it, and others.</summary>
    private Params Of(int run, ProtectiveDevice device, Params others) => new Params
    {
        ["run"] = Id(run),
        ["ratingAmps"] = device.Fuse.RatingAmps,
        ["family"] = device.Fuse.Family.Name.Word(),
        ["fuseRun"] = Id(device.Run),
    }.And(others);

    private string Id(int run) => build.Runs[run].Id;

    private Clearing ClearingOf(int run) => report.Clearings.First(clearing => clearing.Run == run);

    private FittedFuse Fuse(Violation violation) => evaluation.Design.FuseAt(violation.End)!;

    private FuseSlot Slot(Violation violation) => build.SlotAt(violation.End);
}
