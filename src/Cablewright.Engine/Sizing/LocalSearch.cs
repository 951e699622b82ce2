using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Sizing;

/// <summary>Makes a choice lighter run by run, the largest saving first, until no run can become one step lighter.</summary>
internal sealed class LocalSearch(SizingTask task, Goal goal, IReadOnlyList<ConductorChoice>[] candidates)
{
    /// <summary>
    /// How much of a predicted loss is believed before a trial is left out; hot conductors lose more, never half as much.
    /// </summary>
    private const double Doubt = 0.8;

    private readonly Evaluator evaluator = task.Evaluator;
    private DropModel? model;

    public void Run(Trials trials)
    {
        for (Trial? before = null; trials.Best != before;)
        {
            before = trials.Best;
            var steps = task.Open.Where(run => !goal.IsUsual || task.SupplyOf[run] < 0)
                .Select(run => (Run: run, Step: Lighter(run, before!.Evaluation.Design.Conductors[run])))
                .Where(each => each.Step is not null)
                .OrderByDescending(each => Saving(each.Run, before!.Evaluation.Design.Conductors[each.Run], each.Step!.Value))
                .ThenBy(each => each.Run);
            foreach ((int run, ConductorChoice? step) in steps)
            {
                if (task.IsOutOfWork) return;
                if (!IsPromising(run, trials.Best!.Evaluation, step!.Value)) continue;
                trials.TryLighter(With(trials.Best.Evaluation.Design.Conductors, run, step.Value));
            }
        }
    }

    /// <summary>A choice with another conductor in a run, and in the ground that is to be the same cable.</summary>
    private ConductorChoice[] With(IReadOnlyList<ConductorChoice> all, int run, ConductorChoice then)
    {
        ConductorChoice[] conductors = [.. all];
        conductors[run] = then;
        if (goal.IsUsual && Array.IndexOf(task.SupplyOf, run) is >= 0 and var ground) conductors[ground] = then;
        return conductors;
    }

    private double Saving(int run, ConductorChoice now, ConductorChoice then) =>
        Significant.Round(task.WeightOf(run, now) - task.WeightOf(run, then));

    /// <summary>The heaviest candidate that is lighter.</summary>
    private ConductorChoice? Lighter(int run, ConductorChoice now)
    {
        ConductorChoice? best = null;
        foreach (ConductorChoice choice in candidates[run])
        {
            if (!Significant.Exceeds(task.WeightOf(run, now), task.WeightOf(run, choice))) continue;
            if (best is null || Significant.Exceeds(task.WeightOf(run, choice), task.WeightOf(run, best.Value))) best = choice;
        }

        return best;
    }

    /// <summary>
    /// Whether one step lighter may do: it stays within its ampacity, and by prediction no drop ends far above its goal.
    /// </summary>
    private bool IsPromising(int run, DesignEvaluation present, ConductorChoice then)
    {
        if (Significant.Exceeds(present.Envelope.ThermalAmps[run], evaluator.Model.Ampacities.OfAll(run, then))) return false;
        if (model is null || !model.IsOf(present.Envelope)) model = new DropModel(task, present.Envelope);
        task.Count(Relaxation.VisitCost * goal.Volts.Length);
        ConductorChoice now = present.Design.Conductors[run];
        for (int amplifier = 0; amplifier < goal.Volts.Length; amplifier++)
        {
            double drop = evaluator.Model.Circuit.LostVolts(amplifier, present.Envelope);
            if (drop - Doubt * model.Gain(amplifier, run, now, then) > goal.Volts[amplifier]) return false;
        }

        return true;
    }
}
