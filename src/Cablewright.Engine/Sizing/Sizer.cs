using Cablewright.Engine.Builds;
using Cablewright.Engine.Circuits;
using Cablewright.Engine.Findings;
using Cablewright.Engine.Protection;

namespace Cablewright.Engine.Sizing;

/// <summary>What was decided, and whether the work budget sufficed to make it as small as the rules allow.</summary>
internal sealed record SizedBuild(Evaluation Evaluation, bool IsComplete);

/// <summary>Chooses the conductors that a build leaves open, all together.</summary>
/// <remarks>
/// <para>Method: up, then down. Every open run starts as the weakest candidate. While a rule does not hold, the runs that can
/// cure it become stronger: for heat and fuses the run itself, for a drop the run that gains most volts for the metal it
/// costs, wherever on the way it lies. Then, the largest saving first, each run is made one step weaker again if every rule
/// still holds, until none can be: no open run of the result can be one step smaller by itself.</para>
/// <para>The goal for the drop is the design target; where that cannot be met, the hard limit.</para>
/// <para>The volts that a stronger run r gives back to amplifier a are I_r · i_ra · ΔR_r, with I_r the run's current and i_ra its
/// share of a current drawn by a alone (reciprocity of resistive circuits).</para>
/// <para>Non-convergence is no danger: each step up is taken at most once a candidate, and the work is counted against a budget.</para>
/// </remarks>
internal sealed class Sizer
{
    private readonly CompleteBuild build;
    private readonly Evaluator evaluator;
    private readonly int[] open;
    private readonly int[] level;
    private readonly double workBudget;
    private Decision decision;

    private Sizer(CompleteBuild build, Evaluator evaluator)
    {
        this.build = build;
        this.evaluator = evaluator;
        open = [.. Enumerable.Range(0, build.Runs.Count).Where(run => build.Runs[run].Given is null)];
        level = new int[build.Runs.Count];
        workBudget = build.Ruleset["sizing.work-budget"].Value;
        decision = Present();
    }

    private bool IsOutOfWork => evaluator.Work > workBudget;

    public static SizedBuild Size(CompleteBuild build, Evaluator evaluator)
    {
        var sizer = new Sizer(build, evaluator);
        if (sizer.open.Length == 0) return new SizedBuild(evaluator.Evaluate(sizer.decision), true);
        Evaluation evaluation = sizer.Strengthen(build.Drop.TargetVolts);
        double goal = build.Drop.TargetVolts;
        if (build.Drop.HardVolts > goal && sizer.Over(evaluation.Currents, goal).Any())
        {
            goal = build.Drop.HardVolts;
            Array.Clear(sizer.level);
            evaluation = sizer.Strengthen(goal);
        }

        return sizer.Weaken(evaluation, goal);
    }

    private Decision Present()
    {
        ConductorChoice[] conductors = [.. build.Runs.Select((run, index) => run.Given is { } given
            ? new ConductorChoice(given, run.GivenCount ?? 1)
            : run.Candidates[level[index]])];
        return new Decision(conductors, decision?.Near ?? new FittedFuse?[conductors.Length], decision?.Far ?? new FittedFuse?[conductors.Length]);
    }

    private Evaluation Strengthen(double goalVolts)
    {
        Begin();
        while (true)
        {
            decision = Present();
            Evaluation? evaluation = evaluator.TryEvaluate(decision);
            bool raised = evaluation is null
                ? RaiseForDrop(evaluator.Estimate(decision), goalVolts)
                : RaiseForRules(evaluation) | RaiseForDrop(evaluation.Currents, goalVolts);
            if (!raised || IsOutOfWork) return evaluation ?? evaluator.Evaluate(decision);
            decision = evaluation?.Decision ?? decision;
        }
    }

    /// <summary>Makes the first guess from currents that always exist, so that the search does not begin in a collapse.</summary>
    private void Begin()
    {
        for (bool raised = true; raised;)
        {
            decision = Present();
            WorstCurrents currents = evaluator.Estimate(decision);
            raised = false;
            foreach (int run in open) raised |= RaiseToBear(run, currents.ThermalAmps[run]);
        }

        while (RaiseForDrop(evaluator.Estimate(decision = Present()), build.Drop.HardVolts) && !IsOutOfWork)
        {
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
                BreachKind.NoFuseFits or BreachKind.FuseMissingAtReduction => RaiseToBear(breach.Index, breach.Measured),
                BreachKind.ParallelUnguarded => Raise(breach.Index),
                BreachKind.ReturnBelowSupply => RaiseReturns(breach.Index),
                _ => false,
            };
        }

