using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Text;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Reports;

/// <summary>Cures that are worked out for the run at hand.</summary>
internal sealed class Remedies(Variant variant)
{
    private readonly CompleteBuild build = variant.Build;
    private readonly BuildModel model = variant.Evaluator.Model;
    private readonly DesignEvaluation evaluation = variant.Sized.Evaluation;

    /// <summary>
    /// The smallest usual conductor that bears a run's load where the run lies, and the fuse that such a load needs, so that the
    /// cure does not lead into the next fault.
    /// </summary>
    public string ConductorForLoad(int run)
    {
        double load = evaluation.Currents.ThermalAmps[run];
        if (build.Runs[run].Side is Side.Return) return ConductorThatBears(run, load);
        FuseFamily family = (evaluation.Decision.Near[run] ?? evaluation.Decision.Far[run])?.Family ?? FuseFamily.UsualFor(load);
        return family.SmallestCarrying(load) is { } rating
            ? $"{ConductorThatBears(run, rating)}, behind a fuse of {Phrase.Amps(rating)} ({family.Name.Word()})"
            : ConductorThatBears(run, load);
    }

    /// <summary>The smallest usual conductor of the run's metal that bears a current where the run lies.</summary>
    public string ConductorThatBears(int run, double amps)
    {
        ConductorChoice choice = evaluation.Decision.Conductors[run];
        ConductorSize? enough = CandidateList.Usual(build.Stated.Units).FirstOrDefault(size =>
            !Significant.Exceeds(
                amps,
                model.Ampacities.OfAll(run, choice with { Conductor = Conductor.Of(size, choice.Conductor.Material) })));
        return enough is null
            ? $"several conductors in parallel, since no single usual one bears {Phrase.Amps(amps)} here"
            : $"{choice with { Conductor = Conductor.Of(enough, choice.Conductor.Material) }} bears {Phrase.Amps(amps)} here";
    }

    /// <summary>The standard ratings that carry a run's load and protect its conductor.</summary>
    public string FuseFor(RunEnd end)
    {
        int run = end.Run;
        FittedFuse? present = evaluation.Decision.FuseAt(end);
        double load =
            evaluation.Currents.ThermalAmps[run]
                / (present is { PerConductor: true } ? evaluation.Decision.Conductors[run].Count : 1);
        double bearing = model.Ampacities.Of(run, evaluation.Decision.Conductors[run].Conductor).LimitAmps;
        FuseFamily family = present?.Family ?? FuseFamily.UsualFor(load);
        double[] fitting =
        [
            .. family.RatingsAmps.Values.Where(rating =>
                !Significant.Exceeds(rating, bearing) && !Significant.Exceeds(load, rating * family.ContinuousUseFactor.Value)),
        ];
        return fitting.Length == 0
            ? $"no standard rating of {family.Name.Word()} carries {Phrase.Amps(load)} and protects a conductor that bears "
                + $"{Phrase.Amps(bearing)}: use a larger conductor"
            : $"{Phrase.Amps(fitting[0])} {family.Name.Word()} carries the load"
                + (fitting.Length > 1
                    ? $", up to {Phrase.Amps(fitting[^1])} protects the conductor"
                    : " and protects the conductor");
    }
}
