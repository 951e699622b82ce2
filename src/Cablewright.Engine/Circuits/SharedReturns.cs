using Cablewright.Engine.Builds;
using Cablewright.Engine.Completing;

namespace Cablewright.Engine.Circuits;

/// <summary>Which amplifiers have no way back but over a return run.</summary>
internal sealed class SharedReturns
{
    private readonly int[][] over;

    /// <summary>Takes each return run between junctions away in turn and looks who is cut off.</summary>
    /// <param name="build">The build.</param>
    /// <param name="ends">The nodes of each run's ends.</param>
    /// <param name="amplifiers">The negative terminal of each amplifier.</param>
    /// <param name="grounds">The body, its feet and the batteries' negative terminals.</param>
    public SharedReturns(
        CompleteBuild build, IReadOnlyList<(int From, int To)> ends, int[] amplifiers, IReadOnlyList<int> grounds)
    {
        int[] returns = [.. Enumerable.Range(0, build.Runs.Count).Where(run => build.Runs[run].Side is Side.Return)];
        int nodes = 1 + ends.SelectMany(end => new[] { end.From, end.To }).Concat(amplifiers).Concat(grounds).Max();
        over = [.. Enumerable.Range(0, build.Runs.Count).Select(run => IsBetweenJunctions(run) ? Cut(run) : [])];

        bool IsBetweenJunctions(int run) => returns.Contains(run) && JoinsJunction(build, build.Runs[run]);

        int[] Cut(int without)
        {
            var sets = new DisjointSets(nodes);
            foreach (int run in returns.Where(run => run != without)) sets.Join(ends[run].From, ends[run].To);
            HashSet<int> led = [.. grounds.Select(sets.SetOf)];
            return [.. Enumerable.Range(0, amplifiers.Length).Where(amplifier => !led.Contains(sets.SetOf(amplifiers[amplifier])))];
        }
    }

    /// <summary>The amplifiers whose return hangs on a run alone; empty for a run at an amplifier, which is its own return.</summary>
    public IReadOnlyList<int> AmplifiersOver(int run) => over[run];

    private static bool JoinsJunction(CompleteBuild build, CompleteRun run)
    {
        PlaceKind from = build.Names[run.From].Kind, to = build.Names[run.To].Kind;
        return from is not PlaceKind.Amplifier && to is not PlaceKind.Amplifier
            && (from is PlaceKind.Junction || to is PlaceKind.Junction);
    }
}