        return raised;
    }

    private bool Raise(int run)
    {
        if (build.Runs[run].Given is not null || level[run] + 1 >= build.Runs[run].Candidates.Count) return false;
        level[run]++;
        return true;
    }

    private bool RaiseToBear(int run, double amps)
    {
        bool raised = false;
        while (build.Runs[run].Given is null
            && Significant.Exceeds(amps, evaluator.Ampacities.OfAll(run, build.Runs[run].Candidates[level[run]]))
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

    /// <summary>The amplifiers whose drop is above a goal.</summary>
    private IEnumerable<int> Over(WorstCurrents currents, double goalVolts) => Enumerable.Range(0, build.Draws.Count)
        .Where(amplifier => Significant.Exceeds(evaluator.Wiring.SourceVoltsOf(amplifier) - currents.TerminalVolts[amplifier], goalVolts));

    /// <summary>For each amplifier that loses too much, makes the run stronger that gives back most volts for its metal.</summary>
    private bool RaiseForDrop(WorstCurrents currents, double goalVolts)
    {
        var best = new SortedSet<int>();
        foreach (int amplifier in Over(currents, goalVolts))
        {
            double[] division = evaluator.Division(amplifier);
            int run = open.MaxBy(candidate => Significant.Round(Worth(candidate, currents.PeakAmps[candidate] * Math.Abs(division[candidate]))));
            if (Worth(run, currents.PeakAmps[run] * Math.Abs(division[run])) > 0) best.Add(run);
        }

        bool raised = false;
        foreach (int run in best) raised |= Raise(run);
        return raised;
    }

    /// <summary>Volts given back for each kilogram when a run becomes one step stronger.</summary>
    private double Worth(int run, double currentProduct)
    {
        IReadOnlyList<ConductorChoice> candidates = build.Runs[run].Candidates;
        if (level[run] + 1 >= candidates.Count) return 0;
        ConductorChoice now = candidates[level[run]], then = candidates[level[run] + 1];
        double gain = currentProduct * (now.OhmsPerMetreAt20 - then.OhmsPerMetreAt20);
        return gain / Math.Max(then.KilogramsPerMetre - now.KilogramsPerMetre, 1e-6);
    }

    private SizedBuild Weaken(Evaluation evaluation, double goalVolts)
    {
        Breach[] accepted = [.. evaluation.Breaches.Where(breach => Binds(breach, goalVolts))];
        for (bool weakened = true; weakened;)
        {
            weakened = false;
            foreach (int run in open.OrderByDescending(Saving).ThenBy(run => run))
            {
                if (level[run] == 0) continue;
                if (IsOutOfWork) return new SizedBuild(evaluation, false);
                level[run]--;
                Evaluation? trial = evaluator.TryEvaluate(Present());
                if (trial is not null && trial.Breaches.Where(breach => Binds(breach, goalVolts)).All(breach => accepted.Any(breach.IsSameAs)))
                    (evaluation, decision, weakened) = (trial, trial.Decision, true);
                else level[run]++;
            }
        }

        return new SizedBuild(evaluation, true);
    }

    private double Saving(int run)
    {
        if (level[run] == 0) return 0;
        IReadOnlyList<ConductorChoice> candidates = build.Runs[run].Candidates;
        double metal = candidates[level[run]].KilogramsPerMetre - candidates[level[run] - 1].KilogramsPerMetre;
        return Significant.Round(metal * build.Runs[run].LengthMetres);
    }

    /// <summary>Whether a rule that does not hold is one that the choice must keep.</summary>
    private static bool Binds(Breach breach, double goalVolts) =>
        breach.Severity is Severity.Fail
        || breach.Kind is BreachKind.ReturnBelowSupply
        || (breach.Kind is BreachKind.DropOverTarget && Significant.Exceeds(breach.Measured, goalVolts));
}
