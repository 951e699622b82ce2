using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Rules;
using Cablewright.Engine.ShortCircuits;

namespace Cablewright.Engine.Sizing;

/// <summary>A light choice that keeps a goal and the rules, and how much lighter another could be.</summary>
/// <remarks>
/// <para>Method: a choice from the tree problem first (<see cref="ConstructiveHeuristic"/>). Then each shared run with each of
/// its candidates, the tree problem solved for the rest from the currents at hand (<see cref="SharedRunSearch"/>): what a shared
/// run is made of decides which fuses stand behind it, and the tree problem does not know that. Last, each run one step lighter
/// (<see cref="LocalSearch"/>). A choice counts only once the full assessment has passed it.</para>
/// <para>No choice weighs less than the optimum of a problem that admits all of them (<see cref="Relaxation"/>); where the choice
/// weighs no more than that, it is the best.</para>
/// </remarks>
internal sealed class GoalSearch
{
    /// <summary>How much of the work that is left is spent while nothing is found, since another goal may follow.</summary>
    private const double ShareWithoutAny = 0.5;

    private readonly SizingTask task;
    private readonly Goal goal;
    private readonly ChoiceRules rules;
    private readonly bool rulesAreSettled;
    private readonly bool acceptsChosen;
    private readonly Trials trials;
    private readonly ReturnRule[] returns;
    private readonly TaperRule taper;

    /// <summary>Prepares a search among all candidates.</summary>
    /// <param name="task">The task.</param>
    /// <param name="goal">The goal.</param>
    /// <param name="acceptsChosen">Whether a rule that no choice keeps may be broken by what is chosen, not only by what is
    /// given.</param>
    public GoalSearch(SizingTask task, Goal goal, bool acceptsChosen = false)
    {
        this.acceptsChosen = acceptsChosen;
        this.task = task;
        this.goal = goal;
        Candidates = task.Candidates(goal.Stock);
        rules = new ChoiceRules(task);
        taper = new TaperRule(task, Candidates);
        trials = new Trials(task, goal, rules, taper, double.PositiveInfinity);
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
        taper = new TaperRule(task, Candidates);
        trials = new Trials(task, goal, rules, taper, lighterThan);
        returns = ReturnRule.Of(task, goal, rules, Candidates);
    }

    /// <summary>What is chosen from.</summary>
    public IReadOnlyList<ConductorChoice>[] Candidates { get; }

    /// <summary>The best choice found; <c>null</c>: none.</summary>
    public Trial? Best => trials.Best;

    /// <summary>Whether a rule was held to that every choice breaks, which another search may accept.</summary>
    public bool HasRefused { get; private set; }

    /// <summary>Looks for a choice.</summary>
    /// <param name="near">The choice of a build much like this one, which one here is likely to be near to: another is then found
    /// with a few evaluations.</param>
    public GoalSearch Run(ConductorChoice[]? near = null)
    {
        task.Allow(ShareWithoutAny);
        if (near is not null && Follow(near)) return this;
        DesignEvaluation? draft = DrawUp();
        if (Best is null && !rulesAreSettled && AcceptUnavoidable(draft)) DrawUp();
        if (Best is null && !rulesAreSettled && trials.Try([.. Candidates.Select(choices => choices[^1])]).IsKept)
            new EvenLoss(task, goal.IsUsual, Candidates).Run(trials);
        if (Best is null) return this;
        new SharedRunSearch(task, goal, rules, taper, returns).Run(trials);
        new LocalSearch(task, goal, taper).Run(trials);
        return this;
    }

    private bool Follow(ConductorChoice[] near)
    {
        ConductorChoice[] conductors = [.. Candidates.Select((choices, run) =>
            run < near.Length && choices.Contains(near[run]) ? near[run] : choices[^1])];
        if (trials.Try(conductors).Evaluation is not { } present) return false;
        new ConstructiveHeuristic(task, goal, rules, Candidates, returns).Find(trials, present);
        if (Best is null) return false;
        bool isSame = Best.Evaluation.Design.Conductors.AsSpan().SequenceEqual(conductors);
        if (!isSame) new LocalSearch(task, goal, taper).Lighten(trials);
        return true;
    }

    /// <summary>What every choice that keeps the goal and the rules weighs at least; infinite where there is none.</summary>
    public double Bound()
    {
        if (taper.Feeds.ToArray() is not [var feed, ..]) return Eased(Candidates).Bound;
        double least = double.PositiveInfinity;
        foreach (ConductorChoice choice in Candidates[feed])
        {
            if (task.Build.Meter.IsUsedUp) return 0;
            least = Math.Min(least, Eased(taper.Trimmed(feed, choice)).Bound);
        }

        return least;
    }

    private Relaxation Eased(IReadOnlyList<ConductorChoice>[] among) => new(task, goal, rules, among, returns);

    private DesignEvaluation? DrawUp() => new ConstructiveHeuristic(task, goal, rules, Candidates, returns).Find(trials);

    /// <summary>
    /// Accepts what even the strongest candidates break, here and with as many conductors in parallel as may be, and besides a
    /// choice at hand.
    /// </summary>
    private bool AcceptUnavoidable(DesignEvaluation? atHand)
    {
        if (task.BrokenByStrongest(goal.Stock) is not { } here) return false;
        if (task.BrokenByStrongest(Stock.Any) is not { } parallel) return false;
        if (atHand is null) return rules.Accept(MayAccept, here, parallel);
        Violation[] now = [.. atHand.Violations, .. FaultRuleBook.Report(task.Model, atHand).Violations];
        return rules.Accept(MayAccept, here, parallel, now);

        bool MayAccept(IEnumerable<int> curing)
        {
            if (acceptsChosen || curing.All(run => Candidates[run].Count == 1)) return true;
            HasRefused = true;
            return false;
        }
    }
}
