using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>Where the alternator or the converter stands.</summary>
internal static class ChargingPlace
{
    /// <summary>Its stated place, if any.</summary>
    public static string? Stated(Build build) => build.Vehicle.Converter?.At ?? build.Vehicle.Alternator?.At;

    /// <summary>
    /// The battery that is charged first, and the alternator's own place where it does not stand at that battery.
    /// </summary>
    /// <returns>Battery -1 where no run leads from the stated place to one.</returns>
    public static (int Battery, string? OwnPlace) Of(Build build, PlaceNames names)
    {
        if (Stated(build) is not { } at) return (0, null);
        return names[at].Kind is PlaceKind.Battery ? (names[at].Index, null) : (NearestBattery(build, names, at), at);
    }

    /// <summary>The battery with the fewest runs between, the first of the build among equals.</summary>
    private static int NearestBattery(Build build, PlaceNames names, string start)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal) { start };
        for (List<string> ring = [start]; ring.Count > 0; ring = Next(build, names, ring, seen))
        {
            int[] batteries =
                [.. ring.Where(place => names[place].Kind is PlaceKind.Battery).Select(place => names[place].Index)];
            if (batteries.Length > 0) return batteries.Min();
        }

        return -1;
    }

    /// <summary>The places one run further; body, engine and amplifiers lead nowhere.</summary>
    private static List<string> Next(Build build, PlaceNames names, List<string> ring, HashSet<string> seen)
    {
        var next = new List<string>();
        foreach (Run run in build.Runs.Where(run => run.Side is not Side.Return))
        {
            if (ring.Contains(run.From)) Add(run.To);
            if (ring.Contains(run.To)) Add(run.From);
        }

        return next;

        void Add(string place)
        {
            if (names[place].Kind.IsGround || names[place].Kind is PlaceKind.Amplifier) return;
            if (seen.Add(place)) next.Add(place);
        }
    }
}
