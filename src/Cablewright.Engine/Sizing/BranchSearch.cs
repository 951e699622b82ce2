using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Sizing;

/// <summary>Searches all choices in which the shared runs are decided.</summary>
/// <remarks>
/// <para>What one amplifier's own runs lose then touches the others only through the currents in what they share. The floors of
/// the currents are raised in turn with the lists of what is left: a bundle of own runs that weighs more than the best known
/// choice allows is left out, so the least loss that is left is larger, so the least currents are, so more is left out.</para>
/// <para>Then amplifiers are decided one after another. A decided one draws at least what its own bundle makes it draw; that
/// raises what the others lose in the shared runs. What passes all floors is worked out in full.</para>
/// </remarks>
internal sealed class BranchSearch
{
    private const int Passes = 4;
    private const int Settling = 2;

    private readonly SizingTask task;
    private readonly Relaxation relaxation;
    private readonly double[] limit;
    private readonly double[] ohms;
    private readonly double[] mostOhms;
    private readonly int[][] shared;
    private readonly double[] ownFixedOhms;
    private readonly double[] mostFixedOhms;
    private readonly BundleList[] lists;
    private readonly double sharedWeight;
    private readonly int[] order;
    private readonly int[] chosen;
    private readonly Func<ConductorChoice[], double> tryChoice;
    private LoadAmps[] amps;
    private double below;

    /// <summary>Prepares a search.</summary>
    /// <param name="task">The task.</param>
    /// <param name="relaxation">The candidates and floors, with every shared run decided.</param>
    /// <param name="tryChoice">Works a choice out in full; returns the weight that a choice must now be below to be
    /// better.</param>
    public BranchSearch(SizingTask task, Relaxation relaxation, Func<ConductorChoice[], double> tryChoice)
    {
        this.task = task;
        this.relaxation = relaxation;
        this.tryChoice = tryChoice;
        limit = [.. relaxation.GoalVolts.Select(volts => volts * (1 + Relaxation.Tolerance))];
        ohms = new double[task.Paths.LoadsOn.Count];
        mostOhms = new double[ohms.Length];
        amps = [.. relaxation.Amps];
        shared = [.. task.Paths.Of.Select(way => way.Where(branch => task.Paths.LoadsOn[branch].Count > 1).ToArray())];
        ownFixedOhms = new double[shared.Length];
        mostFixedOhms = new double[shared.Length];
        lists = new BundleList[shared.Length];
        chosen = new int[shared.Length];
        sharedWeight = relaxation.Shared.Sum(run => relaxation.Options[run][0].Weight);
        order = [.. Enumerable.Range(0, shared.Length).OrderByDescending(load => Significant.Round(amps[load].Running))
            .ThenBy(load => load)];
    }

    /// <summary>The proven least weight.</summary>
    public double Bound { get; private set; }

    /// <summary>Raises the floors and shortens the lists.</summary>
    /// <param name="atLeast">A bound that is known.</param>
    /// <param name="lighterThan">Only what weighs less is of interest.</param>
    /// <returns><c>false</c> where nothing is left.</returns>
    public bool Tighten(double atLeast, double lighterThan)
    {
        if (!Begin(atLeast, lighterThan)) return false;
        for (int pass = 1; pass < Passes && !task.IsOutOfWork; pass++)
        {
            Refine();
            if (!CanBearShared() || !Shorten()) return false;
        }

        return true;
    }

    /// <summary>Searches what is left.</summary>
    /// <returns><c>false</c> where the work budget ended first.</returns>
    public bool Search() => Descend(0, sharedWeight, [.. amps.Select(load => load.Running)]);

    private bool Begin(double atLeast, double lighterThan)
    {
        below = lighterThan;
        Bound = atLeast;
        amps = [.. relaxation.Amps];
        relaxation.TakeLowerBounds();
        TakeOhms(isRefined: false);
        return Collect(lighterThan - atLeast);
    }

