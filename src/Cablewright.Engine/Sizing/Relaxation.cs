using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Wiring;

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
/// <para>Every choice that keeps the goal g and the rules draws at least the floors of <see cref="LoadLowerBounds"/>, on runs
/// that have at least the resistances of <see cref="RunLowerBounds"/>. So it also keeps, for each amplifier, Σ i r ≤ g over the
/// runs of its certain way, i being the least current and r the least resistance: numbers, one for each candidate. What is left
/// is to choose a candidate for each run so that these sums stay below their limits and the weight is least: a
/// <see cref="TreeKnapsack"/>, solved exactly. A run that fits into no tree counts with its least loss and its least weight
/// until it is decided.</para>
/// <para>Once a good choice is known, only what weighs less is of interest (<see cref="Tighten"/>): a candidate that no lighter
/// solution of the easier problem has is left out, and each amplifier loses at least what it loses in some lighter solution; so
/// the least currents are larger, so the least resistances and losses are, so more is left out. Each step is proven by the one
/// before.</para>
/// </remarks>
internal sealed class Relaxation
{
    /// <summary>
    /// How far a floor may lie above a limit and still count as keeping it: temperatures are found to 0.001 K, and limits are
    /// compared at six digits.
    /// </summary>
    public const double Tolerance = 2e-5;

    /// <summary>Looking at one amplifier or bundle in a bound costs about this much of solving a run.</summary>
    public const double VisitCost = 0.6;

    /// <summary>A branch that waits takes memory; it is charged as so many runs solved.</summary>
    public const double BranchCost = 12;

    /// <summary>Going over a candidate of a run for the floors and the problem that they lead to, in runs solved.</summary>
    private const double OptionCost = 0.4;

    private const int FirstPasses = 2;
    private const int MostPasses = 8;

    private readonly SizingTask task;
    private readonly Goal goal;
    private readonly LoadLowerBounds loads;
    private readonly double[] siemens;
    private TreeKnapsack? problem;
    private double[] limits = [];

    public Relaxation(
        SizingTask task, Goal goal, ChoiceRules rules, IReadOnlyList<ConductorChoice>[] candidates, ReturnRule[] returns)
    {
        this.task = task;
        this.goal = goal;
        CircuitModel circuit = task.Model.Circuit;
        loads = new LoadLowerBounds(task.Model, goal);
        var ceilings = new CurrentUpperBounds(task, loads, goal, rules);
        var fuses = new FuseBounds(task.Model, task.Evaluator.FuseLadders, goal.MostParallel, rules);
        LowerBounds = new RunLowerBounds(task, goal, fuses, rules);
        Returns = returns;
        Amps = [.. Enumerable.Range(0, goal.Volts.Length).Select(load => new LoadAmps(
            loads.ThermalShare(load),
            loads.Least(load),
            loads.AtLowest(load, 0),
            loads.Running(load, 0),
            loads.AtLowest(load, 0),
            ceilings.Running(load),
            ceilings.AtLowest(load)))];
        Options = [.. candidates.Select((choices, run) => Weighed(run, choices))];
        Shared = [.. task.Tree.Shared, .. task.Tree.Aside];
        siemens = [.. Options.Select((options, run) => IsGiven(run) ? options[0].SiemensMetres : double.NaN)];
        Ways = [.. Enumerable.Range(0, goal.Volts.Length).Select(WayOf)];
        IsInfeasible = !Begin();
    }

    private Relaxation(Relaxation whole, int run, int option)
    {
        task = whole.task;
        goal = whole.goal;
        loads = whole.loads;
        LowerBounds = whole.LowerBounds;
        Returns = whole.Returns;
        Shared = whole.Shared;
        siemens = whole.siemens;
        Ways = whole.Ways;
        Amps = [.. whole.Amps];
        Options = [.. whole.Options];
        Options[run] = [Options[run][option]];
    }

    /// <summary>The candidates that are left of each run, the lightest first.</summary>
    public RunOption[][] Options { get; }

    /// <summary>Whether it is proven that no choice keeps the goal and the rules.</summary>
    public bool IsInfeasible { get; }

    /// <summary>The open runs to branch on: those with several amplifiers, then those of which nothing is certain.</summary>
    public int[] Shared { get; }

    public AmplifierWay[] Ways { get; }

    public RunLowerBounds LowerBounds { get; }

    public LoadLowerBounds Loads => loads;

    public ReturnRule[] Returns { get; }

