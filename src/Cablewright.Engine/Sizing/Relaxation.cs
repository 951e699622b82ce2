using Cablewright.Engine.Circuits;
using Cablewright.Engine.Conductors;

namespace Cablewright.Engine.Sizing;

/// <summary>One candidate of a run.</summary>
/// <param name="Choice">Conductor and count.</param>
/// <param name="Weight">What it weighs in the objective.</param>
/// <param name="Ohms">The least resistance that the run has with it, in any choice that keeps the goal.</param>
internal readonly record struct RunOption(ConductorChoice Choice, double Weight, double Ohms)
{
    public double SiemensMetres => 1 / Choice.OhmsPerMetreAt20;
}

/// <summary>A problem that is easier than the choice itself, and whose solution therefore weighs no more.</summary>
/// <remarks>
/// <para>Every choice that keeps the goal g and the rules draws at least the floors of <see cref="LoadFloors"/>, on runs that have
/// at least the resistances of <see cref="RunFloors"/>. So it also keeps, for each amplifier, Σ i r ≤ g over the runs of its certain
/// way, i being the least current and r the least resistance: numbers, one for each candidate. What is left is to choose a
/// candidate for each run so that these sums stay below their limits and the weight is least.</para>
/// <para>Runs that several amplifiers share are branched on. Below a branch each amplifier is taken alone: over its own way, with
/// the weight of a run that it shares divided among those that share it, the least weight for a loss is a
/// <see cref="Frontier"/>. The sum over the amplifiers bounds the weight, since to let each choose a shared run for itself can only
/// make the sum less (Lagrangian decomposition with fixed multipliers); once every shared run is decided it is the optimum of the
/// easier problem itself.</para>
/// </remarks>
internal sealed class Relaxation
{
    /// <summary>
    /// How far a floor may lie above a limit and still count as keeping it: temperatures are found to 0.001 K, and limits are
    /// compared at six digits.
    /// </summary>
    public const double Tolerance = 2e-5;

    /// <summary>Looking at one amplifier or bundle in a bound costs about this much of solving a run.</summary>
    public const double VisitCost = 0.2;

    /// <summary>A branch that waits takes memory; it is charged as so many runs solved.</summary>
    public const double BranchCost = 4;

    private const int Passes = 2;

    private readonly SizingTask task;
    private readonly Goal goal;
    private readonly LoadFloors loads;
    private readonly double[] siemens;

    public Relaxation(SizingTask task, Goal goal, ChoiceRules rules, IReadOnlyList<ConductorChoice>[] candidates)
    {
        this.task = task;
        this.goal = goal;
        Wiring wiring = task.Evaluator.Wiring;
        loads = new LoadFloors(task.Build, wiring, goal);
        var ceilings = new CurrentCeilings(task.Build, wiring, task.Paths, loads, goal, rules);
        var fuses = new FuseFloors(
            task.Build, task.Evaluator.Shape, task.Evaluator.Ampacities, goal.MostParallel, rules);
        Floors = new RunFloors(task, fuses, rules);
        Returns = [.. Enumerable.Range(0, goal.Volts.Length).Select(load => new ReturnRule(task, rules, candidates, load))];
        Amps = [.. Enumerable.Range(0, goal.Volts.Length).Select(load => new LoadAmps(
            loads.ThermalShare(load),
            loads.Least(load),
            loads.AtLowest(load, 0),
            loads.Running(load, 0),
            loads.AtLowest(load, 0),
            ceilings.Running(load),
            ceilings.AtLowest(load)))];
        Options = [.. candidates.Select((choices, run) => Weighed(run, choices))];
        IsInfeasible = !Tighten();
        Shared = [.. task.Open.Where(run => task.Paths.LoadsOn[run].Count != 1)
            .OrderByDescending(run => task.Paths.LoadsOn[run].Count).ThenBy(run => run)];
        siemens = [.. Options.Select((options, run) => task.Build.Runs[run].Given is null ? double.NaN : options[0].SiemensMetres)];
        Ways = IsInfeasible ? [] : [.. Enumerable.Range(0, goal.Volts.Length).Select(WayOf)];
    }

    /// <summary>The candidates that are left of each run, the lightest first.</summary>
    public RunOption[][] Options { get; }

    /// <summary>Whether it is proven that no choice keeps the goal and the rules.</summary>
    public bool IsInfeasible { get; }

    /// <summary>The open runs to branch on: those with several amplifiers, then those of which nothing is certain.</summary>
    public int[] Shared { get; }

    public AmplifierWay[] Ways { get; }

    public RunFloors Floors { get; }

    public LoadFloors Loads => loads;

    public ReturnRule[] Returns { get; }

    /// <summary>What is proven of the current of each amplifier.</summary>
    public LoadAmps[] Amps { get; }

    public double[] GoalVolts => goal.Volts;

