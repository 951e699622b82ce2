using Cablewright.Contract.Assessments;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>Words for fuses that are missing or wrong.</summary>
internal sealed class FuseWording(Variant variant, Remedies remedies)
{
    private readonly CompleteBuild build = variant.Build;
    private readonly Speech speech = variant.Build.Speech;
    private readonly BuildModel model = variant.Evaluator.Model;
    private readonly DesignEvaluation evaluation = variant.Sized.Evaluation;

    public Wording MissingAtBattery(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        string end = build.PlaceAt(violation.End);
        return new Wording(
            Slot(violation).Pointer,
            new Params { ["run"] = run.Id, ["battery"] = end })
        {
            Remedy = speech.Text("remedy.fuse.at-battery", new Params
            {
                ["distanceMetres"] = build.Ruleset.Fuse.MaxDistance.Value,
                ["fuse"] = remedies.FuseFor(violation.End),
            }),
        };
    }

    public Wording MissingAtReduction(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        return new Wording(
            run.Pointer,
            new Params
            {
                ["run"] = run.Id,
                ["conductor"] = Conductor(violation.Index).ToString(),
                ["ampacityAmps"] = violation.Limit,
                ["fuseRuns"] =
                    Param.Of(evaluation.Protection.RunsProtecting(violation.Index).Select(device => build.Runs[device].Id)),
                ["passingAmps"] = violation.Measured,
            },
            Unit: "A")
        {
            Remedy = speech.Text("remedy.fuse.at-reduction", new Params { ["fuse"] = remedies.FuseFor(violation.End) }),
        };
    }

