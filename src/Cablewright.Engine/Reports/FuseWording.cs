using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Text;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Reports;

/// <summary>Words for fuses that are missing or wrong.</summary>
internal sealed class FuseWording(Variant variant, Remedies remedies)
{
    private readonly CompleteBuild build = variant.Build;
    private readonly BuildModel model = variant.Evaluator.Model;
    private readonly DesignEvaluation evaluation = variant.Sized.Evaluation;

    public Wording MissingAtBattery(Breach breach)
    {
        CompleteRun run = build.Runs[breach.Index];
        string end = build.PlaceAt(breach.End);
        return new Wording(
            Slot(breach).Pointer,
            $"Nothing protects run \"{run.Id}\" from battery \"{end}\": "
            + "in a short circuit it carries the battery's full current until it burns.",
            $"a fuse within {build.Phrase.Length(MostDistance)} of the battery; {remedies.FuseFor(breach.End)}",
            "no fuse stands between the battery's positive terminal and the run");
    }

    public Wording MissingAtReduction(Breach breach)
    {
        CompleteRun run = build.Runs[breach.Index];
        return new Wording(
            run.Pointer,
            $"Run \"{run.Id}\" ({Conductor(breach.Index)}) bears {Phrase.Amps(breach.Limit)}, and the fuse before it "
            + $"({Guards(breach.Index)}) lets {Phrase.Amps(breach.Measured)} through: "
            + "a short circuit or overload behind the reduction is not interrupted in time.",
            $"a fuse where the conductor gets smaller; {remedies.FuseFor(breach.End)}",
            $"passing {Phrase.Amps(breach.Measured)} > ampacity {Phrase.Amps(breach.Limit)}",
            "A");
    }

    public Wording AboveConductor(Breach breach)
    {
        CompleteRun run = build.Runs[breach.Index];
        return new Wording(
            Slot(breach).Pointer + "/rating",
            $"The fuse of run \"{run.Id}\" lets {Phrase.Amps(breach.Measured)} through, and {Conductor(breach.Index)} bears "
            + $"{Phrase.Amps(breach.Limit)} here.",
            remedies.FuseFor(breach.End),
            $"rating {Phrase.Amps(breach.Measured)} > ampacity {Phrase.Amps(breach.Limit)}",
            "A");
    }

    public Wording NoneFits(Breach breach)
    {
        CompleteRun run = build.Runs[breach.Index];
        FittedFuse fuse = Fuse(breach);
        int sharing = fuse.PerConductor ? evaluation.Decision.Conductors[breach.Index].Count : 1;
        double load = evaluation.Currents.ThermalAmps[breach.Index] / sharing;
        double factor = fuse.Family.ContinuousUseFactor.Value;
        return new Wording(
            run.Pointer + "/conductor",
            $"No standard fuse fits run \"{run.Id}\": to carry {Phrase.Amps(load)} it must be {Phrase.Amps(fuse.RatingAmps)} or "
            + $"more{(sharing > 1 ? " for each conductor" : "")}, and {Conductor(breach.Index)} bears only "
            + $"{Phrase.Amps(breach.Limit)}. The conductor is too small.",
            remedies.ConductorThatBears(breach.Index, breach.Measured) + ", a cooler route, or less power",
            $"load {Phrase.Amps(load)} / {Phrase.Number(factor)} ({fuse.Family.Name.Word()}, lasting use) = "
            + $"{Phrase.Amps(load / factor)}, next standard rating {Phrase.Amps(fuse.RatingAmps)}; "
            + $"ampacity {Phrase.Amps(breach.Limit)}",
            "A");
    }

    public Wording Parallel(Breach breach)
    {
        CompleteRun run = build.Runs[breach.Index];
        int count = evaluation.Decision.Conductors[breach.Index].Count;
        return new Wording(
            run.Pointer,
            $"The {count} parallel conductors of run \"{run.Id}\" share a fuse that lets {Phrase.Amps(breach.Measured)} "
            + $"through, and one of them alone bears {Phrase.Amps(breach.Limit)}: if one breaks, the others are not protected.",
            "a fuse for each conductor",
            $"passing {Phrase.Amps(breach.Measured)} > ampacity of one conductor {Phrase.Amps(breach.Limit)}",
            "A");
    }

    public Wording BelowLoad(Breach breach)
    {
        CompleteRun run = build.Runs[breach.Index];
        FittedFuse fuse = Fuse(breach);
        double factor = fuse.Family.ContinuousUseFactor.Value;
        return new Wording(
            Slot(breach).Pointer + "/rating",
            $"The {Phrase.Amps(fuse.RatingAmps)} fuse of run \"{run.Id}\" carries {Phrase.Amps(breach.Limit)} for long, "
            + $"and the run's lasting load is {Phrase.Amps(breach.Measured)}{Circumstance()}: it will open.",
            remedies.FuseFor(breach.End),
            $"{Phrase.Amps(fuse.RatingAmps)} x {Phrase.Number(factor)} (lasting use, {fuse.Family.ContinuousUseFactor.Source}) "
            + $"= {Phrase.Amps(breach.Limit)} < {Phrase.Amps(breach.Measured)}, at the worst of the charging and the lowest "
            + "supply voltage",
            "A");
    }

