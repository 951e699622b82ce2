namespace Cablewright.Engine.Builds;

/// <summary>Finds out which runs are supply and which are return.</summary>
/// <remarks>
/// Runs that meet at a junction are one piece, and a piece is on one side. It is a return if a run of it is marked so or ends at
/// the body; else the places tell: a run from a battery or the alternator's own place or to an amplifier is supply, one from an
/// amplifier is a return. Where they tell nothing, or two things at once, the build has to say.
/// </remarks>
internal sealed class SideResolution
{
    private readonly Build build;
    private readonly PlaceNames names;
    private readonly DisjointSets pieces;

    private SideResolution(Build build, PlaceNames names)
    {
        this.build = build;
        this.names = names;
        pieces = new DisjointSets(build.Runs.Count);
    }

    /// <summary>The side of each run.</summary>
    /// <param name="build">The build.</param>
    /// <param name="names">What its names stand for.</param>
    /// <param name="faults">Takes the faults that are found; a run with one counts as supply.</param>
    public static Side[] Resolve(Build build, PlaceNames names, List<BuildFault> faults)
    {
        var resolution = new SideResolution(build, names);
        resolution.JoinPieces();
        var sides = new Side[build.Runs.Count];
        foreach (IGrouping<int, int> piece in Enumerable.Range(0, build.Runs.Count).GroupBy(run => resolution.pieces.SetOf(run)))
        {
            Side side = resolution.SideOf([.. piece], faults);
            foreach (int run in piece) sides[run] = side;
        }

        return sides;
    }

    private void JoinPieces()
    {
        var firstAt = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int run = 0; run < build.Runs.Count; run++)
        {
            JoinAt(build.Runs[run].From, run, firstAt);
            JoinAt(build.Runs[run].To, run, firstAt);
        }
    }

    private void JoinAt(string place, int run, Dictionary<string, int> firstAt)
    {
        if (names.IsJunction(place) && !firstAt.TryAdd(place, run)) pieces.Join(firstAt[place], run);
    }

    private Side SideOf(int[] piece, List<BuildFault> faults)
    {
        int supplyMark = Array.FindIndex(piece, run => build.Runs[run].Side is Side.Supply);
        int body = Array.FindIndex(
            piece, run => PlaceNames.Body == build.Runs[run].From || PlaceNames.Body == build.Runs[run].To);
        bool returns = body >= 0 || Array.Exists(piece, run => build.Runs[run].Side is Side.Return);
        if (supplyMark >= 0 && returns) return Contradiction(piece[supplyMark], faults);
        if (returns) return Side.Return;
        if (supplyMark >= 0) return Side.Supply;

        bool tellsSupply = Array.Exists(
            piece,
            run => names[build.Runs[run].From].Kind is PlaceKind.Battery or PlaceKind.Charger
                || IsAt(build.Runs[run].To, PlaceKind.Amplifier));
        bool tellsReturn = Array.Exists(piece, run => IsAt(build.Runs[run].From, PlaceKind.Amplifier));
        if (tellsSupply == tellsReturn) return Unclear(piece[0], faults);
        return tellsReturn ? Side.Return : Side.Supply;
    }

    private bool IsAt(string place, PlaceKind kind) => names[place].Kind == kind;

    private Side Contradiction(int run, List<BuildFault> faults)
    {
        faults.Add(new BuildFault(
            $"/runs/{run}/side",
            "run.side-contradicts",
            $"Run \"{build.Runs[run].Id}\" is marked supply, but it meets a run that ends at the body or is marked return.",
            "one side for all runs that meet at a junction"));
        return Side.Supply;
    }

    private Side Unclear(int run, List<BuildFault> faults)
    {
        faults.Add(new BuildFault(
            $"/runs/{run}",
            "run.side-unclear",
            $"It does not follow from its places whether run \"{build.Runs[run].Id}\" is supply or return.",
            "\"side\": \"supply\" or \"side\": \"return\""));
        return Side.Supply;
    }
}
