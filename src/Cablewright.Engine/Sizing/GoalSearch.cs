using Cablewright.Engine.Conductors;
using Cablewright.Engine.Protection;

namespace Cablewright.Engine.Sizing;

/// <summary>The lightest choice that keeps a goal and the rules, or the proof that there is none.</summary>
/// <remarks>
/// <para>Method: branch and bound. A good choice is found first (<see cref="Aim"/>, else <see cref="FirstChoice"/>). The candidates of
/// the shared runs are then decided one after another, always in the branch with the least bound (<see cref="Relaxation"/>), and
/// below that those of each amplifier's own runs (<see cref="BranchSearch"/>). A branch whose bound does not lie below the best
/// choice known cannot hold a better one. When none is left, the best is the optimum.</para>
/// <para>Why that is true: the bound of a branch is the optimum of an easier problem that admits every choice of the branch that
/// keeps the goal and the rules, each at its own weight; and a choice counts only once the full assessment has passed it. No
/// other property of the circuit is used, so it holds for loops and several batteries too: there less is certain, the bound is
/// weaker, and more choices are worked out in full.</para>
/// <para>Where the work budget ends first, the least bound of the branches that are left is still proven.</para>
/// </remarks>
internal sealed class GoalSearch
{
    /// <summary>How much of the work that is left is spent while nothing is found, since another goal may follow.</summary>
    private const double ShareWithoutAny = 0.5;

    /// <summary>Judging the faults of a run costs about as much as solving it so many times.</summary>
    private const double FaultCost = 50;

    private const int MostAims = 12;
    private const double FirstAim = 0.995;

    /// <summary>A choice so little above the first bound is left to the search to improve.</summary>
    private const double GoodEnough = 0.03;

    private const double AimMargin = 0.0005;

    /// <summary>How much heavier than its bound a solution of the easier problem is looked for first.</summary>
    private static readonly double[] AimSlacks = [1.02, 1.1, 1.4, 2, double.PositiveInfinity];

    private static readonly double[] EvenAims = [0.985, 0.97, 0.95, 0.92, 0.9, 0.87];

    private readonly SizingTask task;
    private readonly Goal goal;
    private readonly IReadOnlyList<ConductorChoice>[] candidates;
    private readonly ChoiceRules rules;
    private readonly bool rulesAreSettled;
    private readonly double below = double.PositiveInfinity;
    private double[] missed = [];

    /// <summary>Prepares a search among all candidates.</summary>
    public GoalSearch(SizingTask task, Goal goal)
    {
        this.task = task;
        this.goal = goal;
        candidates = task.Candidates(goal.MostParallel);
        rules = new ChoiceRules(task, candidates);
    }

    /// <summary>Prepares a search among some candidates, for something that weighs less than what another search found.</summary>
    public GoalSearch(GoalSearch other, IReadOnlyList<ConductorChoice>[] among, double lighterThan)
    {
        task = other.task;
        goal = other.goal;
        candidates = among;
        rules = other.rules;
        rulesAreSettled = true;
        below = lighterThan;
    }

    /// <summary>What is chosen from.</summary>
    public IReadOnlyList<ConductorChoice>[] Candidates => candidates;

    /// <summary>The best choice found; <c>null</c>: none.</summary>
    public Trial? Best { get; private set; }

    /// <summary>No choice that keeps the goal and the rules weighs less than this.</summary>
    public double Bound { get; private set; }

    /// <summary>Whether it is proven that nothing better exists, or, where nothing was found, nothing at all.</summary>
    public bool IsProven { get; private set; }

    public GoalSearch Run()
    {
        task.Allow(ShareWithoutAny);
        var relaxation = new Relaxation(task, goal, rules, candidates);
        if (relaxation.IsInfeasible && !rulesAreSettled && AcceptUnavoidable(null))
            relaxation = new Relaxation(task, goal, rules, candidates);
        if (relaxation.IsInfeasible || !(relaxation.Bound([]) < Below)) return Proven();
        Aim(relaxation);
        if (Best is null)
        {
            Evaluation? first = TryFirst();
            if (Best is null && !rulesAreSettled && AcceptUnavoidable(first))
            {
                relaxation = new Relaxation(task, goal, rules, candidates);
                if (!relaxation.IsInfeasible) Aim(relaxation);
                if (Best is null && first is not null) Try(first.Decision.Conductors);
            }

            if (Best is null && !rulesAreSettled) Try([.. candidates.Select(choices => choices[^1])]);
            if (relaxation.IsInfeasible) return Proven();
        }

        var waiting = new PriorityQueue<(int[] Picks, double Bound), (double, long)>();
        long queued = 0;
        Enqueue([]);
        while (waiting.TryDequeue(out (int[] Picks, double Bound) branch, out _))
        {
            Bound = branch.Bound;
            if (!(branch.Bound < Below)) return Proven();
            if (task.IsOutOfWork) return this;
            if (branch.Picks.Length < relaxation.Shared.Length)
            {
                int options = relaxation.Options[relaxation.Shared[branch.Picks.Length]].Length;
                for (int option = 0; option < options; option++) Enqueue([.. branch.Picks, option]);
            }
            else if (!SearchBranch(relaxation, branch.Picks, branch.Bound) || task.IsOutOfWork) return this;
        }

        return Proven();

        void Enqueue(int[] picks)
        {
            task.SearchWork += Relaxation.BranchCost;
            double bound = relaxation.Bound(picks);
            if (bound < Below) waiting.Enqueue((picks, bound), (Significant.Round(bound), queued++));
        }
    }

