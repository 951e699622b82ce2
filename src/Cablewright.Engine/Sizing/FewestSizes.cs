using Cablewright.Engine.Conductors;

namespace Cablewright.Engine.Sizing;

/// <summary>The choice with the fewest different conductors, by size and metal; among those with as few, the lightest.</summary>
/// <remarks>
/// Method: what is given is there already. Every set of one further conductor is tried, then of two, and so on, until some set
/// allows a choice; of the sets of that number the lightest choice counts. Each set is a search of its own for less than the best
/// known, most of which end at their first bound.
/// </remarks>
internal static class FewestSizes
{
    /// <summary>Finds it.</summary>
    /// <param name="task">The task.</param>
    /// <param name="any">A finished search for the lightest choice of any conductors, with one that it found.</param>
    /// <returns>The choice, and what every choice of as few weighs at least; 0 where fewer might do.</returns>
    public static (Trial Best, double Bound) Find(SizingTask task, GoalSearch any)
    {
        HashSet<Conductor> given = [.. task.Build.Runs.Select(run => run.Given).OfType<Conductor>()];
        Conductor[] further = [.. task.Open.SelectMany(run => any.Candidates[run]).Select(choice => choice.Conductor).Distinct()
            .Where(conductor => !given.Contains(conductor))
            .OrderBy(conductor => conductor.Size.MetalAreaMm2).ThenBy(conductor => conductor.Material)];
        int most = any.Best!.Evaluation.Design.Conductors.Select(choice => choice.Conductor).Distinct()
            .Count(conductor => !given.Contains(conductor));
        bool mayBeFewer = false;
        for (int count = 0; count <= most; count++)
        {
            Trial? best = count == most ? any.Best : null;
            double bound = double.PositiveInfinity;
            foreach (Conductor[] set in Sets(further, count, 0))
            {
                if (task.IsOutOfWork) return (best ?? any.Best, 0);
                if (Among(any.Candidates, task, [.. given, .. set]) is not { } among) continue;
                var search = new GoalSearch(any, among, best?.Below ?? double.PositiveInfinity);
                double least = search.Bound();
                bound = Math.Min(bound, least);
                if (!double.IsPositiveInfinity(least) && !(least >= best?.Below)) best = search.Run().Best ?? best;
            }

            if (best is not null) return (best, mayBeFewer ? 0 : Math.Min(bound, best.Weight));
            mayBeFewer |= double.IsFinite(bound);
        }

        return (any.Best, 0);
    }

    private static IReadOnlyList<ConductorChoice>[]? Among(
        IReadOnlyList<ConductorChoice>[] candidates, SizingTask task, HashSet<Conductor> allowed)
    {
        var among = new IReadOnlyList<ConductorChoice>[candidates.Length];
        for (int run = 0; run < candidates.Length; run++)
        {
            among[run] = task.Build.Runs[run].Given is not null
                ? candidates[run]
                : [.. candidates[run].Where(choice => allowed.Contains(choice.Conductor))];
            if (among[run].Count == 0) return null;
        }

        return among;
    }

    private static IEnumerable<Conductor[]> Sets(Conductor[] pool, int count, int from)
    {
        if (count == 0)
        {
            yield return [];
            yield break;
        }

        for (int i = from; i + count <= pool.Length; i++)
        {
            foreach (Conductor[] rest in Sets(pool, count - 1, i + 1)) yield return [pool[i], .. rest];
        }
    }
}
