using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>Which places can be reached over the runs of one side.</summary>
internal sealed class Reach
{
    private readonly Dictionary<string, int> joined = new(StringComparer.Ordinal);
    private readonly DisjointSets sets;
    private readonly HashSet<int> reached = [];
    private readonly HashSet<string> reachedAlone = new(StringComparer.Ordinal);

    public Reach(Build build, Side[] sides, Side side)
    {
        sets = new DisjointSets(2 * build.Runs.Count);
        for (int i = 0; i < build.Runs.Count; i++)
        {
            if (sides[i] == side) sets.Join(Number(build.Runs[i].From), Number(build.Runs[i].To));
        }
    }

    /// <summary>Whether any run of this side ends at a place.</summary>
    public bool Touches(string place) => joined.ContainsKey(place);

    /// <summary>Whether a place was reached from a marked one.</summary>
    public bool Contains(string place) =>
        joined.TryGetValue(place, out int number) ? reached.Contains(sets.SetOf(number)) : reachedAlone.Contains(place);

    /// <summary>Marks a place and all that it is connected to.</summary>
    public void Mark(string start)
    {
        if (joined.TryGetValue(start, out int number)) reached.Add(sets.SetOf(number));
        else reachedAlone.Add(start);
    }

    private int Number(string place)
    {
        if (!joined.TryGetValue(place, out int number)) joined.Add(place, number = joined.Count);
        return number;
    }
}
