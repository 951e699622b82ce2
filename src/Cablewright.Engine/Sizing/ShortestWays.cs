using Cablewright.Engine.Network;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Sizing;

/// <summary>
/// One way for each amplifier's current from its source and back, the one of fewest branches; on a tree the only one.
/// </summary>
internal static class ShortestWays
{
    public static int[][] Of(CircuitModel circuit, int amplifiers)
    {
        ElectricalNetwork network = circuit.Network;
        int closed = network.Branches.Count - circuit.ChargerRuns.Count;
        var cameBy = new (int Branch, int Node)[network.NodeCount];
        Array.Fill(cameBy, (-1, -1));
        int[] sources =
            [.. network.FixedPotentialNodes, .. Enumerable.Range(
                0, circuit.Batteries.Count).Where(circuit.IsParted).Select(battery => circuit.Batteries[battery].Positive)];
        var reached = new HashSet<int>(sources);
        var waiting = new Queue<int>(sources);
        while (waiting.TryDequeue(out int node))
        {
            for (int branch = 0; branch < closed; branch++)
            {
                (int from, int to, _) = network.Branches[branch];
                if (from != node && to != node) continue;
                int next = from == node ? to : from;
                if (!reached.Add(next)) continue;
                cameBy[next] = (branch, node);
                waiting.Enqueue(next);
            }
        }

        return [.. network.Loads.Take(amplifiers).Select(load => (int[])[.. Back(load.Positive), .. Back(load.Negative)])];

        IEnumerable<int> Back(int node)
        {
            for (; cameBy[node].Branch >= 0; node = cameBy[node].Node) yield return cameBy[node].Branch;
        }
    }
}
