namespace Cablewright.Engine.Sizing;

/// <summary>
/// The choice with currents and resistances taken as numbers: a candidate for each run of a tree, so that what is lost on the way
/// to each amplifier and back stays below its limit and the weight is least.
/// </summary>
/// <remarks>
/// <para>Method: dynamic programming from the leaves. What lies behind a stem weighs at least so much for what may be lost before
/// it: a <see cref="Frontier"/> of the volts needed, counted from the largest limit. Parts side by side may lose the same, and
/// their weights add; a run in series shifts the frontier by what each candidate loses and weighs, and what is beaten in both
/// goes. No step leaves out what could be part of the lightest choice, so the frontier at the root holds the optimum. A part has
/// at most as many points as all its leaves together times the candidates of each run in series; beyond a number they are taken
/// together, at the least of both figures, and the optimum is then a bound.</para>
/// </remarks>
internal sealed class TreeKnapsack
{
    /// <summary>What a point of a frontier costs, in runs solved.</summary>
    private const double PointCost = 0.25;

    private readonly SizingTask task;
    private readonly RunTree tree;
    private readonly DropOption[][] options;
    private readonly OwnRuns[] own;
    private readonly Frontier nothing;
    private readonly Frontier[] leaves;
    private readonly Dictionary<Stem, Frontier[]> known = [];
    private readonly double limit;
    private readonly double[] behindLimit;

    /// <summary>Prepares the problem.</summary>
    /// <param name="task">Counts the work.</param>
    /// <param name="tree">The runs.</param>
    /// <param name="options">The candidates of every run of the build.</param>
    /// <param name="limits">What each amplifier may lose in the runs of the tree.</param>
    /// <param name="mayPair">Whether two candidates of the first two own runs of an amplifier keep the rule that binds
    /// them.</param>
    /// <param name="isBound">Whether the least weight may never be too large; a choice is else sought that is never too
    /// light.</param>
    public TreeKnapsack(
        SizingTask task, RunTree tree, DropOption[][] options, double[] limits, Func<int, int, int, bool> mayPair, bool isBound)
    {
        var thinning = Thinning.For(options.Sum(of => of.Length), isBound);
        nothing = Frontier.Nothing(thinning);
        this.task = task;
        this.tree = tree;
        this.options = options;
        limit = limits.Max();
        behindLimit = [.. limits.Select(volts => limit - volts)];
        own = [.. tree.Own.Select(
            (runs, load) => new OwnRuns(runs, options, (one, other) => mayPair(load, one, other), limits[load], thinning))];
        leaves = [.. own.Select((runs, load) => runs.Frontier.Shifted(behindLimit[load]))];
        foreach (OwnRuns runs in own) task.Count(PointCost * runs.Considered);
    }

    /// <summary>The least weight; infinite where there is no choice.</summary>
    public double LeastWeight => Before(tree.Root)[0].WeightWithin(limit);

    /// <summary>The candidate of each run in the lightest choice; <c>null</c> where there is none.</summary>
    public int[]? Solve()
    {
        if (double.IsInfinity(LeastWeight)) return null;
        var picked = new int[options.Length];
        Pick(tree.Root, limit, picked);
        return picked;
    }

    /// <summary>What has to be kept of the volts before a stem, before each of its runs and, last, behind them.</summary>
    private Frontier[] Before(Stem stem)
    {
        if (known.TryGetValue(stem, out Frontier[]? before)) return before;
        before = new Frontier[stem.Runs.Length + 1];
        Frontier behind = nothing;
        foreach (int load in stem.Leaves) behind = behind.Beside(leaves[load]);
        foreach (Stem next in stem.Stems) behind = behind.Beside(Before(next)[0]);
        Count(before[^1] = behind);
        for (int i = stem.Runs.Length - 1; i >= 0; i--) Count(before[i] = before[i + 1].With(options[stem.Runs[i]], limit));
        known.Add(stem, before);
        return before;
    }

    private void Pick(Stem stem, double volts, int[] picked)
    {
        Frontier[] before = Before(stem);
        for (int i = 0; i < stem.Runs.Length; i++)
        {
            int run = stem.Runs[i];
            picked[run] = before[i + 1].LightestBehind(options[run], volts);
            volts -= options[run][picked[run]].Volts;
        }

        foreach (int load in stem.Leaves) own[load].Pick(volts - behindLimit[load], picked);
        foreach (Stem next in stem.Stems) Pick(next, volts, picked);
    }

    private void Count(Frontier made) => task.Count(PointCost * made.Considered);
}
