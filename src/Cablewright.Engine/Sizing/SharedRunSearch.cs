using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Sizing;

/// <summary>Tries each candidate of each run that feeds several others, the rest chosen anew for it.</summary>
internal sealed class SharedRunSearch(
    SizingTask task, Goal goal, ChoiceRules rules, TaperRule taper, ReturnRule[] returns)
{
    private const int MostPasses = 4;

    /// <summary>So many pairs are tried of runs that lie beside each other.</summary>
    private const int MostPairs = 256;

    private readonly int[] beside = [.. task.Open.Where(run => IsOnLoop(task.Model.Circuit.Network, run))];
    private int pairsLeft = MostPairs;

    /// <summary>Goes over all of them until none helps.</summary>
    /// <param name="trials">The choices so far, one of which stands.</param>
    public void Run(Trials trials)
    {
        int[] shared = [.. taper.Feeds.Union(task.HeuristicTree.Shared).Union(beside)];
        Trial? before = null;
        for (int pass = 0; pass < MostPasses && before != trials.Best; pass++)
        {
            before = trials.Best;
            foreach (int run in shared)
            {
                foreach (ConductorChoice choice in taper.Candidates[run])
                {
                    if (task.IsOutOfWork) return;
                    Find(taper.Trimmed(run, choice), trials, trials.Best!.Evaluation);
                }
            }
        }

        Pairs(trials);
    }

    /// <summary>Two runs beside each other: one is often thin where the other is thick.</summary>
    private void Pairs(Trials trials)
    {
        IEnumerable<(int Run, ConductorChoice Choice)> each = beside
            .SelectMany(run => taper.Candidates[run].Select(choice => (run, choice)));
        foreach ((int one, ConductorChoice first) in each)
        {
            foreach ((int other, ConductorChoice second) in each.Where(another => another.Run > one))
            {
                if (--pairsLeft < 0 || task.IsOutOfWork) return;
                ConductorChoice[] with = [.. trials.Best!.Evaluation.Design.Conductors];
                (with[one], with[other]) = (first, second);
                IReadOnlyList<ConductorChoice>[] among = taper.Trimmed(one, first);
                among[other] = [second];
                if (trials.Try(with).Evaluation is { } present) Find(among, trials, present);
            }
        }
    }

    private void Find(IReadOnlyList<ConductorChoice>[] among, Trials trials, DesignEvaluation present) =>
        new ConstructiveHeuristic(task, goal, rules, among, returns).Find(trials, present);

    /// <summary>Whether the ends of a run are joined without it too.</summary>
    private static bool IsOnLoop(ElectricalNetwork network, int run)
    {
        var joined = new DisjointSets(network.NodeCount);
        for (int branch = 0; branch < network.Branches.Count; branch++)
        {
            if (branch != run) joined.Join(network.Branches[branch].From, network.Branches[branch].To);
        }

        return joined.SetOf(network.Branches[run].From) == joined.SetOf(network.Branches[run].To);
    }
}