    public Wording AboveConductor(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        return new Wording(
            Slot(violation).Pointer + "/rating",
            new Params
            {
                ["run"] = run.Id,
                ["passingAmps"] = violation.Measured,
                ["conductor"] = Conductor(violation.Index).ToString(),
                ["ampacityAmps"] = violation.Limit,
            },
            Unit: "A")
        {
            Remedy = remedies.FuseFor(violation.End),
        };
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
            new Params
            {
                ["run"] = run.Id,
                ["loadAmps"] = load,
                ["ratingAmps"] = fuse.RatingAmps,
                ["conductor"] = Conductor(violation.Index).ToString(),
                ["ampacityAmps"] = violation.Limit,
            },
            $"load {Phrase.Amps(load)} / {Phrase.Number(factor)} ({fuse.Family.Name.Word()}, continuous use) = "
            + $"{Phrase.Amps(load / factor)}, next standard rating {Phrase.Amps(fuse.RatingAmps)}; "
            + $"ampacity {Phrase.Amps(violation.Limit)}",
            "A")
        {
            Variant = sharing > 1 ? ".each" : "",
            Remedy = speech.Text("remedy.run.no-fuse-fits", new Params
            {
                ["conductor"] = remedies.ConductorThatCarries(violation.Index, violation.Measured),
            }),
        };
    }

    public Wording Parallel(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        int count = evaluation.Design.Conductors[violation.Index].Count;
        return new Wording(
            run.Pointer,
            new Params
            {
                ["count"] = count,
                ["run"] = run.Id,
                ["passingAmps"] = violation.Measured,
                ["ampacityAmps"] = violation.Limit,
            },
            Unit: "A");
    }

    public Wording BelowLoad(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        FittedFuse fuse = Fuse(violation);
        double factor = fuse.Family.ContinuousUseFactor.Value;
        return new Wording(
            Slot(violation).Pointer + "/rating",
            new Params
            {
                ["ratingAmps"] = fuse.RatingAmps,
                ["run"] = run.Id,
                ["continuousAmps"] = violation.Limit,
                ["amps"] = violation.Measured,
            },
            $"{Phrase.Amps(fuse.RatingAmps)} x {Phrase.Number(factor)} (continuous use, "
            + $"{fuse.Family.ContinuousUseFactor.Source}) "
            + $"= {Phrase.Amps(violation.Limit)} < {Phrase.Amps(violation.Measured)}",
            "A")
        {
            Variant = (violation.Severity is Severity.Fail ? "" : ".ages") + OnDenseMusic(),
            Remedy = remedies.FuseFor(violation.End),
        };
    }

    public Wording HotBelowLoad(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        FittedFuse fuse = Fuse(violation);
        return new Wording(
            Slot(violation).Pointer + "/rating",
            new Params
            {
                ["ratingAmps"] = fuse.RatingAmps,
                ["run"] = run.Id,
                ["continuousAmps"] = violation.Limit,
                ["airCelsius"] = run.AirCelsius,
                ["amps"] = violation.Measured,
            },
            $"{Phrase.Amps(fuse.RatingAmps)} x {Phrase.Number(fuse.Family.ContinuousUseFactor.Value)} (continuous use) x "
            + $"{Phrase.Number(fuse.HotShare)} (of that, at {Phrase.Number(run.AirCelsius)} C) = {Phrase.Amps(
                violation.Limit)} < "
            + $"{Phrase.Amps(violation.Measured)}",
            "A")
        {
            Variant = OnDenseMusic(),
        };
    }

    public Wording BelowOwnFuses(Violation violation) => new(
        Slot(violation).Pointer + "/rating",
        new Params
        {
            ["run"] = build.Runs[violation.Index].Id,
            ["fuseAmps"] = violation.Measured,
            ["ownAmps"] = violation.Limit,
        },
        $"{Phrase.Amps(violation.Measured)} < {Phrase.Amps(violation.Limit)}",
        "A");

    public Wording OpensOnNote(Violation violation)
    {
        FittedFuse fuse = Fuse(violation);
        double peak = evaluation.Envelope.PeakAmps[violation.Index];
        return new Wording(
            Slot(violation).Pointer + "/rating",
            new Params
            {
                ["run"] = build.Runs[violation.Index].Id,
                ["peakAmps"] = peak,
                ["ratingAmps"] = fuse.RatingAmps,
                ["seconds"] = violation.Measured,
            },
            $"{Phrase.Percent(peak / fuse.TotalRatingAmps(Conductor(violation.Index).Count))} of its rating: fast edge "
            + $"{Phrase.Number(violation.Measured)} s < {Phrase.Number(violation.Limit)} s "
            + $"({fuse.Band.Source})",
            "s")
        {
            Remedy = remedies.FuseForFullOutput(violation.End),
        };
    }

    public Wording NotStandard(Violation violation)
    {
        FittedFuse fuse = Fuse(violation);
        IReadOnlyList<double> ratings = fuse.Family.RatingsAmps.Values;
        return new Wording(
            Slot(violation).Pointer + "/rating",
            new Params { ["family"] = fuse.Family.Name.Word(), ["ratingAmps"] = violation.Measured },
            $"rating ladder of {fuse.Family.Name.Word()}: {Phrase.Number(ratings[0])} to {Phrase.Number(ratings[^1])} A",
            "A",
            HasLimit: false)
        {
            Remedy = speech.Text("remedy.fuse.not-standard-rating", new Params { ["ratings"] = Param.Of(ratings) }),
        };
    }

    public Wording VoltageTooLow(Violation violation) => new(
        Slot(violation).Pointer,
        new Params
        {
            ["run"] = build.Runs[violation.Index].Id,
            ["ratedVolts"] = violation.Measured,
            ["systemVolts"] = violation.Limit,
        },
        Unit: "V");

    public Wording Distance(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        string end = build.PlaceAt(violation.End);
        return new Wording(
            Slot(violation).Pointer + "/distanceFromSource",
            new Params
            {
                ["metres"] = violation.Measured,
                ["run"] = run.Id,
                ["place"] = end,
                ["limitMetres"] = violation.Limit,
            },
            $"{build.Phrase.Length(violation.Measured)} > {build.Phrase.Length(violation.Limit)}",
            "m");
    }

    public Wording MustBeFitted(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        FittedFuse fuse = Fuse(violation);
        int count = evaluation.Design.Conductors[violation.Index].Count;
        return new Wording(
            Slot(violation).Pointer,
            new Params
            {
                ["run"] = run.Id,
                ["ratingAmps"] = fuse.RatingAmps,
                ["family"] = fuse.Family.Name.Word(),
                ["place"] = build.PlaceAt(violation.End),
                ["count"] = count,
                ["distanceMetres"] = fuse.DistanceMetres,
            },
            $"continuous current {Phrase.Amps(evaluation.Envelope.ThermalAmps[violation.Index])}, full load "
            + $"{Phrase.Amps(evaluation.Envelope.PeakAmps[violation.Index])}; "
            + $"{(fuse.PerConductor ? "together they carry" : "it carries")} {Phrase.Amps(fuse.ContinuousAmps(count))} "
            + "continuous; "
            + $"rating {Phrase.Amps(fuse.RatingAmps)}, one conductor is rated for {Phrase.Amps(Single(violation.Index))}",
            "A",
            HasLimit: false)
        {
            Variant = (fuse.PerConductor ? ".each" : "")
                + (model.Topology.IsAtBattery(violation.End) ? ".at-battery" : ".at-reduction"),
        };
    }

    public Wording InReturn(Violation violation) => new(
        Slot(violation).Pointer,
        new Params { ["run"] = build.Runs[violation.Index].Id });

    /// <summary>A current hangs on the programme that is assumed where none is stated.</summary>
    private string OnDenseMusic() => build.Stated.Amplifiers.Any(
        amplifier => amplifier.Programme is null && amplifier.CrestFactorDecibels is null) ? ".on-dense-music" : "";

    private double Single(int run) => model.Ampacities.Of(run, evaluation.Design.Conductors[run].Conductor).LimitAmps;

    private FuseSlot Slot(Violation violation) => build.SlotAt(violation.End);

    private FittedFuse Fuse(Violation violation) => evaluation.Design.FuseAt(violation.End)!;

    private ConductorChoice Conductor(int run) => evaluation.Design.Conductors[run];
}