    private double Below => Best?.Below ?? below;

    private GoalSearch Proven()
    {
        Bound = Best?.Weight ?? double.PositiveInfinity;
        IsProven = true;
        return this;
    }

    private bool SearchBranch(Relaxation relaxation, int[] picks, double bound)
    {
        var search = new BranchSearch(task, relaxation, picks, null, Try);
        return !search.Tighten(bound, Below) || search.Search();
    }

    /// <summary>
    /// Solves the easier problem for a little less than the goal, since floors are a little too low, and works out the solution; again
    /// with what it missed the goal by.
    /// </summary>
    private void Aim(Relaxation relaxation)
    {
        double[] shares = [.. goal.Volts.Select(_ => 1.0)];
        for (int aim = 0; aim < MostAims && Best is null && !task.IsOutOfWork; aim++)
        {
            missed = [];
            if (!TryAimed(relaxation, shares)) shares = [.. shares.Select(share => share * FirstAim)];
            else if (!missed.Any(share => share > 1)) break;
            else
                shares =
                    [.. shares.Select((share, load) => missed[load] > 1 ? share / missed[load] - AimMargin * (1 << aim) : share)];
        }

        double bound = relaxation.Bound([]);
        foreach (double share in EvenAims)
        {
            if (task.IsOutOfWork || Below < bound * (1 + GoodEnough)) return;
            double[] even = [.. goal.Volts.Select(_ => share)];
            TryAimed(relaxation, even);
            if (relaxation.LightestPicks(even) is { } picks
                && new BranchSearch(task, relaxation, picks, even, Try).LightestOfRelaxation() is { } lightest) Try(lightest);
        }

        if (Best is not null && new FirstChoice(task, goal, rules, candidates).Weakened(Best.Evaluation) is { } lighter)
            Try(lighter.Decision.Conductors);
    }

    private bool TryAimed(Relaxation relaxation, double[] shares)
    {
        if (relaxation.LightestPicks(shares) is not { } picks) return false;
        var search = new BranchSearch(task, relaxation, picks, shares, Try);
        double bound = relaxation.Bound(picks, shares);
        if (!AimSlacks.Any(slack => search.Tighten(bound, bound * slack))) return false;
        Try(search.Lightest());
        return true;
    }

    /// <summary>Looks for a choice by steps.</summary>
    private Evaluation? TryFirst()
    {
        Evaluation? first = new FirstChoice(task, goal, rules, candidates).TryReach();
        if (first is not null) Try(first.Decision.Conductors);
        return first;
    }

    /// <summary>
    /// Accepts what even the strongest candidates break, here and with as many conductors in parallel as may be, and besides a
    /// choice at hand.
    /// </summary>
    private bool AcceptUnavoidable(Evaluation? atHand)
    {
        if (task.BrokenByStrongest(goal.MostParallel) is not { } here) return false;
        if (task.BrokenByStrongest(CandidateList.MostInParallel) is not { } parallel) return false;
        return atHand is null
            ? rules.Accept(here, parallel)
            : rules.Accept(here, parallel, [.. atHand.Breaches, .. task.Evaluator.JudgeFaults(atHand).Breaches]);
    }

    /// <summary>Works a choice out in full and takes it where it is better.</summary>
    /// <returns>The weight that a better one must be below.</returns>
    private double Try(ConductorChoice[] conductors)
    {
        double weight = task.WeightOf(conductors);
        if (!(weight < Below) || task.Evaluate(conductors) is not { } evaluation) return Below;
        missed = [.. goal.Volts.Select((volts, load) => Goal.DropOf(load, evaluation.Currents, task.Evaluator.Wiring) / volts)];
        if (!goal.IsKeptBy(evaluation.Currents, task.Evaluator.Wiring) || !rules.AreKept(evaluation.Breaches)) return Below;
        task.SearchWork += FaultCost * task.Build.Runs.Count;
        FaultReport faults = task.Evaluator.JudgeFaults(evaluation);
        if (!rules.AreKept(faults.Breaches)) return Below;
        Best = new Trial(evaluation, faults, weight);
        task.Allow(1);
        return Below;
    }
}
