using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>Finds out which runs are supply and which are return.</summary>
/// <remarks>
/// Runs that meet at a junction are one piece, and a piece is on one side. It is a return if a run of it is marked so or ends at
/// the body or the engine; else the places tell: a run from a battery or the alternator's own place or to an amplifier is supply,
/// one from an amplifier is a return. Where they tell nothing, or two things at once, the build has to say.
/// </remarks>
internal sealed class SideResolution
{
    private readonly Build build;
    private readonly PlaceNames names;
    private readonly DisjointSets pieces;
    private readonly Signs[] signs;

    private SideResolution(Build build, PlaceNames names)
    {
        this.build = build;
        this.names = names;
        pieces = new DisjointSets(build.Runs.Count);
        signs = new Signs[build.Runs.Count];
    }

    /// <summary>The side of each run.</summary>
    /// <param name="build">The build.</param>
    /// <param name="names">What its names stand for.</param>
    /// <param name="faults">Takes the faults that are found; a run with one counts as supply.</param>
    public static Side[] Resolve(Build build, PlaceNames names, List<BuildFault> faults)
    {
        var resolution = new SideResolution(build, names);
        resolution.JoinPieces();
        resolution.ReadSigns();
        var sides = new Side[build.Runs.Count];
        for (int run = 0; run < sides.Length; run++)
        {
            int first = resolution.pieces.SetOf(run);
            sides[run] = first < run ? sides[first] : resolution.SideOf(first, faults);
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

    private void ReadSigns()
    {
        for (int run = 0; run < build.Runs.Count; run++) signs[pieces.SetOf(run)] |= SignsOf(build.Runs[run]);
    }

    private Signs SignsOf(Run run)
    {
        PlaceKind from = names[run.From].Kind, to = names[run.To].Kind;
        Signs marked = run.Side is Side.Supply ? Signs.MarkedSupply : Signs.None;
        if (run.Side is Side.Return || from.IsGround || to.IsGround) marked |= Signs.Returns;
        if (from is PlaceKind.Battery or PlaceKind.Charger || to is PlaceKind.Amplifier) marked |= Signs.TellsSupply;
        if (from is PlaceKind.Amplifier) marked |= Signs.TellsReturn;
        return marked;
    }

    /// <summary>The side of a piece, by its first run.</summary>
    private Side SideOf(int first, List<BuildFault> faults)
    {
        Signs all = signs[first];
        bool isMarked = all.HasFlag(Signs.MarkedSupply), returns = all.HasFlag(Signs.Returns);
        if (isMarked && returns) return Contradiction(first, faults);
        if (isMarked || returns) return returns ? Side.Return : Side.Supply;
        bool tellsReturn = all.HasFlag(Signs.TellsReturn);
        if (all.HasFlag(Signs.TellsSupply) == tellsReturn) return Unclear(first, faults);
        return tellsReturn ? Side.Return : Side.Supply;
    }

    private Side Contradiction(int first, List<BuildFault> faults)
    {
        int run = first;
        while (build.Runs[run].Side is not Side.Supply || pieces.SetOf(run) != first) run++;
        faults.Add(new BuildFault(
            BuildFaultKind.RunSideContradicts, new Target(Part.Run, run, Member.Side), build.Runs[run].Id));
        return Side.Supply;
    }

    private Side Unclear(int run, List<BuildFault> faults)
    {
        faults.Add(new BuildFault(BuildFaultKind.RunSideUnclear, new Target(Part.Run, run), build.Runs[run].Id));
        return Side.Supply;
    }

    /// <summary>What the runs of a piece say of its side.</summary>
    [Flags]
    private enum Signs
    {
        None = 0,

        /// <summary>A run is marked supply.</summary>
        MarkedSupply = 1,

        /// <summary>A run is marked return or ends at the body or the engine.</summary>
        Returns = 2,

        /// <summary>A run starts at a battery or the alternator, or ends at an amplifier.</summary>
        TellsSupply = 4,

        /// <summary>A run starts at an amplifier.</summary>
        TellsReturn = 8,
    }
}
