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
/// <para>The same once more outwards, for what lies outside a stem, gives the least weight of all choices with a certain
/// candidate, and the least loss of all choices below a weight.</para>
/// </remarks>
internal sealed class TreeKnapsack
{
    /// <summary>What a point of a frontier costs, in runs solved.</summary>
    private const double PointCost = 0.25;

    /// <summary>What passing over one costs.</summary>
    private const double PassCost = 0.015;

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

    /// <summary>The least weight of an amplifier's own runs where they may lose so much.</summary>
    public double LeastOwnWeight(int load, double volts) => own[load].Frontier.WeightWithin(volts);

    /// <summary>The candidate of each run in the lightest choice; <c>null</c> where there is none.</summary>
    public int[]? Solve()
    {
        if (double.IsInfinity(LeastWeight)) return null;
        var picked = new int[options.Length];
        Pick(tree.Root, limit, picked);
        return picked;
    }

    /// <summary>Looks at every choice below a weight.</summary>
    /// <param name="below">The weight.</param>
    /// <param name="volts">Takes the least that each amplifier loses in the runs of the tree.</param>
    /// <param name="isLeft">Takes, for each run and candidate, whether any choice has it.</param>
    public void Survey(double below, double[] volts, bool[][] isLeft) => Survey(tree.Root, nothing, below, volts, isLeft);

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

    private void Survey(Stem stem, Frontier outside, double below, double[] volts, bool[][] isLeft)
    {
        Frontier[] before = Before(stem);
        for (int i = 0; i < stem.Runs.Length; i++)
        {
            SurveyRun(stem.Runs[i], outside, before[i + 1], below, isLeft);
            Count(outside = outside.With(options[stem.Runs[i]], limit));
        }

        Frontier[] parts = [.. stem.Leaves.Select(load => leaves[load]), .. stem.Stems.Select(next => Before(next)[0])];
        var whole = new double[outside.Count];
        for (int i = 0; i < whole.Length; i++)
        {
            whole[i] = outside.Weights[i];
            foreach (Frontier part in parts) whole[i] += part.WeightWithin(limit - outside.Volts[i]);
        }

        for (int i = 0; i < parts.Length; i++)
        {
            Frontier around = Around(parts[i], outside, whole);
            if (i < stem.Leaves.Count) SurveyLeaf(stem.Leaves[i], around, below, volts, isLeft);
            else Survey(stem.Stems[i - stem.Leaves.Count], around, below, volts, isLeft);
        }
    }

    /// <summary>What lies outside a part, by what it loses before that.</summary>
    private Frontier Around(Frontier part, Frontier outside, double[] whole)
    {
        using var points = new PointBuffer(whole.Length);
        for (int i = 0; i < whole.Length; i++)
        {
            if (double.IsFinite(whole[i])) points.Add(outside.Volts[i], whole[i] - part.WeightWithin(limit - outside.Volts[i]));
        }

        return points.ToFrontier(nothing.Thinning);
    }

    private void SurveyRun(int run, Frontier outside, Frontier behind, double below, bool[][] isLeft)
    {
        for (int option = 0; option < options[run].Length; option++)
        {
            DropOption picked = options[run][option];
            int rest = behind.Count - 1;
            for (int i = 0; i < outside.Count && !isLeft[run][option]; i++)
            {
                double most = limit - outside.Volts[i] - picked.Volts;
                while (rest >= 0 && behind.Volts[rest] > most) rest--;
                if (rest < 0) break;
                isLeft[run][option] = outside.Weights[i] + picked.Weight + behind.Weights[rest] < below;
            }
        }

        task.Count(PassCost * options[run].Length * (outside.Count + behind.Count));
    }

    private void SurveyLeaf(int load, Frontier outside, double below, double[] volts, bool[][] isLeft)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < outside.Count; i++)
            least = Math.Min(least, outside.Volts[i] + own[load].Frontier.VoltsBelow(below - outside.Weights[i]));
        volts[load] = least;
        int[] runs = tree.Own[load];
        Frontier[] behind = Behind(load);
        for (int i = 0; i < runs.Length; i++)
        {
            SurveyRun(runs[i], outside, behind[i + 1], below, isLeft);
            if (i + 1 < runs.Length) Count(outside = outside.With(options[runs[i]], limit - behindLimit[load]));
        }
    }

    /// <summary>What lies behind each own run of an amplifier, without the rule that binds the first two.</summary>
    private Frontier[] Behind(int load)
    {
        int[] runs = tree.Own[load];
        var behind = new Frontier[runs.Length + 1];
        behind[^1] = nothing.Shifted(behindLimit[load]);
        for (int i = runs.Length - 1; i > 0; i--) Count(behind[i] = behind[i + 1].With(options[runs[i]], limit));
        return behind;
    }

    private void Count(Frontier made) => task.Count(PointCost * made.Considered);
}
