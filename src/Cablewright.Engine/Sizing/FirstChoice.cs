using Cablewright.Engine.Builds;
using Cablewright.Engine.Circuits;
using Cablewright.Engine.Completing;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Findings;
using Cablewright.Engine.Protection;

namespace Cablewright.Engine.Sizing;

/// <summary>Finds a good choice by steps, for any circuit.</summary>
/// <remarks>
/// <para>Method: up, then down. Every open run starts as the weakest candidate. While a rule does not hold, the runs that can
/// cure it become stronger: for heat and fuses the run itself, for a drop the run that gains most volts for what it weighs,
/// wherever on the way it lies. Then, the largest saving first, each run is made one step weaker again if every rule still holds,
/// until none can be.</para>
/// <para>It ends: each step up is taken at most once a candidate, and the work is counted.</para>
/// </remarks>
internal sealed class FirstChoice
{
    /// <summary>Comparing a run's worth costs about this much less than solving it.</summary>
    private const double ComparisonCost = 0.25;

    private const double LeastWeight = 1e-6;
    private const double CollapseStep = 0.9;
    private const double LeastShare = 0.1;

    /// <summary>
    /// How much of a predicted loss is believed before a trial is left out; hot conductors lose more, never half as much.
    /// </summary>
    private const double Doubt = 0.8;

    private readonly SizingTask task;
    private readonly CompleteBuild build;
    private readonly Evaluator evaluator;
    private readonly ChoiceRules rules;
    private readonly ConductorChoice[][] ladder;
    private readonly int[] level;
    private readonly int[] floor;
    private double[] goal;
    private Decision decision;

    public FirstChoice(SizingTask task, Goal goal, ChoiceRules rules, IReadOnlyList<ConductorChoice>[] candidates)
    {
        this.task = task;
        build = task.Build;
        evaluator = task.Evaluator;
        this.rules = rules;
        this.goal = goal.Volts;
        ladder = [.. candidates.Select((choices, run) => Ladder(run, choices))];
        level = new int[ladder.Length];
        floor = new int[ladder.Length];
        decision = SizingTask.WithoutFuses(Conductors());
    }

    /// <summary>A choice that bears its currents and keeps every drop within the goal, or <c>null</c> where none was found.</summary>
    public Evaluation? TryReach()
    {
        while (true)
        {
            floor.CopyTo(level, 0);
            if (Strengthen() is not { } strong || Over(strong.Currents).Any() || strong.Breaches.Any(IsCurable)) return null;
            Evaluation evaluation = Weaken(strong);
            if (task.IsOutOfWork || !RaiseFloors(evaluator.JudgeFaults(evaluation))) return evaluation;
        }
    }

    /// <summary>
    /// A choice that bears the currents that always exist, for a build whose voltage collapses whatever is chosen.
    /// </summary>
    public ConductorChoice[] BearingEstimate()
    {
        BearEstimate();
        return Conductors();
    }

    /// <summary>A choice made weaker step by step; <c>null</c> where it is not made of the candidates that are stepped through.</summary>
    public Evaluation? Weakened(Evaluation choice)
    {
        for (int run = 0; run < ladder.Length; run++)
        {
            level[run] = Array.IndexOf(ladder[run], choice.Decision.Conductors[run]);
            if (level[run] < 0) return null;
        }

        decision = choice.Decision;
        return Weaken(choice);
    }

    /// <summary>The candidates of which each bears and conducts better than the one before, and weighs more.</summary>
    private ConductorChoice[] Ladder(int run, IReadOnlyList<ConductorChoice> choices)
    {
        var rungs = new List<ConductorChoice>();
        for (int i = choices.Count - 1; i >= 0; i--)
        {
            bool isLighter = rungs.Count == 0 || Significant.Exceeds(task.WeightOf(run, rungs[^1]), task.WeightOf(run, choices[i]));
            bool bearsLess = rungs.Count == 0 || !Significant.Exceeds(
                evaluator.Ampacities.OfAll(run, choices[i]), evaluator.Ampacities.OfAll(run, rungs[^1]));
            if (build.Runs[run].Given is not null || (isLighter && bearsLess)) rungs.Add(choices[i]);
        }

        rungs.Reverse();
        return [.. rungs];
    }