    /// <summary>What is proven of the current of each amplifier.</summary>
    public LoadAmps[] Amps { get; }

    public double[] GoalVolts => goal.Volts;

    /// <summary>How well each given run conducts; not a number for an open one.</summary>
    public ReadOnlySpan<double> GivenSiemensMetres => siemens;

    /// <summary>What every choice that is left weighs at least; infinite where there is none.</summary>
    public double Bound => LeastAside + (problem ??= ProblemAt(1)).LeastWeight;

    /// <summary>The run to decide next; -1 where every one that several amplifiers share is decided.</summary>
    public int Undecided => Array.Find([.. Shared, -1], run => run < 0 || Options[run].Length > 1);

    /// <summary>Whether a run is of those of which no current is certain.</summary>
    public bool IsAside(int run) => task.Tree.Aside.Contains(run);

    /// <summary>The same with one run decided.</summary>
    public Relaxation With(int run, int option) => new(this, run, option);

    /// <summary>The least weight of an amplifier's own runs where all shared runs are decided.</summary>
    public double LeastOwnWeight(int load)
    {
        TreeKnapsack known = problem ??= ProblemAt(1);
        double volts = limits[load];
        foreach (int at in Ways[load].SharedAt) volts -= LowerBounds.RunningAmps[Shared[at]] * Options[Shared[at]][0].Ohms;
        return known.LeastOwnWeight(load, volts);
    }

    private double LeastAside
    {
        get
        {
            double weight = 0;
            foreach (int run in task.Tree.Aside) weight += Options[run][0].Weight;
            return weight;
        }
    }

    /// <summary>The easier problem in which each amplifier keeps a share of its goal.</summary>
    public TreeKnapsack ProblemAt(double share)
    {
        limits = LimitsAt(share);
        double[] amps = LowerBounds.RunningAmps;
        return new TreeKnapsack(
            task, task.Tree, [.. Options.Select((of, run) =>
                of.Select(option => new DropOption(amps[run] * option.Ohms, option.Weight)).ToArray())],
            limits, MayPair, isBound: true);
    }

    /// <summary>What each amplifier may lose in open runs where it keeps a share of its goal.</summary>
    public double[] LimitsAt(double share)
    {
        TakeLowerBounds();
        return [.. Ways.Select(way => goal.Volts[way.Load] * share * (1 + Tolerance) - FixedVolts(way, LowerBounds.RunningAmps))];
    }

    /// <summary>Leaves out what no choice below a weight has.</summary>
    /// <returns><c>false</c> where nothing is left.</returns>
    public bool Tighten(double below)
    {
        for (int pass = 0; pass < MostPasses; pass++)
        {
            if (!(Bound < below)) return false;
            if (task.IsOutOfWork) return true;
            double[] least = new double[Ways.Length];
            bool[][] isLeft = [.. Options.Select(options => new bool[options.Length])];
            problem!.Survey(below - LeastAside, least, isLeft);
            int before = Options.Sum(options => options.Length);
            foreach (int run in task.Open)
            {
                if (!task.Tree.Aside.Contains(run)) Options[run] = [.. Options[run].Where((_, option) => isLeft[run][option])];
            }

            for (int load = 0; load < least.Length; load++) least[load] += goal.Volts[load] * (1 + Tolerance) - limits[load];
            problem = null;
            if (!RaiseLowerBounds(least) || !TakeOptions(isCold: false)) return false;
            if (pass > 0 && Options.Sum(options => options.Length) == before) break;
        }

        return Bound < below;
    }

    private double FixedVolts(AmplifierWay way, double[] amps)
    {
        double volts = 0;
        foreach (int branch in way.Fixed) volts += amps[branch] * LeastOhmsOf(branch);
        foreach (int at in way.SharedAt)
        {
            if (at >= task.Tree.Shared.Length) volts += amps[Shared[at]] * LeastOhmsOf(Shared[at]);
        }

        return volts;
    }

    private double LeastOhmsOf(int branch) =>
        branch < Options.Length ? Options[branch]
            .Min(option => option.Ohms) : task.Model.Circuit.FixedOhms[branch - Options.Length];

    private bool MayPair(int load, int one, int other)
    {
        int[] own = task.Tree.Own[load];
        siemens[own[0]] = Options[own[0]][one].SiemensMetres;
        siemens[own[1]] = Options[own[1]][other].SiemensMetres;
        bool may = Returns[load].MayHold(siemens);
        siemens[own[0]] = siemens[own[1]] = double.NaN;
        return may;
    }

