using Cablewright.Engine.Network;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Sizing;

/// <summary>Which branches the whole current of each amplifier passes, whatever their resistances are.</summary>
/// <remarks>
/// They are the bridges between the amplifier and the charging battery: branches without which it would be cut off (Tarjan's
/// low-link numbers, once for each side). On a tree that is the whole way there and back; of a loop nothing is certain. Where a
/// battery feeds a supply alone, currents of several sources may meet in a return, and nothing is taken for certain at all.
/// </remarks>
internal sealed class Bridges
{
    private readonly ElectricalNetwork network;
    private readonly List<(int Branch, int Node)>[] near;
    private readonly int[] entry;
    private readonly int[] low;
    private readonly (int Branch, int Node)[] parent;
    private int entered;

    public Bridges(CircuitModel circuit, int amplifiers)
    {
        network = circuit.Network;
        Of = [.. Enumerable.Range(0, amplifiers).Select(_ => Array.Empty<int>())];
        near = [.. Enumerable.Range(0, network.NodeCount).Select(_ => new List<(int, int)>())];
        entry = new int[network.NodeCount];
        low = new int[network.NodeCount];
        parent = new (int, int)[network.NodeCount];
        LoadsOn = [.. network.Branches.Select(_ => new List<int>())];
        if (Enumerable.Range(0, amplifiers).Any(circuit.FeedsAlone)) return;
        for (int branch = 0; branch < network.Branches.Count; branch++)
        {
            near[network.Branches[branch].From].Add((branch, network.Branches[branch].To));
            near[network.Branches[branch].To].Add((branch, network.Branches[branch].From));
        }

        foreach (int root in network.FixedPotentialNodes)
        {
            if (entry[root] == 0) Visit(root, (-1, -1));
        }

        for (int load = 0; load < amplifiers; load++)
        {
            Of[load] = [.. ToRoot(network.Loads[load].Positive), .. ToRoot(network.Loads[load].Negative)];
            foreach (int branch in Of[load]) LoadsOn[branch].Add(load);
        }
    }

    /// <summary>The branches of each amplifier's certain way, there and back.</summary>
    public int[][] Of { get; }

    /// <summary>The amplifiers whose whole current passes each branch.</summary>
    public IReadOnlyList<List<int>> LoadsOn { get; }

    private void Visit(int node, (int Branch, int Node) from)
    {
        parent[node] = from;
        entry[node] = low[node] = ++entered;
        foreach ((int branch, int next) in near[node])
        {
            if (branch == from.Branch) continue;
            if (entry[next] == 0) Visit(next, (branch, node));
            low[node] = Math.Min(low[node], parent[next] == (branch, node) ? low[next] : entry[next]);
        }
    }

    private IEnumerable<int> ToRoot(int node)
    {
        for (int at = node; entry[at] > 0 && parent[at].Branch >= 0; at = parent[at].Node)
        {
            if (low[at] == entry[at]) yield return parent[at].Branch;
        }
    }
}