    /// <summary>
    /// Where a fuse that is certain about it opens too late for an open run, that run must be stronger than it was chosen: it
    /// then withstands more, and lets more of the fault current through to open the fuse.
    /// </summary>
    private bool RaiseFloors(FaultReport faults)
    {
        bool raised = false;
        foreach (Breach breach in faults.Breaches)
        {
            bool curable = breach is { Severity: Severity.Fail, Kind: BreachKind.FuseOpensTooLate or BreachKind.FuseMayNotOpen };
            if (!curable || level[breach.Index] + 1 >= ladder[breach.Index].Length) continue;
            floor[breach.Index] = level[breach.Index] + 1;
            raised = true;
        }

        return raised;
    }

    /// <summary>Whether a larger conductor in an open run would cure a breach.</summary>
    private bool IsCurable(Breach breach) =>
        breach.Kind is BreachKind.OverAmpacity or BreachKind.NoFuseFits or BreachKind.FuseAboveConductor
            or BreachKind.FuseMissingAtReduction or BreachKind.ParallelUnguarded
        && build.Runs[breach.Index].Given is null;

    private ConductorChoice[] Conductors() => [.. ladder.Select((rungs, run) => rungs[level[run]])];

    private Decision Present() => new(Conductors(), decision.Near, decision.Far);

    private Evaluation? Strengthen()
    {
        BearEstimate();
        while (RaiseForDrop(evaluator.Estimate(decision = Present())) && !task.IsOutOfWork)
        {
        }

        while (true)
        {
            decision = Present();
            Evaluation? evaluation = evaluator.TryEvaluate(decision);
            bool raised = evaluation is null
                ? RaiseFromCollapse()
                : RaiseForRules(evaluation) | RaiseForDrop(evaluation.Currents);
            if (!raised || task.IsOutOfWork) return evaluation;
            decision = evaluation?.Decision ?? decision;
        }
    }

    /// <summary>
    /// Where the voltage collapses although the estimate keeps the goal, aims at less and less drop until a run becomes stronger.
    /// </summary>
    private bool RaiseFromCollapse()
    {
        double[] wanted = goal;
        WorstCurrents estimate = evaluator.Estimate(decision);
        bool raised = RaiseForDrop(estimate);
        for (double share = CollapseStep; !raised && share > LeastShare; share *= CollapseStep)
        {
            goal = [.. wanted.Select((_, amplifier) => share * DropOf(amplifier, estimate))];
            raised = RaiseForDrop(estimate);
        }

        goal = wanted;
        return raised;
    }

    /// <summary>Makes the first guess from currents that always exist, so that the search does not begin in a collapse.</summary>
    private void BearEstimate()
    {
        for (bool raised = true; raised;)
        {
            decision = Present();
            WorstCurrents currents = evaluator.Estimate(decision);
            raised = false;
            foreach (int run in task.Open) raised |= RaiseToBear(run, currents.ThermalAmps[run]);
        }
    }

    private bool RaiseForRules(Evaluation evaluation)
    {
        bool raised = false;
        foreach (Breach breach in evaluation.Breaches)
        {
            raised |= breach.Kind switch
            {
                BreachKind.OverAmpacity or BreachKind.NoFuseFits or BreachKind.FuseAboveConductor
                    or BreachKind.FuseMissingAtReduction => RaiseToBear(breach.Index, breach.Measured),
                BreachKind.ParallelUnguarded => Raise(breach.Index),
                BreachKind.ReturnBelowSupply => RaiseReturns(breach.Index),
                _ => false,
            };
        }

        return raised;
    }

    private bool Raise(int run)
    {
        if (!CanRise(run)) return false;
        level[run]++;
        return true;
    }

    private bool RaiseToBear(int run, double amps)
    {
        bool raised = false;
        while (Significant.Exceeds(amps, evaluator.Ampacities.OfAll(run, At(run))) && Raise(run)) raised = true;
        return raised;
    }

    private bool RaiseReturns(int amplifier)
    {
        string id = build.Stated.Amplifiers[amplifier].Id;
        bool raised = false;
        foreach (int run in task.Open)
        {
            CompleteRun described = build.Runs[run];
            if (described.Side is Side.Return && (described.From == id || described.To == id)) raised |= Raise(run);
        }

        return raised;
    }

