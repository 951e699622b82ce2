using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>Words for fuses that are missing or wrong.</summary>
internal sealed class FuseWording(Variant variant, Remedies remedies)
{
    private readonly CompleteBuild build = variant.Build;
    private readonly BuildModel model = variant.Evaluator.Model;
    private readonly DesignEvaluation evaluation = variant.Sized.Evaluation;

    public Wording MissingAtBattery(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        string end = build.PlaceAt(violation.End);
        return new Wording(
            Slot(violation).Pointer,
            $"Nothing protects run \"{run.Id}\" from battery \"{end}\": "
            + "in a short circuit it carries the battery's full current until it burns.",
            $"a fuse within {build.Phrase.Length(MostDistance)} of the battery; {remedies.FuseFor(violation.End)}",
            "no fuse stands between the battery's positive terminal and the run");
    }

    public Wording MissingAtReduction(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        return new Wording(
            run.Pointer,
            $"Run \"{run.Id}\" ({Conductor(violation.Index)}) is rated for {Phrase.Amps(violation.Limit)}, "
            + "and the fuse before it "
            + $"({Protection(violation.Index)}) lets {Phrase.Amps(violation.Measured)} through: "
            + "a short circuit or overload behind the reduction is not interrupted in time.",
            $"a fuse where the conductor gets smaller; {remedies.FuseFor(violation.End)}",
            $"passing {Phrase.Amps(violation.Measured)} > ampacity {Phrase.Amps(violation.Limit)}",
            "A");
    }

    public Wording AboveConductor(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        return new Wording(
            Slot(violation).Pointer + "/rating",
            $"The fuse of run \"{run.Id}\" lets {Phrase.Amps(violation.Measured)} through, and {Conductor(violation.Index)} "
            + "is rated for "
            + $"{Phrase.Amps(violation.Limit)} here.",
            remedies.FuseFor(violation.End),
            $"rating {Phrase.Amps(violation.Measured)} > ampacity {Phrase.Amps(violation.Limit)}",
            "A");
    }

    public Wording NoneFits(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        FittedFuse fuse = Fuse(violation);
        int sharing = fuse.PerConductor ? evaluation.Design.Conductors[violation.Index].Count : 1;
        double load = evaluation.Envelope.ThermalAmps[violation.Index] / sharing;
        double factor = fuse.Family.ContinuousUseFactor.Value;
        return new Wording(
            run.Pointer + "/conductor",
            $"No standard fuse fits run \"{run.Id}\": to carry {Phrase.Amps(load)} it must be {Phrase.Amps(fuse.RatingAmps)} or "
            + $"more{(sharing > 1 ? " for each conductor" : "")}, and {Conductor(violation.Index)} is rated for only "
            + $"{Phrase.Amps(violation.Limit)}. The conductor is too small.",
            remedies.ConductorThatCarries(violation.Index, violation.Measured) + ", a cooler route, or less power",
            $"load {Phrase.Amps(load)} / {Phrase.Number(factor)} ({fuse.Family.Name.Word()}, continuous use) = "
            + $"{Phrase.Amps(load / factor)}, next standard rating {Phrase.Amps(fuse.RatingAmps)}; "
            + $"ampacity {Phrase.Amps(violation.Limit)}",
            "A");
    }

    public Wording Parallel(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        int count = evaluation.Design.Conductors[violation.Index].Count;
        return new Wording(
            run.Pointer,
            $"The {count} parallel conductors of run \"{run.Id}\" share a fuse that lets {Phrase.Amps(violation.Measured)} "
            + $"through, and one of them alone is rated for {Phrase.Amps(violation.Limit)}: if one breaks, the others are not "
            + "protected.",
            "a fuse for each conductor",
            $"passing {Phrase.Amps(violation.Measured)} > ampacity of one conductor {Phrase.Amps(violation.Limit)}",
            "A");
    }

