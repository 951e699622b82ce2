using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Sizing;

/// <summary>
/// Makes a choice lighter, until no run can become one step lighter, nor one run lighter for another that becomes one step
/// heavier.
/// </summary>
internal sealed class LocalSearch(SizingTask task, Goal goal, TaperRule taper)
{
    /// <summary>
    /// How much of a predicted loss is believed before a trial is left out; hot conductors lose more, never half as much.
    /// </summary>
    private const double Doubt = 0.8;

    /// <summary>Predicting one amplifier's drop costs about this much of solving a run.</summary>
    private const double VisitCost = 0.6;

    /// <summary>So many exchanges are worked out in full, since of many runs there are far more pairs.</summary>
    private const int MostExchanges = 128;

    private int exchangesLeft = MostExchanges;

    private readonly Evaluator evaluator = task.Evaluator;

    /// <summary>The runs to choose for, without grounds that follow their supply.</summary>
    private readonly int[] runs = [.. task.Open.Where(run => !goal.IsUsual || task.SupplyOf[run] < 0)];
    private DropModel? model;

    /// <summary>Steps and exchanges until none helps.</summary>
    public void Run(Trials trials)
    {
        for (Trial? before = null; trials.Best != before && !task.IsOutOfWork;)
        {
            Lighten(trials);
            before = trials.Best;
            Exchange(trials);
        }
    }

    /// <summary>Steps until none helps, the largest saving first.</summary>
    public void Lighten(Trials trials)
    {
        for (Trial? before = null; trials.Best != before;)
        {
            before = trials.Best;
            ConductorChoice[] present = Conductors(trials);
            var steps = runs
                .SelectMany(run => Lighter(run, present[run]).Take(1).Select(step => (Run: run, Step: step)))
                .OrderByDescending(each => Saving(each.Run, present[each.Run], each.Step)).ThenBy(each => each.Run);
            foreach ((int Run, ConductorChoice Step) each in steps)
            {
                if (task.IsOutOfWork) return;
                Try(trials, each, null);
            }
        }
    }

    /// <summary>One run one step heavier for another that becomes as much lighter as that allows.</summary>
    private void Exchange(Trials trials)
    {
        foreach (int heavier in runs)
        {
            foreach (int lighter in runs)
            {
                if (exchangesLeft <= 0 || task.IsOutOfWork) return;
                if (lighter == heavier) continue;
                ConductorChoice[] present = Conductors(trials);
                if (Heavier(heavier, present[heavier]) is not { } more) break;
                double least = -Saving(heavier, present[heavier], more);
                foreach (ConductorChoice less in Lighter(lighter, present[lighter]).Reverse()
                    .Where(less => Significant.Exceeds(Saving(lighter, present[lighter], less), least)))
                {
                    if (Try(trials, (lighter, less), (heavier, more))) break;
                }
            }
        }
    }

    /// <summary>Works a choice out that may be lighter.</summary>
    /// <returns>Whether it stands.</returns>
    private bool Try(Trials trials, (int Run, ConductorChoice Choice) lighter, (int Run, ConductorChoice Choice)? heavier)
    {
        DesignEvaluation present = trials.Best!.Evaluation;
        if (!IsPromising(present, lighter, heavier)) return false;
        ConductorChoice[] conductors = [.. present.Design.Conductors];
        if (heavier is { } more) conductors[more.Run] = more.Choice;
        conductors = taper.With(conductors, lighter.Run, lighter.Choice);
        if (goal.IsUsual) GroundRule.Keep(conductors, task.SupplyOf);
        if (!trials.MayBeLighter(conductors)) return false;
        if (heavier is not null) exchangesLeft--;
        return trials.Try(conductors).IsKept;
    }

    private static ConductorChoice[] Conductors(Trials trials) => trials.Best!.Evaluation.Design.Conductors;

    private double Saving(int run, ConductorChoice now, ConductorChoice then) =>
        Significant.Round(task.WeightOf(run, now) - task.WeightOf(run, then));

    /// <summary>The candidates that are lighter, the heaviest of them first.</summary>
    private IEnumerable<ConductorChoice> Lighter(int run, ConductorChoice now) => taper.Candidates[run]
        .Where(choice => Significant.Exceeds(task.WeightOf(run, now), task.WeightOf(run, choice)))
        .OrderByDescending(choice => Significant.Round(task.WeightOf(run, choice)));

    /// <summary>The lightest candidate that conducts better.</summary>
    private ConductorChoice? Heavier(int run, ConductorChoice now) => taper.Candidates[run]
        .Where(choice => Significant.Exceeds(now.OhmsPerMetreAt20, choice.OhmsPerMetreAt20))
        .OrderBy(choice => Significant.Round(task.WeightOf(run, choice)))
        .Select(choice => (ConductorChoice?)choice).FirstOrDefault();

    /// <summary>
    /// Whether a change may do: what becomes lighter stays within its ampacity, and by prediction no drop ends far above its
    /// goal.
    /// </summary>
    private bool IsPromising(
        DesignEvaluation present, (int Run, ConductorChoice Choice) lighter, (int Run, ConductorChoice Choice)? heavier)
    {
        bool isCertain = task.Paths.LoadsOn[lighter.Run].Count > 0;
        double ampacity = evaluator.Model.Ampacities.OfAll(lighter.Run, lighter.Choice);
        if (isCertain && Significant.Exceeds(present.Envelope.ThermalAmps[lighter.Run], ampacity)) return false;
        if (model is null || !model.IsOf(present.Envelope)) model = new DropModel(task, present.Envelope);
        task.Count(VisitCost * goal.Volts.Length);
        for (int amplifier = 0; amplifier < goal.Volts.Length; amplifier++)
        {
            double drop = evaluator.Model.Circuit.LostVolts(amplifier, present.Envelope)
                - Doubt * Gain(amplifier, present, lighter);
            if (heavier is { } more) drop -= Gain(amplifier, present, more) / Doubt;
            if (drop > goal.Volts[amplifier]) return false;
        }

        return true;
    }

    private double Gain(int amplifier, DesignEvaluation present, (int Run, ConductorChoice Choice) then) =>
        model!.Gain(amplifier, then.Run, present.Design.Conductors[then.Run], then.Choice);
}
