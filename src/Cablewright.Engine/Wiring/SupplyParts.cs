using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Wiring;

/// <summary>The parts of the supply side that hang together, and which of them the alternator reaches.</summary>
internal sealed class SupplyParts
{
    private readonly DisjointSets sets;
    private readonly int charged;

    /// <summary>Joins what supply runs join.</summary>
    /// <param name="runs">The runs.</param>
    /// <param name="branches">The branch of each run, cut short where a charger stands.</param>
    /// <param name="nodeCount">How many nodes there are.</param>
    /// <param name="charging">The positive terminal of the battery at the alternator.</param>
    /// <param name="isEngineOff">Whether relays and diodes part too.</param>
    public SupplyParts(
        IReadOnlyList<CompleteRun> runs, IReadOnlyList<Branch> branches, int nodeCount, int charging, bool isEngineOff)
    {
        sets = new DisjointSets(nodeCount);
        for (int run = 0; run < runs.Count; run++)
        {
            if (runs[run].Side is Side.Supply && !(isEngineOff && runs[run].Isolator is not null))
                sets.Join(branches[run].From, branches[run].To);
        }

        charged = sets.SetOf(charging);
    }

    /// <summary>The number of the part that a node is in.</summary>
    public int Of(int node) => sets.SetOf(node);

    /// <summary>Whether the alternator's supply reaches a node.</summary>
    public bool IsCharged(int node) => Of(node) == charged;

    /// <summary>For each battery whether it is the first of a part that the alternator's supply does not reach.</summary>
    public bool[] FirstOfOthers(IReadOnlyList<SourcePort> batteries)
    {
        var led = new HashSet<int> { charged };
        return [.. batteries.Select(battery => led.Add(Of(battery.Positive)))];
    }
}
