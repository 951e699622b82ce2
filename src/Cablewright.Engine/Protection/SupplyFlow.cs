using Cablewright.Engine.Builds;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Protection;

/// <summary>The most current that fuses let through from the batteries to a node.</summary>
/// <remarks>
/// <para>Method: maximum flow by augmenting along shortest ways (Edmonds and Karp) from the node to the batteries. A run lets
/// through the smallest of its own fuses, without limit where it has none. Currents have no direction to keep to, so a run's
/// capacity serves both ways. Since every augmentation fills a fuse, there are no more of them than fuses on the ways.</para>
/// <para>What is asked for is the flow with one of the node's own runs taken away. All of them start from the flow with every run
/// there: what passed the run that is taken away is left at its other end, and led to the node on what room the others
/// have.</para>
/// </remarks>
internal sealed class SupplyFlow
{
    /// <summary>Looking at a run on the way to a battery, in runs solved.</summary>
    private const double CostOfRun = 0.01;

    /// <summary>Room that is left by rounding only.</summary>
    private const double Smallest = 1e-6;

    private readonly SupplyTopology topology;
    private readonly double[] capacity;
    private readonly bool[] isFused;
    private readonly double[] used;
    private readonly double[] before;
    private readonly (int Run, int From)[] cameBy;
    private readonly int[] searchOf;
    private readonly int[] waiting;
    private int search;
    private int without;
    private int lastSource;

    /// <summary>Prepares the flows of a design.</summary>
    /// <param name="topology">The supply side.</param>
    /// <param name="design">Where the fuses stand.</param>
    public SupplyFlow(SupplyTopology topology, Design design)
    {
        this.topology = topology;
        int runs = design.Conductors.Length;
        capacity = [.. Enumerable.Range(0, runs).Select(run => RunEnd.Of(run).Min(design.TotalRatingAmpsAt))];
        isFused = [.. capacity.Select(double.IsFinite)];
        used = new double[runs];
        before = new double[runs];
        cameBy = new (int, int)[topology.NodeCount];
        searchOf = new int[topology.NodeCount];
        waiting = new int[topology.NodeCount];
    }

    /// <summary>
    /// The flow into a node with each of its runs taken away, in amperes; infinite where some way has no fuse, 0 where there is
    /// none.
    /// </summary>
    /// <param name="node">The node.</param>
    /// <returns>
    /// In the order of the node's runs; with a fused run those parallel to it are taken away too.
    /// </returns>
    public double[] IntoWithoutEach(int node)
    {
        ReadOnlySpan<int> runs = topology.RunsAt(node);
        var into = new double[runs.Length];
        Array.Fill(into, double.PositiveInfinity);
        if (topology.IsBattery(node)) return into;
        Start(-1);
        double whole = Augment(node, 0, 0);
        if (double.IsInfinity(whole))
        {
            int first = FirstOfWay(node);
            for (int i = 0; i < runs.Length; i++)
            {
                Start(runs[i]);
                if (IsTakenAway(first)) into[i] = Augment(node, 0, 0);
            }

            return into;
        }

        used.CopyTo(before, 0);
        for (int i = 0; i < runs.Length; i++)
        {
            Start(runs[i]);
            before.CopyTo(used, 0);
            double passed = TakeAway(node);
            into[i] = passed > 0 ? Augment(node, whole - passed, passed) : whole;
        }

        return into;
    }

    /// <summary>Begins with nothing flowing and a run taken away.</summary>
    private void Start(int run)
    {
        without = run;
        Array.Clear(used);
    }

    /// <summary>Takes what flows over the run that is taken away, and those that go with it, out of the flow.</summary>
    private double TakeAway(int node)
    {
        double passed = 0;
        foreach (int run in topology.RunsAt(node))
        {
            if (!IsTakenAway(run)) continue;
            passed += topology.EndsOf(run).From == node ? used[run] : -used[run];
            used[run] = 0;
        }

        return passed;
    }

    /// <summary>Adds to a flow until nothing more reaches the node.</summary>
    /// <param name="node">The node.</param>
    /// <param name="sum">What flows already.</param>
    /// <param name="left">What waits at the other end of the run that is taken away.</param>
    private double Augment(int node, double sum, double left)
    {
        int beyond = without < 0 ? -1 : topology.OtherEnd(without, node);
        while (FindWay(node, left > Smallest ? beyond : -1) is >= 0 and int source)
        {
            double most = source == beyond && !topology.IsBattery(source) ? left : double.PositiveInfinity;
            for (int at = source; at != node; at = cameBy[at].From) most = Math.Min(most, Left(cameBy[at].Run, cameBy[at].From));
            if (double.IsInfinity(most))
            {
                lastSource = source;
                return most;
            }

            for (int at = source; at != node; at = cameBy[at].From)
                used[cameBy[at].Run] += cameBy[at].From == topology.EndsOf(cameBy[at].Run).From ? most : -most;
            if (source == beyond) left -= most;
            sum += most;
        }

        return sum;
    }

    private int FirstOfWay(int node)
    {
        int at = lastSource;
        while (cameBy[at].From != node) at = cameBy[at].From;
        return cameBy[at].Run;
    }

    private bool IsTakenAway(int run) =>
        run == without || (without >= 0 && isFused[without] && topology.AreParallel(run, without));

    private double Left(int run, int from)
    {
        if (IsTakenAway(run)) return 0;
        return from == topology.EndsOf(run).From ? capacity[run] - used[run] : capacity[run] + used[run];
    }

    /// <summary>
    /// Looks for the shortest way with room left from a node to a battery or to one more place; where it ends, or -1.
    /// </summary>
    private int FindWay(int start, int besides)
    {
        search++;
        int first = 0, last = 0, looked = 0, found = -1;
        searchOf[start] = search;
        waiting[last++] = start;
        while (first < last && found < 0)
        {
            int node = waiting[first++];
            foreach (int run in topology.RunsAt(node))
            {
                looked++;
                int next = topology.OtherEnd(run, node);
                if (searchOf[next] == search || !(Left(run, node) > Smallest)) continue;
                searchOf[next] = search;
                cameBy[next] = (run, node);
                if (next == besides || topology.IsBattery(next))
                {
                    found = next;
                    break;
                }

                waiting[last++] = next;
            }
        }

        topology.Meter.Count(CostOfRun * looked);
        return found;
    }
}
