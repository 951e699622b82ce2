using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>Cures that are worked out for the run at hand.</summary>
internal sealed class Remedies(Variant variant)
{
    private readonly CompleteBuild build = variant.Build;
    private readonly Speech speech = variant.Build.Speech;
    private readonly BuildModel model = variant.Evaluator.Model;
    private readonly DesignEvaluation evaluation = variant.Sized.Evaluation;

    /// <summary>
    /// The smallest usual conductor that carries a run's load where the run lies, and the fuse that such a load needs, so that
    /// the cure does not lead into the next fault.
    /// </summary>
    public string ConductorForLoad(int run)
    {
        double load = evaluation.Envelope.ThermalAmps[run];
        if (build.Runs[run].Side is Side.Return) return ConductorThatCarries(run, load);
        FuseFamily family = (evaluation.Design.Near[run] ?? evaluation.Design.Far[run])?.Family
            ?? build.Ruleset.FuseFamilies.UsualFor(load);
        return family.SmallestCarrying(load) is { } rating
            ? speech.Text("remedy.conductor.behind-fuse", Fuse(family, rating).And(new Params
            {
                ["conductor"] = ConductorThatCarries(run, rating),
            }))
            : ConductorThatCarries(run, load);
    }

    /// <summary>The smallest usual conductor of the run's metal that carries a current where the run lies.</summary>
    public string ConductorThatCarries(int run, double amps)
    {
        ConductorChoice choice = evaluation.Design.Conductors[run];
        ConductorSize? enough = CandidateList.Offered(build.Stated.Units).FirstOrDefault(size =>
            !Significant.Exceeds(
                amps,
                model.Ampacities.OfAll(run, choice with { Conductor = Conductor.Of(size, choice.Conductor.Material) })));
        return enough is null
            ? speech.Text("remedy.conductor.several", new Params { ["amps"] = amps })
            : speech.Text("remedy.conductor.single", new Params
            {
                ["conductor"] = (choice with { Conductor = Conductor.Of(enough, choice.Conductor.Material) }).ToString(),
                ["amps"] = amps,
            });
    }

    /// <summary>The smallest rating that carries full output, and a conductor for it where this one is too small.</summary>
    public string FuseForFullOutput(RunEnd end)
    {
        FittedFuse present = evaluation.Design.FuseAt(end)!;
        ConductorChoice choice = evaluation.Design.Conductors[end.Run];
        double peak = evaluation.Envelope.PeakAmps[end.Run];
        double each = peak / (present.PerConductor ? choice.Count : 1);
        if (present.Family.NextRating(each) is not { } rating)
            return speech.Text(
                "remedy.full-output.conductor", new Params { ["conductor"] = ConductorThatCarries(end.Run, peak) });
        Params fuse = Fuse(present.Family, rating);
        return Significant.Exceeds(rating, model.Ampacities.Of(end.Run, choice.Conductor).LimitAmps)
            ? speech.Text("remedy.full-output.fuse-and-conductor", fuse.And(new Params
            {
                ["conductor"] = ConductorThatCarries(end.Run, rating),
            }))
            : speech.Text("remedy.full-output.fuse", fuse);
    }

    /// <summary>The standard ratings that carry a run's load and protect its conductor.</summary>
    public string FuseFor(RunEnd end)
    {
        int run = end.Run;
        FittedFuse? present = evaluation.Design.FuseAt(end);
        double load =
            evaluation.Envelope.ThermalAmps[run]
                / (present is { PerConductor: true } ? evaluation.Design.Conductors[run].Count : 1);
        double ampacity = model.Ampacities.Of(run, evaluation.Design.Conductors[run].Conductor).LimitAmps;
        FuseFamily family = present?.Family ?? build.Ruleset.FuseFamilies.UsualFor(load);
        double[] fitting =
        [
            .. family.RatingsAmps.Values.Where(rating =>
                !Significant.Exceeds(rating, ampacity) && !Significant.Exceeds(load, rating * family.ContinuousUseFactor.Value)),
        ];
        return fitting switch
        {
            [] => speech.Text("remedy.fuse.none-fits", new Params
            {
                ["family"] = family.Name.Word(),
                ["loadAmps"] = load,
                ["ampacityAmps"] = ampacity,
            }),
            [var only] => speech.Text("remedy.fuse.one-fits", Fuse(family, only)),
            _ => speech.Text(
                "remedy.fuse.several-fit", Fuse(family, fitting[0]).And(new Params { ["largestAmps"] = fitting[^1] })),
        };
    }

    private static Params Fuse(FuseFamily family, double rating) =>
        new() { ["ratingAmps"] = rating, ["family"] = family.Name.Word() };
}
