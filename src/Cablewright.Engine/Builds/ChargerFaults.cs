using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>
/// Finds chargers between batteries that are joined otherwise too, and chargers that feed each other in a ring.
/// </summary>
/// <remarks>
/// With the engine running relays are closed and diodes conduct, so only chargers part the supply side. What a charger takes
/// follows from what its output side needs: that can be worked out only where no charger is fed, over others, by its own output.
/// </remarks>
internal static class ChargerFaults
{
    public static void Find(Build build, Side[] sides, List<BuildFault> faults)
    {
        int[] chargers = [.. Enumerable.Range(0, build.Runs.Count).Where(run => IsCharger(build.Runs[run]))];
        if (chargers.Length == 0) return;
        var islands = new SupplyIslands(build, sides, run => !IsCharger(run));
        foreach (int run in chargers)
        {
            Run charger = build.Runs[run];
            if (islands.Of(charger.From) != islands.Of(charger.To)) continue;
            faults.Add(new BuildFault(BuildFaultKind.ChargerBypassed, new Target(Part.Isolator, run), charger.Id)
            {
                Others = BypassOf(build, sides, charger),
            });
        }

        if (faults.Count > 0) return;
        int[] ring = RingOf(build, islands, chargers);
        if (ring.Length == 0) return;
        faults.Add(new BuildFault(BuildFaultKind.IsolatorRing, new Target(Part.Isolator, ring[0]), build.Runs[ring[0]].Id)
        {
            Others = [.. ring.Select(run => build.Runs[run].Id)],
        });
    }

    private static bool IsCharger(Run run) => run.Isolator is { Kind: IsolatorKind.DcDcCharger };

    /// <summary>The supply runs of a shortest way from a charger's start to its end that passes no charger.</summary>
    private static List<string> BypassOf(Build build, Side[] sides, Run charger)
    {
        var cameBy = new Dictionary<string, Run?>(StringComparer.Ordinal) { [charger.From] = null };
        var waiting = new Queue<string>([charger.From]);
        ILookup<string, Run> runsAt = build.Runs.Where((run, index) => sides[index] is Side.Supply && !IsCharger(run))
            .SelectMany(run => new[] { (Place: run.From, Run: run), (Place: run.To, Run: run) })
            .ToLookup(end => end.Place, end => end.Run, StringComparer.Ordinal);
        while (waiting.TryDequeue(out string? place) && place != charger.To)
        {
            foreach (Run run in runsAt[place])
            {
                if (cameBy.TryAdd(Other(run, place), run)) waiting.Enqueue(Other(run, place));
            }
        }

        List<string> way = [];
        for (string at = charger.To; cameBy[at] is { } run; at = Other(run, at)) way.Insert(0, run.Id);
        return way;
    }

    private static string Other(Run run, string place) => run.From == place ? run.To : run.From;

    /// <summary>
    /// What is left when, again and again, chargers are taken away that no other charger feeds, or whose output feeds no other.
    /// </summary>
    private static int[] RingOf(Build build, SupplyIslands islands, int[] chargers)
    {
        while (true)
        {
            HashSet<int> fed = [.. chargers.Select(run => islands.Of(build.Runs[run].To))];
            HashSet<int> feeding = [.. chargers.Select(run => islands.Of(build.Runs[run].From))];
            int[] left = [.. chargers.Where(
                run => fed.Contains(islands.Of(build.Runs[run].From)) && feeding.Contains(islands.Of(build.Runs[run].To)))];
            if (left.Length == chargers.Length) return left;
            chargers = left;
        }
    }
}
