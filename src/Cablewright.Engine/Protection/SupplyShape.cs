using Cablewright.Engine.Builds;
using Cablewright.Engine.Circuits;
using Cablewright.Engine.Completing;

namespace Cablewright.Engine.Protection;

/// <summary>The supply side as protection sees it: which runs there are, from the batteries outwards, and which ends they are fed at.</summary>
internal sealed class SupplyShape
{
    private readonly (int From, int To)[] ends;
    private readonly int[] distance;
    private readonly HashSet<int> batteryNodes;
    private readonly Dictionary<int, bool> fedFromBothEnds = [];

    public SupplyShape(CompleteBuild build, Wiring wiring)
    {
        NodeCount = wiring.Network.NodeCount;
        ends = [.. Enumerable.Range(0, build.Runs.Count).Select(wiring.EndsOf)];
        int[] batteries = [.. Enumerable.Range(0, build.Batteries.Count).Select(wiring.PositiveOf)];
        batteryNodes = [.. batteries];
        ChargingNode = batteries[build.ChargingBattery];
        int[] supply = [.. Enumerable.Range(0, ends.Length).Where(run => build.Runs[run].Side is Side.Supply)];
        distance = DistanceFrom(batteries, supply);
        Outwards = [.. supply.OrderBy(run => Math.Min(distance[ends[run].From], distance[ends[run].To])).ThenBy(run => run)];
    }

    public int NodeCount { get; }

    /// <summary>The positive terminal of the battery at the alternator.</summary>
    public int ChargingNode { get; }

    /// <summary>The supply runs, the nearest to a battery first.</summary>
    public IReadOnlyList<int> Outwards { get; }

    public IReadOnlyCollection<int> BatteryNodes => batteryNodes;

    public (int From, int To) EndsOf(int run) => ends[run];

    /// <summary>The node at one end of a run.</summary>
    public int NodeAt(int run, bool far) => far ? ends[run].To : ends[run].From;

    /// <summary>Whether an end of a run stands at a battery.</summary>
    public bool IsAtBattery(int run, bool far) => batteryNodes.Contains(NodeAt(run, far));

    /// <summary>Whether a run is fed at its end rather than at its start.</summary>
    public bool IsFedAtFarEnd(int run) => distance[ends[run].To] < distance[ends[run].From];

    /// <summary>Whether two runs join the same two nodes.</summary>
    public bool AreParallel(int one, int other) => ends[one] == ends[other] || ends[one] == (ends[other].To, ends[other].From);

    /// <summary>Whether a battery stands behind each end of a run, so that current can come from either.</summary>
    public bool IsFedFromBothEnds(int run)
    {
        if (!fedFromBothEnds.TryGetValue(run, out bool both))
        {
            var without = new DisjointSets(NodeCount);
            foreach (int other in Outwards.Where(other => other != run)) without.Join(ends[other].From, ends[other].To);
            HashSet<int> fed = [.. batteryNodes.Select(without.SetOf)];
            both = fed.Contains(without.SetOf(ends[run].From)) && fed.Contains(without.SetOf(ends[run].To));
            fedFromBothEnds.Add(run, both);
        }

        return both;
    }

    private int[] DistanceFrom(int[] sources, int[] supply)
    {
        var neighbours = new List<int>[NodeCount];
        for (int i = 0; i < NodeCount; i++) neighbours[i] = [];
        foreach (int run in supply)
        {
            neighbours[ends[run].From].Add(ends[run].To);
            neighbours[ends[run].To].Add(ends[run].From);
        }

        var found = new int[NodeCount];
        Array.Fill(found, int.MaxValue);
        var waiting = new Queue<int>(sources);
        foreach (int source in sources) found[source] = 0;
        while (waiting.TryDequeue(out int node))
        {
            foreach (int next in neighbours[node])
            {
                if (found[next] != int.MaxValue) continue;
                found[next] = found[node] + 1;
                waiting.Enqueue(next);
            }
        }

        return found;
    }
}
