using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Sizing;

/// <summary>
/// What leads to a block is no smaller than what leaves it, there and back: by price alone a short branch would often be the
/// place for thick cable, and nobody builds that (common practice, no source).
/// </summary>
internal sealed class TaperRule
{
    private readonly SizingTask task;
    private readonly int[] feedOf;

    /// <summary>The runs that others feed or are fed by, those farthest from the source first.</summary>
    private readonly int[] inwards;

    /// <summary>Finds which open run feeds which.</summary>
    public TaperRule(SizingTask task, IReadOnlyList<ConductorChoice>[] candidates)
    {
        this.task = task;
        Candidates = candidates;
        feedOf = new int[task.Build.Runs.Count];
        Array.Fill(feedOf, -1);
        foreach (int[] way in task.Paths.Of)
        {
            for (int i = 0; i + 1 < way.Length; i++)
            {
                if (IsOpen(way[i]) && IsOpen(way[i + 1]) && MeetAtJoint(way[i], way[i + 1])) feedOf[way[i]] = way[i + 1];
            }
        }

        inwards = [.. task.Open.OrderByDescending(Depth)];
    }

    /// <summary>What each run is chosen from.</summary>
    public IReadOnlyList<ConductorChoice>[] Candidates { get; }

    /// <summary>The open runs that feed another, those nearest to the source first.</summary>
    public IEnumerable<int> Feeds => inwards.Reverse().Where(feedOf.Contains);

    /// <summary>Whether nothing is larger than what feeds it, as far as there are candidates.</summary>
    public bool IsKeptBy(ConductorChoice[] conductors) => ReferenceEquals(Raised(conductors), conductors);

    /// <summary>The same choice with each feed as large as the largest that it feeds.</summary>
    public ConductorChoice[] Raised(ConductorChoice[] conductors)
    {
        ConductorChoice[] raised = conductors;
        foreach (int run in inwards)
        {
            if (feedOf[run] is not (>= 0 and var feed) || MayFeed(feed, raised[feed], raised[run])) continue;
            if (ReferenceEquals(raised, conductors)) raised = [.. conductors];
            raised[feed] = Enough(Candidates[feed], Metal(raised[run]));
        }

        return raised;
    }

    /// <summary>Another conductor in a run, and nothing larger behind it.</summary>
    public ConductorChoice[] With(IReadOnlyList<ConductorChoice> conductors, int run, ConductorChoice choice)
    {
        ConductorChoice[] capped = [.. conductors];
        capped[run] = choice;
        foreach (int behind in inwards)
        {
            if (IsBehind(behind, run) && Significant.Exceeds(Metal(capped[behind]), Metal(choice)))
                capped[behind] = Candidates[behind].LastOrDefault(other => MayFeed(run, choice, other), capped[behind]);
        }

        return capped;
    }

    /// <summary>The candidates that are left where a run is decided; all of a run where none would be.</summary>
    public IReadOnlyList<ConductorChoice>[] Trimmed(int decided, ConductorChoice choice)
    {
        IReadOnlyList<ConductorChoice>[] left = [.. Candidates];
        left[decided] = [choice];
        foreach (int run in inwards)
        {
            if (IsBehind(run, decided)) left[run] = Kept(run, other => MayFeed(decided, choice, other));
            else if (IsBehind(decided, run)) left[run] = Kept(run, other => MayFeed(run, other, choice));
        }

        return left;
    }

    private IReadOnlyList<ConductorChoice> Kept(int run, Func<ConductorChoice, bool> may) =>
        Candidates[run].Where(may).ToArray() is { Length: > 0 } kept ? kept : Candidates[run];

    private bool IsOpen(int branch) =>
        branch < task.Build.Runs.Count && task.Build.Runs[branch] is { Given: null, Isolator: null };

    private bool MeetAtJoint(int run, int feed)
    {
        (int from, int to, _) = task.Model.Circuit.Network.Branches[run];
        (int other, int another, _) = task.Model.Circuit.Network.Branches[feed];
        int node = from == other || from == another ? from : to;
        return (node == other || node == another)
            && !task.Model.Circuit.Batteries.Any(battery => battery.Positive == node || battery.Negative == node);
    }

    private int Depth(int run) => feedOf[run] < 0 ? 0 : 1 + Depth(feedOf[run]);

    private bool IsBehind(int run, int feed)
    {
        for (int at = feedOf[run]; at >= 0; at = feedOf[at])
        {
            if (at == feed) return true;
        }

        return false;
    }

    private bool MayFeed(int feed, ConductorChoice choice, ConductorChoice behind) =>
        !Significant.Exceeds(Metal(behind), Metal(choice)) || Enough(Candidates[feed], Metal(behind)) == choice;

    /// <summary>The first that is as large, else the largest.</summary>
    private static ConductorChoice Enough(IReadOnlyList<ConductorChoice> candidates, double metal)
    {
        ConductorChoice most = candidates[0];
        foreach (ConductorChoice choice in candidates)
        {
            if (!Significant.Exceeds(metal, Metal(most))) break;
            if (Significant.Exceeds(Metal(choice), Metal(most))) most = choice;
        }

        return most;
    }

    private static double Metal(ConductorChoice choice) => choice.Conductor.CopperEquivalentMm2 * choice.Count;
}
