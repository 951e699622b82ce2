using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Sizing;

/// <summary>One candidate of a run.</summary>
/// <param name="Choice">Conductor and count.</param>
/// <param name="Weight">What it weighs in the objective.</param>
/// <param name="Ohms">The least resistance that the run has with it, in any choice that keeps the goal.</param>
internal readonly record struct RunOption(ConductorChoice Choice, double Weight, double Ohms);

/// <summary>A problem that is easier than the choice itself, and whose solution therefore weighs no more.</summary>
/// <remarks>
/// Every choice that keeps the goal g and the rules draws at least the floors of <see cref="LoadLowerBounds"/>, on runs that have
/// at least the resistances of <see cref="RunLowerBounds"/>. So it also keeps, for each amplifier, Σ i r ≤ g over the runs of its
/// certain way, i being the least current and r the least resistance: numbers, one for each candidate. What is left is to choose
/// a candidate for each run so that these sums stay below their limits and the weight is least: a <see cref="TreeKnapsack"/>,
/// solved exactly. A run that fits into no tree counts with its least loss and its least weight.
/// </remarks>
internal sealed class Relaxation
{
    /// <summary>
    /// How far a floor may lie above a limit and still count as keeping it: temperatures are found to 0.001 K, and limits are
    /// compared at six digits.
    /// </summary>
    private const double Tolerance = 2e-5;

    /// <summary>Going over a candidate of a run for the floors and the problem that they lead to, in runs solved.</summary>
    private const double OptionCost = 0.4;

    private const int Passes = 2;

    private readonly SizingTask task;
    private readonly Goal goal;
    private readonly LoadLowerBounds loads;
    private readonly RunLowerBounds runs;
    private readonly ReturnRule[] returns;
    private readonly LoadAmps[] amps;
    private readonly double[] siemens;

    public Relaxation(
        SizingTask task, Goal goal, ChoiceRules rules, IReadOnlyList<ConductorChoice>[] candidates, ReturnRule[] returns)
    {
        this.task = task;
        this.goal = goal;
        this.returns = returns;
        loads = new LoadLowerBounds(task.Model, goal);
        runs = new RunLowerBounds(
            task, goal, new FuseBounds(task.Model, task.Evaluator.FuseLadders, goal.MostParallel, rules));
        amps = [.. Enumerable.Range(0, goal.Volts.Length).Select(load => new LoadAmps(
            loads.ThermalShare(load), loads.Running(load, 0), loads.AtLowest(load, 0), loads.Most(load)))];
        Options = [.. candidates.Select((choices, run) => Weighed(run, choices))];
        siemens = [.. candidates.Select((choices, run) => IsGiven(run) ? 1 / choices[0].OhmsPerMetreAt20 : double.NaN)];
        IsInfeasible = !Begin();
    }

    /// <summary>The candidates of each run that can carry its least current, the lightest first.</summary>
    public RunOption[][] Options { get; }

    /// <summary>The least current of each run, engine running.</summary>
    public double[] RunningAmps => runs.RunningAmps;

    /// <summary>Whether it is proven that no choice keeps the goal and the rules.</summary>
    public bool IsInfeasible { get; }

    /// <summary>What every choice weighs at least; infinite where there is none.</summary>
    public double Bound
    {
        get
        {
            if (IsInfeasible) return double.PositiveInfinity;
            double weight = ProblemAt(1).LeastWeight;
            foreach (int run in task.Tree.Aside) weight += Options[run][0].Weight;
            return weight;
        }
    }

    /// <summary>The easier problem in which each amplifier keeps a share of its goal.</summary>
    public TreeKnapsack ProblemAt(double share) => new(
        task, task.Tree,
        [.. Options.Select((of, run) => of
            .Select(option => new DropOption(RunningAmps[run] * option.Ohms, option.Weight)).ToArray())],
        LimitsAt(share), MayPair, isBound: true);

    /// <summary>What each amplifier may lose in the open runs of the tree where it keeps a share of its goal.</summary>
    public double[] LimitsAt(double share) => [.. goal.Volts.Select((volts, load) => volts * share * (1 + Tolerance)
        - task.Paths.Of[load].Where(IsOutsideTree).Sum(branch => RunningAmps[branch] * LeastOhmsOf(branch)))];

