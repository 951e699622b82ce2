using Cablewright.Engine.Builds;
using Cablewright.Engine.Completing;

namespace Cablewright.Engine.Circuits;

/// <summary>The parts of the supply side in the circuit, which chargers cut, and which of them the alternator reaches.</summary>
internal sealed class SupplyParts
{
    private readonly DisjointSets sets;
    private readonly int charged;
    private readonly HashSet<int> behindCharger;

    /// <summary>Joins what runs join.</summary>
    /// <param name="build">The build.</param>
    /// <param name="branches">The branch of each run, cut short where a charger stands.</param>
    /// <param name="ends">The nodes of each run's ends.</param>
    /// <param name="nodeCount">How many nodes there are.</param>
    /// <param name="charging">The positive terminal of the battery at the alternator.</param>
    public SupplyParts(
        CompleteBuild build, IReadOnlyList<Branch> branches, IReadOnlyList<(int From, int To)> ends, int nodeCount, int charging)
    {
        sets = new DisjointSets(nodeCount);
        int[] supply = [.. Enumerable.Range(0, build.Runs.Count).Where(run => build.Runs[run].Side is Side.Supply)];
        foreach (int run in supply) sets.Join(branches[run].From, branches[run].To);
        charged = sets.SetOf(charging);
        behindCharger =
            [.. supply.Where(run => build.Runs[run].Isolator is { Kind: IsolatorKind.DcDcCharger })
                .Select(run => sets.SetOf(ends[run].To))];
    }

    /// <summary>Whether the alternator's supply reaches a node.</summary>
    public bool IsCharged(int node) => sets.SetOf(node) == charged;

    /// <summary>Whether a charger between batteries feeds the part that a node is in.</summary>
    public bool IsBehindCharger(int node) => behindCharger.Contains(sets.SetOf(node));

    /// <summary>For each battery whether it is the first of a part that the alternator's supply does not reach.</summary>
    public bool[] FirstOfOthers(IReadOnlyList<SourcePort> batteries)
    {
        var led = new HashSet<int> { charged };
        return [.. batteries.Select(battery => led.Add(sets.SetOf(battery.Positive)))];
    }
}
