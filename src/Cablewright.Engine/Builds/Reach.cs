namespace Cablewright.Engine.Builds;

/// <summary>Which places can be reached over the runs of one side.</summary>
internal sealed class Reach
{
    private readonly Dictionary<string, List<string>> neighbours = new(StringComparer.Ordinal);
    private readonly HashSet<string> reached = new(StringComparer.Ordinal);

    public Reach(Build build, Side[] sides, Side side)
    {
        for (int i = 0; i < build.Runs.Count; i++)
        {
            if (sides[i] != side) continue;
            Join(build.Runs[i].From, build.Runs[i].To);
            Join(build.Runs[i].To, build.Runs[i].From);
        }
    }

    /// <summary>Whether any run of this side ends at a place.</summary>
    public bool Touches(string place) => neighbours.ContainsKey(place);

    /// <summary>Whether a place was reached from a marked one.</summary>
    public bool Contains(string place) => reached.Contains(place);

    /// <summary>Marks a place and all that it is connected to.</summary>
    public void Mark(string start)
    {
        var waiting = new Stack<string>([start]);
        while (waiting.TryPop(out string? place))
        {
            if (!reached.Add(place) || !neighbours.TryGetValue(place, out List<string>? next)) continue;
            foreach (string neighbour in next) waiting.Push(neighbour);
        }
    }

    private void Join(string from, string to)
    {
        if (!neighbours.TryGetValue(from, out List<string>? list)) neighbours.Add(from, list = []);
        list.Add(to);
    }
}