    private bool IsOutsideTree(int branch) =>
        branch >= Options.Length || IsGiven(branch) || task.Tree.Aside.Contains(branch);

    private double LeastOhmsOf(int branch) => branch < Options.Length
        ? Options[branch].Min(option => option.Ohms)
        : task.Model.Circuit.FixedOhms[branch - Options.Length];

    private bool MayPair(int load, int one, int other)
    {
        int[] own = task.Tree.Own[load];
        siemens[own[0]] = 1 / Options[own[0]][one].Choice.OhmsPerMetreAt20;
        siemens[own[1]] = 1 / Options[own[1]][other].Choice.OhmsPerMetreAt20;
        bool may = returns[load].MayHold(siemens);
        siemens[own[0]] = siemens[own[1]] = double.NaN;
        return may;
    }

    private RunOption[] Weighed(int run, IReadOnlyList<ConductorChoice> choices) =>
        [.. choices.Select(choice => new RunOption(choice, task.WeightOf(run, choice), 0))
            .OrderBy(option => Significant.Round(option.Weight)).ThenBy(option => option.Choice.Count)];

    /// <summary>Floors of currents, resistances and drops in turn; leaves out what cannot carry its current.</summary>
    private bool Begin()
    {
        for (int pass = 0; pass < Passes; pass++)
        {
            if (!TakeOptions(isCold: pass < Passes - 1) || !RaiseCurrents()) return false;
        }

        TakeCurrents();
        return true;
    }

    private void TakeCurrents()
    {
        for (int run = 0; run < Options.Length; run++)
        {
            task.Count(OptionCost * Options[run].Length);
            runs.WeakestAmps[run] = Options[run].Min(option => task.Model.Ampacities.Of(run, option.Choice.Conductor).LimitAmps);
        }

        runs.Take(amps);
    }

    private bool TakeOptions(bool isCold)
    {
        TakeCurrents();
        for (int run = 0; run < Options.Length; run++)
        {
            Options[run] = [.. Options[run]
                .Where(option => IsGiven(run) || runs.CanBear(run, option.Choice))
                .Select(option => option with { Ohms = OhmsOf(run, option.Choice, isCold) })];
            if (Options[run].Length == 0) return false;
        }

        return true;
    }

    private double OhmsOf(int run, ConductorChoice choice, bool isCold) => task.Paths.LoadsOn[run].Count == 0 ? 0
        : isCold ? runs.ColdOhms(run, choice)
        : runs.LeastOhms(run, choice);

    /// <summary>Raises the least currents to those at the least drops.</summary>
    /// <returns>Whether these keep the goal.</returns>
    private bool RaiseCurrents()
    {
        double[] leastOhms = [.. Enumerable.Range(0, task.Paths.LoadsOn.Count).Select(LeastOhmsOf)];
        double[] lowest = [.. task.Paths.LoadsOn.Select(LowestAmps)];
        for (int load = 0; load < amps.Length; load++)
        {
            double drop = 0, atLowest = 0;
            foreach (int branch in task.Paths.Of[load])
            {
                drop += leastOhms[branch] * RunningAmps[branch];
                atLowest += leastOhms[branch] * lowest[branch];
            }

            if (drop > goal.Volts[load] * (1 + Tolerance)) return false;
            amps[load] = amps[load] with
            {
                Running = Math.Max(amps[load].Running, loads.Running(load, drop)),
                AtLowest = Math.Max(amps[load].AtLowest, loads.AtLowest(load, atLowest)),
            };
        }

        return true;
    }

    /// <summary>
    /// The least current of a branch at the lowest supply voltage; 0 where some amplifier then draws less, since the branch may
    /// then be cooler than with the engine running.
    /// </summary>
    private double LowestAmps(List<int> loadsOn) =>
        loadsOn.TrueForAll(loads.DrawsNoLessWhenLow) ? loadsOn.Sum(load => amps[load].AtLowest) : 0;

    private bool IsGiven(int run) => task.Build.Runs[run].Given is not null;
}
