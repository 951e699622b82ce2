using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Wiring;

/// <summary>Which amplifiers have no other way than over a run: a supply run, or a return between junctions.</summary>
internal sealed class SharedRuns
{
    /// <summary>Joining two nodes, in runs solved.</summary>
    private const double CostOfJoin = 0.05;

    private readonly int[][] over;

    /// <summary>Takes each run of a side away in turn and looks who is cut off.</summary>
    /// <param name="build">The build.</param>
    /// <param name="ends">The nodes of each run's ends.</param>
    /// <param name="nodes">How many nodes there are.</param>
    /// <param name="side">The side.</param>
    /// <param name="amplifiers">Each amplifier's terminal on that side.</param>
    /// <param name="roots">Where the ways lead: the batteries' terminals, on the return side the body and its feet too.</param>
    public SharedRuns(
        CompleteBuild build, IReadOnlyList<(int From, int To)> ends, int nodes, Side side, int[] amplifiers,
        IReadOnlyList<int> roots)
    {
        int[] runs = [.. Enumerable.Range(0, build.Runs.Count).Where(run => build.Runs[run].Side == side)];
        over = new int[build.Runs.Count][];
        Array.Fill(over, []);
        foreach (int run in runs.Where(run => side is Side.Supply || JoinsJunctions(build, build.Runs[run])))
            over[run] = Cut(run);

        int[] Cut(int without)
        {
            build.Meter.Count(CostOfJoin * (nodes + runs.Length));
            var sets = new DisjointSets(nodes);
            foreach (int run in runs.Where(run => run != without)) sets.Join(ends[run].From, ends[run].To);
            HashSet<int> led = [.. roots.Select(sets.SetOf)];
            return [.. Enumerable.Range(0, amplifiers.Length)
                .Where(amplifier => !led.Contains(sets.SetOf(amplifiers[amplifier])))];
        }
    }

    /// <summary>
    /// The amplifiers that hang on a run alone; empty for a return at an amplifier, which is its own, and for the other side.
    /// </summary>
    public IReadOnlyList<int> AmplifiersOver(int run) => over[run];

    private static bool JoinsJunctions(CompleteBuild build, CompleteRun run)
    {
        PlaceKind from = build.Names[run.From].Kind, to = build.Names[run.To].Kind;
        return from is not PlaceKind.Amplifier && to is not PlaceKind.Amplifier
            && (from is PlaceKind.Junction || to is PlaceKind.Junction);
    }
}