    private double DropOf(int amplifier, WorstCurrents currents) => Goal.DropOf(amplifier, currents, evaluator.Wiring);

    /// <summary>The amplifiers whose drop is above the goal.</summary>
    private IEnumerable<int> Over(WorstCurrents currents) =>
        Enumerable.Range(0, goal.Length).Where(amplifier => Significant.Exceeds(DropOf(amplifier, currents), goal[amplifier]));

    /// <summary>
    /// For each amplifier that loses too much, makes runs stronger, each time the one that gives back most volts for its weight,
    /// until by prediction it loses no more.
    /// </summary>
    private bool RaiseForDrop(WorstCurrents currents)
    {
        var model = new DropModel(build, evaluator, currents);
        var gained = new double[goal.Length];
        bool raised = false;
        foreach (int amplifier in Over(currents))
        {
            while (!task.IsOutOfWork && DropOf(amplifier, currents) - gained[amplifier] > goal[amplifier]
                && Best(model, amplifier) is { } run)
            {
                ConductorChoice before = At(run);
                Raise(run);
                raised = true;
                for (int other = 0; other < gained.Length; other++) gained[other] += model.Gain(other, run, before, At(run));
            }
        }

        return raised;
    }

    private int? Best(DropModel model, int amplifier)
    {
        task.SearchWork += ComparisonCost * task.Open.Length;
        int best = task.Open.MaxBy(run => Significant.Round(Worth(model, amplifier, run)));
        return Worth(model, amplifier, best) > 0 ? best : null;
    }

    /// <summary>Volts given back for each unit of weight when a run becomes one step stronger.</summary>
    private double Worth(DropModel model, int amplifier, int run)
    {
        if (!CanRise(run)) return 0;
        ConductorChoice now = At(run), then = ladder[run][level[run] + 1];
        double more = task.WeightOf(run, then) - task.WeightOf(run, now);
        return model.Gain(amplifier, run, now, then) / Math.Max(more, LeastWeight);
    }

    private bool CanRise(int run) => level[run] + 1 < ladder[run].Length;

    private ConductorChoice At(int run) => ladder[run][level[run]];

    private Evaluation Weaken(Evaluation evaluation)
    {
        Breach[] broken = [.. evaluation.Breaches.Where(rules.Binds)];
        for (bool weakened = true; weakened;)
        {
            weakened = false;
            var model = new DropModel(build, evaluator, evaluation.Currents);
            foreach (int run in task.Open.OrderByDescending(Saving).ThenBy(run => run))
            {
                if (!IsPromising(run, evaluation.Currents, model)) continue;
                if (task.IsOutOfWork) return evaluation;
                level[run]--;
                Evaluation? trial = evaluator.TryEvaluate(Present());
                if (trial is not null && IsAsGood(trial, broken))
                    (evaluation, decision, weakened) = (trial, trial.Decision, true);
                else level[run]++;
            }
        }

        return evaluation;
    }

    /// <summary>Whether one step weaker may do: it bears the heat, and by prediction no drop ends far above its goal.</summary>
    private bool IsPromising(int run, WorstCurrents currents, DropModel model)
    {
        if (level[run] <= floor[run]) return false;
        ConductorChoice now = At(run), then = ladder[run][level[run] - 1];
        if (Significant.Exceeds(currents.ThermalAmps[run], evaluator.Ampacities.OfAll(run, then))) return false;
        for (int amplifier = 0; amplifier < goal.Length; amplifier++)
        {
            double drop = DropOf(amplifier, currents);
            if (drop - Doubt * model.Gain(amplifier, run, now, then) > goal[amplifier]) return false;
        }

        return true;
    }

    private double Saving(int run) => level[run] <= floor[run]
        ? 0
        : Significant.Round(task.WeightOf(run, At(run)) - task.WeightOf(run, ladder[run][level[run] - 1]));

    /// <summary>Whether a weaker choice keeps the goal and every rule that the stronger one keeps.</summary>
    private bool IsAsGood(Evaluation trial, Breach[] broken) =>
        !Over(trial.Currents).Any() && trial.Breaches.Where(rules.Binds).All(breach => Array.Exists(broken, breach.IsNoWorseThan));
}