    public Wording HotBelowLoad(Breach breach)
    {
        CompleteRun run = build.Runs[breach.Index];
        FittedFuse fuse = Fuse(breach);
        return new Wording(
            Slot(breach).Pointer + "/rating",
            $"The {Phrase.Amps(fuse.RatingAmps)} fuse of run \"{run.Id}\" carries {Phrase.Amps(breach.Limit)} for long at "
            + $"{build.Phrase.Temperature(run.AirCelsius)}, and the run's lasting load is {Phrase.Amps(breach.Measured)}"
            + $"{Circumstance()}: it may open when the air around it is that hot.",
            "the fuse in a cooler place, a larger conductor with a larger fuse, or less power",
            $"{Phrase.Amps(fuse.RatingAmps)} x {Phrase.Number(fuse.Family.ContinuousUseFactor.Value)} (lasting use) x "
            + $"{Phrase.Number(fuse.HotShare)} (at {Phrase.Number(run.AirCelsius)} C) = {Phrase.Amps(breach.Limit)} < "
            + $"{Phrase.Amps(breach.Measured)}",
            "A");
    }

    public Wording NotStandard(Breach breach)
    {
        FittedFuse fuse = Fuse(breach);
        IReadOnlyList<double> ratings = fuse.Family.RatingsAmps.Values;
        return new Wording(
            Slot(breach).Pointer + "/rating",
            $"The family {fuse.Family.Name.Word()} is not known to be made in {Phrase.Amps(breach.Measured)}.",
            $"one of {string.Join(", ", ratings.Select(Phrase.Number))} A",
            $"rating ladder of {fuse.Family.Name.Word()}: {Phrase.Number(ratings[0])} to {Phrase.Number(ratings[^1])} A",
            "A",
            HasLimit: false);
    }

    public Wording VoltageTooLow(Breach breach) => new(
        Slot(breach).Pointer,
        $"The fuse of run \"{build.Runs[breach.Index].Id}\" is rated {Phrase.Volts(breach.Measured)}, "
        + $"and the system can reach {Phrase.Volts(breach.Limit)}: it may not interrupt the arc.",
        $"a fuse rated for {Phrase.Volts(breach.Limit)} direct current or more",
        $"highest system voltage {Phrase.Volts(breach.Limit)} > rated {Phrase.Volts(breach.Measured)}",
        "V");

    public Wording Distance(Breach breach)
    {
        CompleteRun run = build.Runs[breach.Index];
        string end = build.PlaceAt(breach.End);
        return new Wording(
            Slot(breach).Pointer + "/distanceFromSource",
            $"{build.Phrase.Length(breach.Measured)} of run \"{run.Id}\" lie between \"{end}\" and the fuse, unprotected; "
            + $"{(breach.Kind is BreachKind.FuseTooFar ? "the limit is" : "stricter rules ask for")} "
            + $"{build.Phrase.Length(breach.Limit)}.",
            "the fuse as close to the source as can be",
            $"{build.Phrase.Length(breach.Measured)} > {build.Phrase.Length(breach.Limit)}",
            "m");
    }

    public Wording MustBeFitted(Breach breach)
    {
        CompleteRun run = build.Runs[breach.Index];
        FittedFuse fuse = Fuse(breach);
        int count = evaluation.Decision.Conductors[breach.Index].Count;
        string each = fuse.PerConductor ? $", one for each of its {count} conductors" : "";
        string place = model.Topology.IsAtBattery(breach.End)
            ? $"within {build.Phrase.Length(fuse.DistanceMetres)} of the battery, as close as can be"
            : "where the conductor gets smaller";
        return new Wording(
            Slot(breach).Pointer,
            $"FIT A FUSE: run \"{run.Id}\" needs a fuse of {Phrase.Amps(fuse.RatingAmps)} ({fuse.Family.Name.Word()}) at "
            + $"\"{build.PlaceAt(breach.End)}\"{each}, {place}. It was left out of the build.",
            $"fit it, or state the fuse that is there",
            $"lasting load {Phrase.Amps(evaluation.Currents.ThermalAmps[breach.Index])}, full load "
            + $"{Phrase.Amps(evaluation.Currents.PeakAmps[breach.Index])}; "
            + $"{(fuse.PerConductor ? "together they carry" : "it carries")} {Phrase.Amps(fuse.CarryingAmps(count))} for long; "
            + $"rating {Phrase.Amps(fuse.RatingAmps)}, one conductor bears {Phrase.Amps(Single(breach.Index))}",
            "A",
            HasLimit: false);
    }

    public Wording InReturn(Breach breach) => new(
        Slot(breach).Pointer,
        $"A fuse stands in the return \"{build.Runs[breach.Index].Id}\": "
        + "when it opens the load stays live and its current finds another way, over signal leads for one. "
        + "It is not counted as protection.",
        "fuse the supply, not the return",
        "a return carries no source's voltage against the body");

    private string Circumstance()
    {
        bool tone = build.Stated.Amplifiers.Any(
            amplifier => amplifier.Programme is null && amplifier.CrestFactorDecibels is null);
        string voltage = $"at the lowest supply voltage, {Phrase.Volts(build.LowestSupplyVolts)}";
        return tone ? $" ({voltage}, with a full test tone wherever the programme is not stated)" : $" ({voltage})";
    }

    private double MostDistance => build.Ruleset["fuse.max-distance"].Value;

    private double Single(int run) => model.Ampacities.Of(run, evaluation.Decision.Conductors[run].Conductor).LimitAmps;

    private FuseSlot Slot(Breach breach) => build.SlotAt(breach.End);

    private FittedFuse Fuse(Breach breach) => evaluation.Decision.FuseAt(breach.End)!;

    private ConductorChoice Conductor(int run) => evaluation.Decision.Conductors[run];

    private string Guards(int run) =>
        string.Join(", ", evaluation.Guards.GuardsOf(run).Select(guard => $"of run \"{build.Runs[guard].Id}\""));
}
