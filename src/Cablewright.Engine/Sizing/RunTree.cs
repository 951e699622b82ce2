namespace Cablewright.Engine.Sizing;

/// <summary>The open runs ordered by the amplifiers whose currents they carry.</summary>
/// <remarks>
/// Runs that carry the same amplifiers' currents are one <see cref="Stem"/>, wherever they lie: a supply run and a return alike,
/// so that a supply tree and a return tree that mirror each other are one tree. Where two runs carry currents of some amplifiers
/// in common and each of another besides, they fit into no tree; the later one is left out.
/// </remarks>
internal sealed class RunTree
{
    /// <summary>Orders the runs.</summary>
    /// <param name="ways">The branches on the way of each amplifier, there and back.</param>
    /// <param name="open">The runs whose conductor is to be chosen.</param>
    public RunTree(IReadOnlyList<int[]> ways, int[] open)
    {
        Stem[] stems = [.. open.Select(
            run => (Run: run, Loads: Enumerable.Range(0, ways.Count).Where(load => ways[load].Contains(run)).ToArray()))
            .Where(on => on.Loads.Length > 1)
            .GroupBy(on => string.Join(' ', on.Loads))
            .Select(same => new Stem([.. same.Select(on => on.Run)], same.First().Loads))
            .OrderByDescending(stem => stem.Loads.Length).ThenBy(stem => stem.Runs[0])];
        Root = new Stem([], [.. Enumerable.Range(0, ways.Count)]);
        var inTree = new List<int>();
        foreach (Stem stem in stems)
        {
            if (Insert(stem)) inTree.AddRange(stem.Runs);
        }

        foreach (int load in Root.Loads) Root.Deepest(load).Leaves.Add(load);
        Own = [.. ways.Select(
            (way, load) => open.Where(run => way.Contains(run) && ways.Count(other => other.Contains(run)) == 1).ToArray())];
        Shared = [.. inTree];
        Aside = [.. open.Except(inTree).Except(Own.SelectMany(runs => runs))];
    }

    /// <summary>All amplifiers, and no runs.</summary>
    public Stem Root { get; }

    /// <summary>The open runs that carry each amplifier's current and no other.</summary>
    public int[][] Own { get; }

    /// <summary>The open runs in the tree that carry the currents of several amplifiers, the most first.</summary>
    public int[] Shared { get; }

    /// <summary>The open runs that are in no tree.</summary>
    public int[] Aside { get; }

    private bool Insert(Stem stem)
    {
        Stem at = Root;
        while (true)
        {
            Stem[] touching = [.. at.Stems.Where(other => other.Loads.Intersect(stem.Loads).Any())];
            if (touching.Length == 0) break;
            if (touching.Length > 1 || stem.Loads.Except(touching[0].Loads).Any()) return false;
            at = touching[0];
        }

        at.Stems.Add(stem);
        return true;
    }
}

/// <summary>Runs that carry the same amplifiers' currents, and what lies behind them.</summary>
/// <param name="runs">The runs.</param>
/// <param name="loads">Those amplifiers.</param>
internal sealed class Stem(int[] runs, int[] loads)
{
    /// <summary>The runs.</summary>
    public int[] Runs { get; } = runs;

    /// <summary>Those amplifiers.</summary>
    public int[] Loads { get; } = loads;

    /// <summary>The stems behind it.</summary>
    public List<Stem> Stems { get; } = [];

    /// <summary>The amplifiers behind it and behind no other.</summary>
    public List<int> Leaves { get; } = [];

    /// <summary>The stem that an amplifier hangs on.</summary>
    public Stem Deepest(int load) => Stems.Find(stem => stem.Loads.Contains(load))?.Deepest(load) ?? this;
}
