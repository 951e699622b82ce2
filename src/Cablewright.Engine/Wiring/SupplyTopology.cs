using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Wiring;

/// <summary>
/// The supply side as protection sees it: which runs there are, from the batteries outwards, and which ends they are fed at.
/// </summary>
internal sealed class SupplyTopology
{
    /// <summary>Joining two nodes, in runs solved.</summary>
    private const double CostOfJoin = 0.05;

    private readonly (int From, int To)[] ends;
    private readonly int[][] runsAt;
    private readonly int[] distance;
    private readonly int[] batteryNodes;
    private readonly bool[] isBattery;
    private readonly Dictionary<int, bool> fedFromBothEnds = [];

    public SupplyTopology(CompleteBuild build, CircuitModel circuit)
    {
        NodeCount = circuit.Network.NodeCount;
        Meter = build.Meter;
        ends = [.. Enumerable.Range(0, build.Runs.Count).Select(circuit.EndsOf)];
        int[] batteries = [.. Enumerable.Range(0, build.Batteries.Count).Select(circuit.PositiveOf)];
        batteryNodes = [.. batteries.Distinct()];
        isBattery = new bool[NodeCount];
        foreach (int node in batteryNodes) isBattery[node] = true;
        ChargingNode = batteries[build.ChargingBattery];
        int[] supply = [.. Enumerable.Range(0, ends.Length).Where(run => build.Runs[run].Side is Side.Supply)];
        runsAt = RunsAtNodes(supply);
        distance = DistanceFrom(batteries);
        IsRadial = FindRadial(batteries, supply);
        Outwards = [.. supply.OrderBy(run => Math.Min(distance[ends[run].From], distance[ends[run].To])).ThenBy(run => run)];
    }

    public int NodeCount { get; }

    /// <summary>Counts the work on the build.</summary>
    public WorkMeter Meter { get; }

    /// <summary>The positive terminal of the battery at the alternator.</summary>
    public int ChargingNode { get; }

    /// <summary>The supply runs, the nearest to a battery first.</summary>
    public IReadOnlyList<int> Outwards { get; }

    public IReadOnlyCollection<int> BatteryNodes => batteryNodes;

    /// <summary>Whether a battery's positive terminal is at a node.</summary>
    public bool IsBattery(int node) => isBattery[node];

    public (int From, int To) EndsOf(int run) => ends[run];

    /// <summary>
    /// Whether there is one way only from the batteries to every node: no loops, and one battery for each supply.
    /// </summary>
    public bool IsRadial { get; }

    /// <summary>The supply runs that end at a node.</summary>
    public ReadOnlySpan<int> RunsAt(int node) => runsAt[node];

    /// <summary>The node that a run leads to from another.</summary>
    public int OtherEnd(int run, int node) => ends[run].From == node ? ends[run].To : ends[run].From;

    /// <summary>The node at one end of a run.</summary>
    public int NodeAt(RunEnd end) => end.IsFar ? ends[end.Run].To : ends[end.Run].From;

    /// <summary>Whether an end of a run stands at a battery.</summary>
    public bool IsAtBattery(RunEnd end) => isBattery[NodeAt(end)];

    /// <summary>The end of a run that is nearer to a battery.</summary>
    public RunEnd FedEndOf(int run) => new(run, distance[ends[run].To] < distance[ends[run].From]);

    /// <summary>Whether two runs join the same two nodes.</summary>
    public bool AreParallel(int one, int other) => ends[one] == ends[other] || ends[one] == (ends[other].To, ends[other].From);

    /// <summary>Whether a battery stands behind each end of a run, so that current can come from either.</summary>
    public bool IsFedFromBothEnds(int run)
    {
        if (!fedFromBothEnds.TryGetValue(run, out bool both))
        {
            Meter.Count(CostOfJoin * Outwards.Count);
            var without = new DisjointSets(NodeCount);
            foreach (int other in Outwards.Where(other => other != run)) without.Join(ends[other].From, ends[other].To);
            HashSet<int> fed = [.. batteryNodes.Select(without.SetOf)];
            both = fed.Contains(without.SetOf(ends[run].From)) && fed.Contains(without.SetOf(ends[run].To));
            fedFromBothEnds.Add(run, both);
        }

        return both;
    }

    private int[][] RunsAtNodes(int[] supply)
    {
        List<int>[] at = [.. Enumerable.Range(0, NodeCount).Select(_ => new List<int>())];
        foreach (int run in supply)
        {
            at[ends[run].From].Add(run);
            at[ends[run].To].Add(run);
        }

        return [.. at.Select(runs => runs.ToArray())];
    }

    private bool FindRadial(int[] batteries, int[] supply)
    {
        var joined = new DisjointSets(NodeCount);
        foreach (int run in supply)
        {
            if (joined.SetOf(ends[run].From) == joined.SetOf(ends[run].To)) return false;
            joined.Join(ends[run].From, ends[run].To);
        }

        return batteries.Select(joined.SetOf).Distinct().Count() == batteries.Length;
    }

    private int[] DistanceFrom(int[] sources)
    {
        var found = new int[NodeCount];
        Array.Fill(found, int.MaxValue);
        var waiting = new Queue<int>(sources);
        foreach (int source in sources) found[source] = 0;
        while (waiting.TryDequeue(out int node))
        {
            foreach (int run in runsAt[node])
            {
                int next = OtherEnd(run, node);
                if (found[next] != int.MaxValue) continue;
                found[next] = found[node] + 1;
                waiting.Enqueue(next);
            }
        }

        return found;
    }
}
