using Cablewright.Engine.Builds;
using Cablewright.Engine.Circuits;
using Cablewright.Engine.Completing;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Findings;
using Cablewright.Engine.Protection;

namespace Cablewright.Engine.Sizing;

/// <summary>What was decided, and whether the work budget sufficed to make it as small as the rules allow.</summary>
/// <param name="Evaluation">The decision and what it leads to.</param>
/// <param name="Faults">What short circuits and overloads would do to it.</param>
/// <param name="IsComplete">Whether the search came to its end.</param>
internal sealed record SizedBuild(Evaluation Evaluation, FaultReport Faults, bool IsComplete)
{
    /// <summary>Every rule that does not hold.</summary>
    public IEnumerable<Breach> Breaches => Evaluation.Breaches.Concat(Faults.Breaches);
}

/// <summary>Chooses the conductors that a build leaves open, all together.</summary>
/// <remarks>
/// <para>Method: up, then down. Every open run starts as the weakest candidate. While a rule does not hold, the runs that can
/// cure it become stronger: for heat and fuses the run itself, for a drop the run that gains most volts for the metal it
/// costs, wherever on the way it lies. Then, the largest saving first, each run is made one step weaker again if every rule
/// still holds, until none can be: no open run of the result can be one step smaller by itself.</para>
/// <para>The goal for the drop is the design target; where that cannot be met, the hard limit; then the same with conductors in
/// parallel; where that cannot be met either, a little more than the least drop that the strongest candidates leave.</para>
/// <para>Non-convergence is no danger: each step up is taken at most once a candidate, and the work is counted against a
/// budget.</para>
/// </remarks>
internal sealed class Sizer
{
    /// <summary>Comparing a run's worth costs about this much less than solving it.</summary>
    private const int ComparisonsForASolvedRun = 4;

    private const double LeastKilograms = 1e-6;
    private const double CollapseStep = 0.9;
    private const double LeastShare = 0.1;

    /// <summary>
    /// How much of a predicted loss is believed before a trial is left out; hot conductors lose more, never half as much.
    /// </summary>
    private const double Doubt = 0.8;

    private readonly CompleteBuild build;
    private readonly Evaluator evaluator;
    private readonly IReadOnlyList<ConductorChoice>[] candidates;
    private readonly int[] open;
    private readonly int[] level;
    private readonly int[] floor;
    private readonly double[] goal;
    private readonly double workBudget;
    private Decision decision;
    private long compared;
    private bool isSingle = true;

    private Sizer(CompleteBuild build, Evaluator evaluator, double workBudget)
    {
        this.build = build;
        this.evaluator = evaluator;
        open = [.. Enumerable.Range(0, build.Runs.Count).Where(run => build.Runs[run].Given is null)];
        candidates = [.. build.Runs.Select(run => run.Given is null ? CandidateList.For(run, build.Stated) : [])];
        level = new int[build.Runs.Count];
        floor = new int[build.Runs.Count];
        goal = new double[build.Draws.Count];
        this.workBudget = workBudget;
        decision = Present();
    }

    private bool IsOutOfWork => evaluator.Work + compared / ComparisonsForASolvedRun > workBudget;

    /// <summary>Decides what is open.</summary>
    /// <param name="build">The build.</param>
    /// <param name="evaluator">Works out each trial.</param>
    /// <param name="workBudget">Runs solved, over all rounds of all trials, before the search stops where it is.</param>
    public static SizedBuild Size(CompleteBuild build, Evaluator evaluator, double workBudget)
    {
        var sizer = new Sizer(build, evaluator, workBudget);
        while (true)
        {
            Evaluation evaluation = sizer.Choose();
            FaultReport faults = evaluator.JudgeFaults(evaluation);
            if (sizer.IsOutOfWork || !sizer.RaiseFloors(faults)) return new SizedBuild(evaluation, faults, !sizer.IsOutOfWork);
        }
    }