    private RunOption[] Weighed(int run, IReadOnlyList<ConductorChoice> choices) =>
        [.. choices.Select(choice => new RunOption(choice, task.WeightOf(run, choice), 0))
            .OrderBy(option => Significant.Round(option.Weight)).ThenBy(option => option.Choice.Count)];

    /// <summary>Floors of currents, resistances and drops in turn; leaves out what cannot carry its current.</summary>
    private bool Begin()
    {
        for (int pass = 0; pass < FirstPasses; pass++)
        {
            if (!TakeOptions(isCold: pass < FirstPasses - 1) || !RaiseLowerBounds(null)) return false;
        }

        return true;
    }

    /// <summary>Sets the floors, which the branches of a search share, to what is known here.</summary>
    public void TakeLowerBounds()
    {
        foreach (RunOption[] options in Options) task.Count(OptionCost * options.Length);
        for (int run = 0; run < Options.Length; run++) LowerBounds.WeakestAmps[run] = Options[run]
            .Min(option => AmpacityOf(run, option));
        LowerBounds.Take(Amps);
    }

    private bool TakeOptions(bool isCold)
    {
        TakeLowerBounds();
        for (int run = 0; run < Options.Length; run++)
        {
            Options[run] = [.. Options[run]
                .Where(option => IsGiven(run) || LowerBounds.CanBear(run, option.Choice, LowerBounds.Amps[run]))
                .Select(option => option with { Ohms = OhmsOf(run, option.Choice, isCold) })];
            if (Options[run].Length == 0) return false;
        }

        return true;
    }

    /// <summary>The ampacity of one conductor of a candidate.</summary>
    public double AmpacityOf(int run, RunOption option) => task.Model.Ampacities.Of(run, option.Choice.Conductor).LimitAmps;

    private double OhmsOf(int run, ConductorChoice choice, bool isCold) => task.Paths.LoadsOn[run].Count == 0 ? 0
        : isCold ? LowerBounds.ColdOhms(run, choice)
        : LowerBounds.LeastOhms(run, choice, LowerBounds.Amps[run]);

    /// <summary>Raises the least currents to those at the least drops.</summary>
    /// <param name="least">What each amplifier is proven to lose; <c>null</c>: nothing besides the least of each run on its
    /// way.</param>
    private bool RaiseLowerBounds(double[]? least)
    {
        double[] leastOhms = [.. Enumerable.Range(0, task.Paths.LoadsOn.Count).Select(LeastOhmsOf)];
        double[] drop = new double[Amps.Length], atLowest = new double[Amps.Length];
        for (int load = 0; load < drop.Length; load++)
        {
            foreach (int branch in task.Paths.Of[load])
            {
                drop[load] += leastOhms[branch] * LowerBounds.RunningAmps[branch];
                atLowest[load] += leastOhms[branch] * LowestAmpsOn(branch, Amps);
            }

            if (least is not null) drop[load] = Math.Max(drop[load], least[load]);
        }

        for (int load = 0; load < drop.Length; load++)
        {
            if (drop[load] > goal.Volts[load] * (1 + Tolerance)) return false;
            Amps[load] = Amps[load] with
            {
                Running = Math.Max(Amps[load].Running, loads.Running(load, drop[load])),
                AtLowest = Math.Max(Amps[load].AtLowest, loads.AtLowest(load, atLowest[load])),
            };
        }

        return true;
    }

    /// <summary>
    /// The least current of a branch at the lowest supply voltage; 0 where some amplifier then draws less, since the branch may
    /// then be cooler than with the engine running.
    /// </summary>
    public double LowestAmpsOn(int branch, LoadAmps[] amps) => task.Paths.LoadsOn[branch].TrueForAll(loads.DrawsNoLessWhenLow)
        ? task.Paths.LoadsOn[branch].Sum(load => amps[load].AtLowest)
        : 0;

    private bool IsGiven(int run) => task.Build.Runs[run].Given is not null;

    private AmplifierWay WayOf(int load)
    {
        int[] way = task.Paths.Of[load];
        return new AmplifierWay(
            load, task.Tree.Own[load], [.. Enumerable.Range(0, Shared.Length).Where(i => way.Contains(Shared[i]))],
            [.. way.Where(branch => branch >= Options.Length || IsGiven(branch))]);
    }
}