    /// <summary>How well each given run conducts; not a number for an open one.</summary>
    public ReadOnlySpan<double> GivenSiemensMetres => siemens;

    /// <summary>A bound for every choice in which the first runs to branch on are decided.</summary>
    /// <param name="picks">The candidate of each decided one.</param>
    /// <param name="shares">Share of its goal that each amplifier is to keep; <c>null</c> for a proof: the whole.</param>
    public double Bound(ReadOnlySpan<int> picks, double[]? shares = null)
    {
        double weight = 0;
        for (int i = 0; i < Shared.Length; i++)
        {
            RunOption[] options = Options[Shared[i]];
            if (i < picks.Length) weight += options[picks[i]].Weight;
            else if (task.Paths.LoadsOn[Shared[i]].Count == 0) weight += options[0].Weight;
        }

        foreach (AmplifierWay way in Ways) weight += way.LeastWeight(picks, shares?[way.Load] ?? 1);
        return weight;
    }

    /// <summary>The candidates of the shared runs in a solution of the easier problem; <c>null</c> where it has none.</summary>
    public int[]? LightestPicks(double[] shares)
    {
        var waiting = new PriorityQueue<int[], (double, long)>();
        long queued = 0;
        waiting.Enqueue([], (0, queued++));
        while (waiting.TryDequeue(out int[]? picks, out _) && !task.IsOutOfWork)
        {
            if (picks.Length == Shared.Length) return picks;
            for (int option = 0; option < Options[Shared[picks.Length]].Length; option++)
            {
                int[] next = [.. picks, option];
                double bound = Bound(next, shares);
                task.SearchWork += BranchCost;
                if (double.IsFinite(bound)) waiting.Enqueue(next, (Significant.Round(bound), queued++));
            }
        }

        return null;
    }

    private RunOption[] Weighed(int run, IReadOnlyList<ConductorChoice> choices) =>
        [.. choices.Select(choice => new RunOption(choice, task.WeightOf(run, choice), 0))
            .OrderBy(option => Significant.Round(option.Weight)).ThenBy(option => option.Choice.Count)];

    /// <summary>Floors of currents, resistances and drops in turn; leaves out what cannot bear its current.</summary>
    private bool Tighten()
    {
        double[] leastOhms = new double[task.Paths.LoadsOn.Count];
        for (int i = 0; i < task.Evaluator.Wiring.FixedOhms.Count; i++)
            leastOhms[task.Build.Runs.Count + i] = task.Evaluator.Wiring.FixedOhms[i];
        for (int pass = 0; pass < Passes; pass++)
        {
            Floors.Take(Amps);
            for (int run = 0; run < Options.Length; run++)
            {
                Options[run] = [.. Options[run].Where(option => IsGiven(run) || Floors.CanBear(run, option.Choice, Floors.Amps[run]))
                    .Select(option => option with { Ohms = OhmsOf(run, option.Choice, pass) })];
                if (Options[run].Length == 0) return false;
                leastOhms[run] = Options[run].Min(option => option.Ohms);
            }

            if (!RaiseFloors(leastOhms)) return false;
        }

        Floors.Take(Amps);
        return true;
    }

    private double OhmsOf(int run, ConductorChoice choice, int pass) => task.Paths.LoadsOn[run].Count == 0 ? 0
        : pass < Passes - 1 ? Floors.ColdOhms(run, choice)
        : Floors.LeastOhms(run, choice, Floors.Amps[run]);

    private bool RaiseFloors(double[] leastOhms)
    {
        double[] drop = new double[Amps.Length], atLowest = new double[Amps.Length];
        for (int load = 0; load < drop.Length; load++)
        {
            foreach (int branch in task.Paths.Of[load])
            {
                drop[load] += leastOhms[branch] * Floors.RunningAmps[branch];
                atLowest[load] += leastOhms[branch] * LowestAmpsOn(branch, Amps);
            }
        }

        for (int load = 0; load < drop.Length; load++)
        {
            if (drop[load] > goal.Volts[load] * (1 + Tolerance)) return false;
            Amps[load] = Amps[load] with
            {
                Running = loads.Running(load, drop[load]),
                AtLowest = loads.AtLowest(load, atLowest[load]),
            };
        }

        return true;
    }

    /// <summary>
    /// The least current of a branch at the lowest supply voltage; 0 where some amplifier then draws less, since the branch may then be
    /// cooler than with the engine running.
    /// </summary>
    public double LowestAmpsOn(int branch, LoadAmps[] amps) => task.Paths.LoadsOn[branch].TrueForAll(loads.DrawsNoLessWhenLow)
        ? task.Paths.LoadsOn[branch].Sum(load => amps[load].AtLowest)
        : 0;

    private bool IsGiven(int run) => task.Build.Runs[run].Given is not null;

    private AmplifierWay WayOf(int load) => new(task, this, load, siemens);
}