    private Evaluation Choose() => open.Length == 0
        ? evaluator.Evaluate(decision)
        : Reach(build.Drop.TargetVolts, single: true)
            ?? Reach(build.Drop.HardVolts, single: true)
            ?? Reach(build.Drop.HardVolts, single: false)
            ?? ComeNear();

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
            if (!curable || level[breach.Index] + 1 >= candidates[breach.Index].Count) continue;
            floor[breach.Index] = level[breach.Index] + 1;
            raised = true;
        }

        return raised;
    }

    /// <summary>The choice that bears its currents and keeps every drop within a goal, or <c>null</c> where none does.</summary>
    /// <param name="volts">The goal.</param>
    /// <param name="single">Whether to leave out parallel conductors that nobody asked for.</param>
    private Evaluation? Reach(double volts, bool single)
    {
        for (int amplifier = 0; amplifier < goal.Length; amplifier++)
            goal[amplifier] = volts * evaluator.Wiring.SourceShareOf(amplifier);
        floor.CopyTo(level, 0);
        isSingle = single;
        return Strengthen() is { } evaluation && !Over(evaluation.Currents).Any() && !evaluation.Breaches.Any(IsCurable)
            ? Weaken(evaluation)
            : null;
    }

    /// <summary>Whether a larger conductor in an open run would cure a breach.</summary>
    private bool IsCurable(Breach breach) =>
        breach.Kind is BreachKind.OverAmpacity or BreachKind.NoFuseFits or BreachKind.FuseAboveConductor
            or BreachKind.FuseMissingAtReduction or BreachKind.ParallelUnguarded
        && build.Runs[breach.Index].Given is null;

    /// <summary>
    /// Where given parts or the candidates leave too much drop whatever is chosen: the choice that adds only a little to the
    /// least possible drop; where the voltage collapses in any case, one that bears the heat.
    /// </summary>
    private Evaluation ComeNear()
    {
        isSingle = false;
        for (int run = 0; run < level.Length; run++) level[run] = Math.Max(0, candidates[run].Count - 1);
        if (evaluator.TryEvaluate(Present()) is not { } strongest)
        {
            floor.CopyTo(level, 0);
            BearEstimate();
            return evaluator.Evaluate(Present());
        }

        double margin = build.Ruleset["drop.unavoidable-margin"].Value * build.ChargingVolts;
        for (int amplifier = 0; amplifier < goal.Length; amplifier++)
            goal[amplifier] = Math.Max(
                build.Drop.HardVolts * evaluator.Wiring.SourceShareOf(amplifier), DropOf(amplifier, strongest.Currents) + margin);
        int[] strongestLevel = [.. level];
        floor.CopyTo(level, 0);
        if (Strengthen() is { } near) return Weaken(near);
        strongestLevel.CopyTo(level, 0);
        return Weaken(strongest);
    }

    private Decision Present()
    {
        ConductorChoice[] conductors = [.. build.Runs.Select((run, index) => run.Given is { } given
            ? new ConductorChoice(given, run.GivenCount ?? 1)
            : candidates[index][level[index]])];
        return new Decision(
            conductors,
            decision?.Near ?? new FittedFuse?[conductors.Length],
            decision?.Far ?? new FittedFuse?[conductors.Length]);
    }

    private Evaluation? Strengthen()
    {
        BearEstimate();
        while (RaiseForDrop(evaluator.Estimate(decision = Present())) && !IsOutOfWork)
        {
        }

        while (true)
        {
            decision = Present();
            Evaluation? evaluation = evaluator.TryEvaluate(decision);
            bool raised = evaluation is null
                ? RaiseFromCollapse()
                : RaiseForRules(evaluation) | RaiseForDrop(evaluation.Currents);
            if (!raised || IsOutOfWork) return evaluation;
            decision = evaluation?.Decision ?? decision;
        }
    }

    /// <summary>
    /// Where the voltage collapses although the estimate keeps the goal, aims at less and less drop until a run becomes stronger.
    /// </summary>
    private bool RaiseFromCollapse()
    {
        double[] wanted = [.. goal];
        WorstCurrents estimate = evaluator.Estimate(decision);
        bool raised = RaiseForDrop(estimate);
        for (double share = CollapseStep; !raised && share > LeastShare; share *= CollapseStep)
        {
            for (int amplifier = 0; amplifier < goal.Length; amplifier++) goal[amplifier] = share * DropOf(amplifier, estimate);
            raised = RaiseForDrop(estimate);
        }

        wanted.CopyTo(goal, 0);
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
            foreach (int run in open) raised |= RaiseToBear(run, currents.ThermalAmps[run]);
        }
    }

    private bool RaiseForRules(Evaluation evaluation)
    {
        bool raised = false;
        foreach (Breach breach in evaluation.Breaches)
        {
            raised |= breach.Kind switch
            {
                BreachKind.OverAmpacity => RaiseToBear(breach.Index, breach.Measured),
                BreachKind.NoFuseFits or BreachKind.FuseAboveConductor or BreachKind.FuseMissingAtReduction =>
                    RaiseToBear(breach.Index, breach.Measured),
                BreachKind.ParallelUnguarded or BreachKind.AlternatorDropLarge or BreachKind.SharedReturnBelowSupply =>
                    Raise(breach.Index),
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
        while (build.Runs[run].Given is null
            && Significant.Exceeds(amps, evaluator.Ampacities.OfAll(run, candidates[run][level[run]]))
            && Raise(run)) raised = true;
        return raised;
    }

    private bool RaiseReturns(int amplifier)
    {
        string id = build.Stated.Amplifiers[amplifier].Id;
        bool raised = false;
        foreach (int run in open)
        {
            CompleteRun described = build.Runs[run];
            if (described.Side is Side.Return && (described.From == id || described.To == id)) raised |= Raise(run);
        }

        return raised;
    }

    private double DropOf(int amplifier, WorstCurrents currents) =>
        evaluator.Wiring.SourceVoltsOf(amplifier) - currents.TerminalVolts[amplifier];

    /// <summary>The amplifiers whose drop is above the goal.</summary>
    private IEnumerable<int> Over(WorstCurrents currents) =>
        Enumerable.Range(0, goal.Length).Where(amplifier => Significant.Exceeds(DropOf(amplifier, currents), goal[amplifier]));

    /// <summary>
    /// For each amplifier that loses too much, makes runs stronger, each time the one that gives back most volts for its metal,
    /// until by prediction it loses no more.
    /// </summary>
    private bool RaiseForDrop(WorstCurrents currents)
    {
        var model = new DropModel(build, evaluator, currents);
        var gained = new double[goal.Length];
        bool raised = false;
        foreach (int amplifier in Over(currents))
        {
            while (!IsOutOfWork && DropOf(amplifier, currents) - gained[amplifier] > goal[amplifier]
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
        compared += open.Length;
        int best = open.MaxBy(run => Significant.Round(Worth(model, amplifier, run)));
        return Worth(model, amplifier, best) > 0 ? best : null;
    }

    /// <summary>Volts given back for each kilogram when a run becomes one step stronger.</summary>
    private double Worth(DropModel model, int amplifier, int run)
    {
        if (!CanRise(run)) return 0;
        ConductorChoice now = At(run), then = candidates[run][level[run] + 1];
        double kilograms = (then.KilogramsPerMetre - now.KilogramsPerMetre) * build.Runs[run].LengthMetres;
        return model.Gain(amplifier, run, now, then) / Math.Max(kilograms, LeastKilograms);
    }

    /// <summary>Whether there is a stronger candidate; parallel conductors come after the largest single one.</summary>
    private bool CanRise(int run) => level[run] + 1 < candidates[run].Count
        && (!isSingle || build.Runs[run].GivenCount is not null || candidates[run][level[run] + 1].Count == 1);

    private ConductorChoice At(int run) => candidates[run][level[run]];

    private Evaluation Weaken(Evaluation evaluation)
    {
        Breach[] accepted = [.. evaluation.Breaches.Where(Binds)];
        for (bool weakened = true; weakened;)
        {
            weakened = false;
            var model = new DropModel(build, evaluator, evaluation.Currents);
            foreach (int run in open.OrderByDescending(Saving).ThenBy(run => run))
            {
                if (!IsPromising(run, evaluation.Currents, model)) continue;
                if (IsOutOfWork) return evaluation;
                level[run]--;
                Evaluation? trial = evaluator.TryEvaluate(Present());
                if (trial is not null && IsAsGood(trial, accepted))
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
        ConductorChoice now = At(run), then = candidates[run][level[run] - 1];
        if (Significant.Exceeds(currents.ThermalAmps[run], evaluator.Ampacities.OfAll(run, then))) return false;
        for (int amplifier = 0; amplifier < goal.Length; amplifier++)
        {
            double drop = DropOf(amplifier, currents);
            if (drop - Doubt * model.Gain(amplifier, run, now, then) > goal[amplifier]) return false;
        }

        return true;
    }

    private double Saving(int run)
    {
        if (level[run] <= floor[run]) return 0;
        double metal = At(run).KilogramsPerMetre - candidates[run][level[run] - 1].KilogramsPerMetre;
        return Significant.Round(metal * build.Runs[run].LengthMetres);
    }

    /// <summary>Whether a weaker choice keeps the goal and every rule that the stronger one keeps.</summary>
    private bool IsAsGood(Evaluation trial, Breach[] accepted) =>
        !Over(trial.Currents).Any() && trial.Breaches.Where(Binds).All(breach => Array.Exists(accepted, breach.IsNoWorseThan));

    /// <summary>Whether a rule is one that the choice must keep; the drop has its own goal.</summary>
    private static bool Binds(Breach breach) =>
        (breach.Severity is Severity.Fail && breach.Kind is not BreachKind.DropOverLimit)
            || breach.Kind is BreachKind.ReturnBelowSupply or BreachKind.SharedReturnBelowSupply or BreachKind.AlternatorDropLarge;
}
