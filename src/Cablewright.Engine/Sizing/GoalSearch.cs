using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.ShortCircuits;

namespace Cablewright.Engine.Sizing;

/// <summary>The lightest choice that keeps a goal and the rules, or the proof that there is none.</summary>
/// <remarks>
/// <para>Method: branch and bound. A good choice is found first (<see cref="ConstructiveHeuristic"/>). What cannot be part of a
/// lighter one is left out (<see cref="Relaxation.Tighten"/>). The candidates of the shared runs that are left are then decided
/// one after another, always in the branch with the least bound, and below that those of each amplifier's own runs
/// (<see cref="BranchSearch"/>). A branch whose bound does not lie below the best choice known cannot hold a better one. When
/// none is left, the best is the optimum.</para>
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

    private readonly SizingTask task;
    private readonly Goal goal;
    private readonly ChoiceRules rules;
    private readonly bool rulesAreSettled;
    private readonly Trials trials;
    private readonly ReturnRule[] returns;

    /// <summary>Prepares a search among all candidates.</summary>
    public GoalSearch(SizingTask task, Goal goal)
    {
        this.task = task;
        this.goal = goal;
        Candidates = task.Candidates(goal.Stock);
        rules = new ChoiceRules(task);
        trials = new Trials(task, goal, rules, double.PositiveInfinity);
        returns = ReturnRule.Of(task, goal, rules, Candidates);
    }

    /// <summary>Prepares a search among some candidates, for something that weighs less than what another search found.</summary>
    public GoalSearch(GoalSearch other, IReadOnlyList<ConductorChoice>[] among, double lighterThan)
    {
        task = other.task;
        goal = other.goal;
        Candidates = among;
        rules = other.rules;
        rulesAreSettled = true;
        trials = new Trials(task, goal, rules, lighterThan);
        returns = ReturnRule.Of(task, goal, rules, Candidates);
    }

    /// <summary>What is chosen from.</summary>
    public IReadOnlyList<ConductorChoice>[] Candidates { get; }

    /// <summary>The best choice found; <c>null</c>: none.</summary>
    public Trial? Best => trials.Best;

    /// <summary>No choice that keeps the goal and the rules weighs less than this.</summary>
    public double Bound { get; private set; }

    /// <summary>Whether it is proven that nothing better exists, or, where nothing was found, nothing at all.</summary>
    public bool IsProven { get; private set; }

    /// <summary>A good choice without a proof; a search only where none is found at once.</summary>
    public GoalSearch Sketch()
    {
        task.Allow(ShareWithoutAny);
        DrawUp(Candidates);
        return Best is null ? Run() : this;
    }

    public GoalSearch Run()
    {
        task.Allow(ShareWithoutAny);
        Relaxation relaxation = Eased();
        if (relaxation.IsInfeasible && !rulesAreSettled && AcceptUnavoidable(null)) relaxation = Eased();
        if (relaxation.IsInfeasible || !(relaxation.Bound < trials.Below)) return Proven();
        DesignEvaluation? draft = DrawUp(Candidates);
        if (Best is null && !rulesAreSettled && AcceptUnavoidable(draft))
        {
            relaxation = Eased();
            if (relaxation.IsInfeasible) return Proven();
            DrawUp(Candidates);
        }

        if (Best is null && !rulesAreSettled && trials.Try([.. Candidates.Select(choices => choices[^1])]).IsKept)
            new EvenLoss(task, goal.IsUsual, Candidates).Run(trials);
        if (Best is not null) new LocalSearch(task, goal, Candidates).Run(trials);
        return relaxation.Tighten(trials.Below) ? Search(relaxation) : Proven();
    }

    private GoalSearch Search(Relaxation whole)
    {
        var waiting = new PriorityQueue<(Relaxation Branch, double Bound), (double, long)>();
        long queued = 0;
        Enqueue(whole, whole.Bound);
        while (waiting.TryDequeue(out (Relaxation Relaxation, double Bound) branch, out _))
        {
            Bound = branch.Bound;
            if (!(branch.Bound < trials.Below)) return Proven();
            if (task.IsOutOfWork) return this;
            int run = branch.Relaxation.Undecided;
            if (run < 0)
            {
                if (!SearchBranch(branch.Relaxation, branch.Bound) || task.IsOutOfWork) return this;
                continue;
            }

            for (int option = 0; option < branch.Relaxation.Options[run].Length; option++)
            {
                if (task.IsOutOfWork) return this;
                Relaxation next = branch.Relaxation.With(run, option);
                if (branch.Relaxation.IsAside(run) || next.Tighten(trials.Below))
                    Enqueue(next, Math.Max(branch.Bound, next.Bound));
            }
        }

        return Proven();

        void Enqueue(Relaxation branch, double bound)
        {
            task.Count(Relaxation.BranchCost);
            if (branch.Undecided < 0) DrawUp(branch);
            if (bound < trials.Below) waiting.Enqueue((branch, bound), (Significant.Round(bound), queued++));
        }
    }

    private Relaxation Eased() => new(task, goal, rules, Candidates, returns);

    private DesignEvaluation? DrawUp(IReadOnlyList<ConductorChoice>[] among) =>
        new ConstructiveHeuristic(task, goal, rules, among, returns).Find(trials);

    private GoalSearch Proven()
    {
        Bound = Best?.Weight ?? double.PositiveInfinity;
        IsProven = true;
        return this;
    }

    /// <summary>Looks for a good choice in a branch, so that others need not be searched.</summary>
    private void DrawUp(Relaxation branch)
    {
        if (branch.Bound < trials.Below)
            DrawUp([.. branch.Options.Select(options => options.Select(option => option.Choice).ToArray())]);
    }

    private bool SearchBranch(Relaxation relaxation, double bound)
    {
        if (!relaxation.Tighten(trials.Below)) return true;
        var search = new BranchSearch(task, relaxation, trials.TryLighter);
        return !search.Tighten(Math.Max(bound, relaxation.Bound), trials.Below) || search.Search();
    }

    /// <summary>
    /// Accepts what even the strongest candidates break, here and with as many conductors in parallel as may be, and besides a
    /// choice at hand.
    /// </summary>
    private bool AcceptUnavoidable(DesignEvaluation? atHand)
    {
        if (task.BrokenByStrongest(goal.Stock) is not { } here) return false;
        if (task.BrokenByStrongest(Stock.Any) is not { } parallel) return false;
        return atHand is null
            ? rules.Accept(here, parallel)
            : rules.Accept(here, parallel, [.. atHand.Violations, .. FaultRuleBook.Report(task.Model, atHand).Violations]);
    }
}