    public Wording BelowLoad(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        FittedFuse fuse = Fuse(violation);
        double factor = fuse.Family.ContinuousUseFactor.Value;
        return new Wording(
            Slot(violation).Pointer + "/rating",
            $"The {Phrase.Amps(fuse.RatingAmps)} fuse of run \"{run.Id}\" carries {Phrase.Amps(violation.Limit)} continuous, "
            + $"and the run's continuous current is {Phrase.Amps(violation.Measured)}{Circumstance()}: it "
            + (violation.Severity is Severity.Fail ? "will open." : "runs hot and ages."),
            remedies.FuseFor(violation.End),
            $"{Phrase.Amps(fuse.RatingAmps)} x {Phrase.Number(factor)} (continuous use, "
            + $"{fuse.Family.ContinuousUseFactor.Source}) "
            + $"= {Phrase.Amps(violation.Limit)} < {Phrase.Amps(violation.Measured)}",
            "A");
    }

    public Wording HotBelowLoad(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        FittedFuse fuse = Fuse(violation);
        return new Wording(
            Slot(violation).Pointer + "/rating",
            $"The {Phrase.Amps(fuse.RatingAmps)} fuse of run \"{run.Id}\" carries {Phrase.Amps(violation.Limit)} continuous at "
            + $"{build.Phrase.Temperature(run.AirCelsius)}, and the run's continuous current is {Phrase.Amps(violation.Measured)}"
            + $"{Circumstance()}: it may open when the air around it is that hot.",
            "the fuse in a cooler place, a larger conductor with a larger fuse, or less power",
            $"{Phrase.Amps(fuse.RatingAmps)} x {Phrase.Number(fuse.Family.ContinuousUseFactor.Value)} (continuous use) x "
            + $"{Phrase.Number(fuse.HotShare)} (of that, at {Phrase.Number(run.AirCelsius)} C) = {Phrase.Amps(
                violation.Limit)} < "
            + $"{Phrase.Amps(violation.Measured)}",
            "A");
    }

    public Wording BelowOwnFuses(Violation violation) => new(
        Slot(violation).Pointer + "/rating",
        $"The fuse of run \"{build.Runs[violation.Index].Id}\" is rated {Phrase.Amps(violation.Measured)}, and the amplifiers' "
        + $"own fuses {Phrase.Amps(violation.Limit)} together: at full output it may open before they do.",
        $"a fuse of {Phrase.Amps(violation.Limit)} where the conductor allows it, else leave it: it protects the conductor",
        $"{Phrase.Amps(violation.Measured)} < {Phrase.Amps(violation.Limit)}",
        "A");

    public Wording OpensOnNote(Violation violation)
    {
        FittedFuse fuse = Fuse(violation);
        double peak = evaluation.Envelope.PeakAmps[violation.Index];
        return new Wording(
            Slot(violation).Pointer + "/rating",
            $"At full output run \"{build.Runs[violation.Index].Id}\" carries {Phrase.Amps(peak)}, and its "
            + $"{Phrase.Amps(fuse.RatingAmps)} fuse may open after {Phrase.Number(violation.Measured)} s, before a bass note has "
            + "ended.",
            remedies.FuseForFullOutput(violation.End),
            $"{Phrase.Percent(peak / fuse.TotalRatingAmps(Conductor(violation.Index).Count))} of its rating: fast edge "
            + $"{Phrase.Number(violation.Measured)} s < {Phrase.Number(violation.Limit)} s "
            + $"({fuse.Band.Source})",
            "s");
    }

    public Wording NotStandard(Violation violation)
    {
        FittedFuse fuse = Fuse(violation);
        IReadOnlyList<double> ratings = fuse.Family.RatingsAmps.Values;
        return new Wording(
            Slot(violation).Pointer + "/rating",
            $"The family {fuse.Family.Name.Word()} is not known to be made in {Phrase.Amps(violation.Measured)}.",
            $"one of {string.Join(", ", ratings.Select(Phrase.Number))} A",
            $"rating ladder of {fuse.Family.Name.Word()}: {Phrase.Number(ratings[0])} to {Phrase.Number(ratings[^1])} A",
            "A",
            HasLimit: false);
    }

    public Wording VoltageTooLow(Violation violation) => new(
        Slot(violation).Pointer,
        $"The fuse of run \"{build.Runs[violation.Index].Id}\" is rated {Phrase.Volts(violation.Measured)}, "
        + $"and the system can reach {Phrase.Volts(violation.Limit)}: it may not interrupt the arc.",
        $"a fuse rated for {Phrase.Volts(violation.Limit)} direct current or more",
        $"highest system voltage {Phrase.Volts(violation.Limit)} > rated {Phrase.Volts(violation.Measured)}",
        "V");

    public Wording Distance(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        string end = build.PlaceAt(violation.End);
        return new Wording(
            Slot(violation).Pointer + "/distanceFromSource",
            $"{build.Phrase.Length(violation.Measured)} of run \"{run.Id}\" lie between \"{end}\" and the fuse, unprotected; "
            + $"{(violation.Kind is ViolationKind.FuseTooFar ? "the limit is" : "stricter rules ask for")} "
            + $"{build.Phrase.Length(violation.Limit)}.",
            "the fuse as close to the source as can be",
            $"{build.Phrase.Length(violation.Measured)} > {build.Phrase.Length(violation.Limit)}",
            "m");
    }

    public Wording MustBeFitted(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        FittedFuse fuse = Fuse(violation);
        int count = evaluation.Design.Conductors[violation.Index].Count;
        string each = fuse.PerConductor ? $", one for each of its {count} conductors" : "";
        string place = model.Topology.IsAtBattery(violation.End)
            ? $"within {build.Phrase.Length(fuse.DistanceMetres)} of the battery, as close as can be"
            : "where the conductor gets smaller";
        return new Wording(
            Slot(violation).Pointer,
            $"FIT A FUSE: run \"{run.Id}\" needs a fuse of {Phrase.Amps(fuse.RatingAmps)} ({fuse.Family.Name.Word()}) at "
            + $"\"{build.PlaceAt(violation.End)}\"{each}, {place}. It was left out of the build.",
            $"fit it, or state the fuse that is there",
            $"continuous current {Phrase.Amps(evaluation.Envelope.ThermalAmps[violation.Index])}, full load "
            + $"{Phrase.Amps(evaluation.Envelope.PeakAmps[violation.Index])}; "
            + $"{(fuse.PerConductor ? "together they carry" : "it carries")} {Phrase.Amps(fuse.ContinuousAmps(count))} "
            + "continuous; "
            + $"rating {Phrase.Amps(fuse.RatingAmps)}, one conductor is rated for {Phrase.Amps(Single(violation.Index))}",
            "A",
            HasLimit: false);
    }

    public Wording InReturn(Violation violation) => new(
        Slot(violation).Pointer,
        $"A fuse stands in the return \"{build.Runs[violation.Index].Id}\": "
        + "when it opens the load stays live and its current finds another way, over signal leads for one. "
        + "It is not counted as protection.",
        "fuse the supply, not the return",
        "a return carries no source's voltage against the body");

    private string Circumstance()
    {
        bool music = build.Stated.Amplifiers.Any(
            amplifier => amplifier.Programme is null && amplifier.CrestFactorDecibels is null);
        return music ? " (on dense music wherever the programme is not stated)" : "";
    }

    private double MostDistance => build.Ruleset.Fuse.MaxDistance.Value;

    private double Single(int run) => model.Ampacities.Of(run, evaluation.Design.Conductors[run].Conductor).LimitAmps;

    private FuseSlot Slot(Violation violation) => build.SlotAt(violation.End);

    private FittedFuse Fuse(Violation violation) => evaluation.Design.FuseAt(violation.End)!;

    private ConductorChoice Conductor(int run) => evaluation.Design.Conductors[run];

    private string Protection(int run) =>
        string.Join(", ", evaluation.Protection.RunsProtecting(run).Select(device => $"of run \"{build.Runs[device].Id}\""));
}