    private double LostBefore(int load, double[] branchAmps) => shared[load].Sum(branch => ohms[branch] * branchAmps[branch]);

    private double[] BranchAmps(double[] loadAmps)
    {
        var amps = new double[ohms.Length];
        foreach (int[] way in shared)
        {
            foreach (int branch in way)
            {
                if (amps[branch] > 0) continue;
                foreach (int load in task.Paths.LoadsOn[branch]) amps[branch] += loadAmps[load];
            }
        }

        return amps;
    }

    private void TakeOhms(bool isRefined)
    {
        int runs = task.Build.Runs.Count;
        for (int i = 0; i < task.Model.Circuit.FixedOhms.Count; i++)
            ohms[runs + i] = mostOhms[runs + i] = task.Model.Circuit.FixedOhms[i];
        foreach (int run in relaxation.Shared) Take(run, relaxation.Options[run][0]);
        foreach (AmplifierWay way in relaxation.Ways)
        {
            foreach (int branch in way.Fixed.Where(branch => branch < runs)) Take(branch, relaxation.Options[branch][0]);
            int[] own = [.. way.Fixed.Where(branch => task.Paths.LoadsOn[branch].Count == 1)];
            ownFixedOhms[way.Load] = own.Sum(branch => ohms[branch]);
            mostFixedOhms[way.Load] = own.Sum(branch => mostOhms[branch]);
        }

        void Take(int run, RunOption option)
        {
            bool refines = isRefined && task.Paths.LoadsOn[run].Count > 0;
            RunAmps known = relaxation.LowerBounds.Amps[run];
            ohms[run] = refines ? relaxation.LowerBounds.LeastOhms(run, option.Choice, known) : option.Ohms;
            mostOhms[run] = refines ? relaxation.LowerBounds.MostOhms(run, option.Choice, known) : double.PositiveInfinity;
        }
    }

    /// <summary>
    /// What is proven of the currents, from the bundles that are left; of the resistances, from those; of the bundles, from both.
    /// </summary>
    private void Refine()
    {
        var before = new SharedVolts(task, relaxation, shared, ohms, mostOhms, amps);
        amps = [.. lists.Select((list, load) => list.AmpsWithAny(bundle => AmpsWith(load, bundle, before)))];
        relaxation.LowerBounds.Take(amps);
        TakeOhms(isRefined: true);
        before = new SharedVolts(task, relaxation, shared, ohms, mostOhms, amps);
        for (int load = 0; load < lists.Length; load++)
        {
            int of = load;
            lists[load].Refine(bundle => AmpsWith(of, bundle, before));
        }
    }

    private bool CanBearShared()
    {
        return Array.TrueForAll(
            relaxation.Shared, run =>
                relaxation.LowerBounds.CanBear(run, relaxation.Options[run][0].Choice, relaxation.LowerBounds.Amps[run]));
    }

    private LoadAmps AmpsWith(int load, Bundle bundle, SharedVolts before)
    {
        LoadAmps known = amps[load];
        double own = ownFixedOhms[load] + bundle.Ohms, most = mostFixedOhms[load] + bundle.MostOhms;
        for (int i = 0; i < Settling; i++)
        {
            known = known with
            {
                Running = Math.Max(known.Running, relaxation.Loads.Running(load, before.Running[load] + own * known.Running)),
                AtLowest = Math.Max(
                    known.AtLowest, relaxation.Loads.AtLowest(load, before.AtLowest[load] + own * known.AtLowest)),
                MostRunning =
                    Least(known.MostRunning, task.Build.ChargingVolts, before.MostRunning[load] + most * known.MostRunning),
                MostAtLowest =
                    Least(known.MostAtLowest, task.Build.LowestSupplyVolts,
                        before.MostAtLowest[load] + most * known.MostAtLowest),
            };
        }

        return known;

        double Least(double amps, double supply, double drop) => Math.Min(amps, relaxation.Loads.Most(load, supply, drop));
    }

    private bool Collect(double slack)
    {
        double[] siemens = [.. relaxation.GivenSiemensMetres];
        foreach (int run in relaxation.Shared) siemens[run] = relaxation.Options[run][0].SiemensMetres;
        double[] branchAmps = BranchAmps([.. amps.Select(load => load.Running)]);
        for (int load = 0; load < lists.Length; load++)
        {
            double most = OwnOhmsWithin(load, branchAmps, amps[load].Running);
            double lightest = relaxation.LeastOwnWeight(load);
            lists[load] = new BundleList(task, relaxation, relaxation.Ways[load], siemens, (most, lightest + slack));
            if (lists[load].Count == 0) return false;
        }

        return Shorten();
    }

    private bool Shorten()
    {
        double[] branchAmps = BranchAmps([.. amps.Select(load => load.Running)]);
        double weight = sharedWeight;
        for (int load = 0; load < lists.Length; load++)
        {
            lists[load].Keep(OwnOhmsWithin(load, branchAmps, amps[load].Running), double.PositiveInfinity);
            if (lists[load].Count == 0) return false;
            weight += lists[load][0].Weight;
        }

        Bound = Math.Max(Bound, weight);
        if (!(Bound < below)) return false;
        foreach (BundleList list in lists) list.Keep(double.PositiveInfinity, list[0].Weight + below - weight);
        return true;
    }

    private double OwnOhmsWithin(int load, double[] branchAmps, double amps) =>
        (limit[load] - LostBefore(load, branchAmps)) / amps - ownFixedOhms[load];

    /// <summary>The least current of an amplifier with its own runs of at least this resistance.</summary>
    private double Settled(int load, double known, double[] branchAmps, double ownOhms)
    {
        double before = LostBefore(load, branchAmps);
        for (int i = 0; i < Settling; i++)
            known = Math.Max(known, relaxation.Loads.Running(load, before + known * (ownFixedOhms[load] + ownOhms)));
        return known;
    }

    private bool Descend(int depth, double weight, double[] running)
    {
        if (depth == order.Length)
        {
            below = tryChoice(Chosen());
            return true;
        }

        int load = order[depth];
        BundleList list = lists[load];
        double[] branchAmps = BranchAmps(running);
        for (int i = 0; i < list.Count; i++)
        {
            if (task.IsOutOfWork) return false;
            if (weight + list[i].Weight >= below) break;
            if (list[i].Ohms > OwnOhmsWithin(load, branchAmps, running[load])) continue;
            chosen[load] = i;
            double[] raised = [.. running];
            raised[load] = Settled(load, running[load], branchAmps, list[i].Ohms);
            if (weight + list[i].Weight + LeastRest(depth + 1, raised) >= below) continue;
            if (!Descend(depth + 1, weight + list[i].Weight, raised)) return false;
        }

        return true;
    }

    /// <summary>
    /// The least weight of the amplifiers that are not yet decided; infinite where some amplifier has nothing left.
    /// </summary>
    private double LeastRest(int depth, double[] running)
    {
        task.Count(Relaxation.VisitCost * order.Length);
        double[] branchAmps = BranchAmps(running);
        double weight = 0;
        for (int i = 0; i < order.Length; i++)
        {
            int load = order[i];
            double most = OwnOhmsWithin(load, branchAmps, running[load]);
            if (i >= depth) weight += lists[load].LightestWithin(most);
            else if (lists[load][chosen[load]].Ohms > most) return double.PositiveInfinity;
        }

        return weight;
    }

    private ConductorChoice[] Chosen()
    {
        ConductorChoice[] conductors = [.. relaxation.Options.Select(options => options[0].Choice)];
        for (int load = 0; load < lists.Length; load++)
        {
            int[] own = relaxation.Ways[load].Private;
            int[] options = lists[load][chosen[load]].Options;
            for (int i = 0; i < own.Length; i++) conductors[own[i]] = relaxation.Options[own[i]][options[i]].Choice;
        }

        return conductors;
    }
}
