using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>Chooses the conductors that a build leaves open, all together.</summary>
/// <remarks>
/// <para>The goal for the drop is the design target; where no choice keeps that, a little more than the least drop that the
/// strongest candidates leave, so that more power never gets less copper; then the same with conductors in parallel; then the
/// hard limit; where no choice keeps that either, a little more than the least drop. Of the
/// choices that keep the first goal that any keeps, and every rule besides, a light one is taken, whether weight means price or
/// mass (<see cref="GoalSearch"/>), or one of fewest sizes (<see cref="FewestSizes"/>). A rule that what is chosen breaks in any
/// case is accepted only after all goals.</para>
/// <para>Conductors in parallel wait until single ones do not do: four thin ones weigh a little less than one of the same metal
/// and stay cooler, so by weight alone they would nearly always win, and each needs lugs and a fuse of its own.</para>
/// <para>Fuses follow from the conductors by the rule of <see cref="Protection.FusePlan"/>; they are no choice of their
/// own.</para>
/// </remarks>
internal sealed class Sizer
{
    private readonly SizingTask task;
    private readonly CompleteBuild build;

    /// <summary>
    /// What an alternator puts in elsewhere than at a battery and what a diode or a charger does are not in the bounds, so that
    /// nothing is proven where there is one.
    /// </summary>
    private readonly bool boundsHold;
    private readonly DropGoals goals;
    private readonly ConductorChoice[]? near;

    private Sizer(SizingTask task, ConductorChoice[]? near)
    {
        this.task = task;
        this.near = near;
        build = task.Build;
        goals = new DropGoals(task);
        boundsHold = !build.PutsInCurrent && build.Runs.All(run => run.Isolator is null);
    }

    /// <summary>Decides what is open; the search stops where it is once the build's meter is used up.</summary>
    /// <param name="evaluator">Works out each trial of the build.</param>
    /// <param name="near">The choice of a build much like this one; <c>null</c>: a choice is looked for from the ground
    /// up.</param>
    public static SizedBuild Size(Evaluator evaluator, ConductorChoice[]? near = null)
    {
        CompleteBuild build = evaluator.Model.Build;
        if (IsGiven(build)) return SizedBuild.Given(evaluator, evaluator.Evaluate(Given(build)));
        return new Sizer(new SizingTask(evaluator), near).Choose();
    }

    /// <summary>The same; <c>null</c> where everything is given and the voltage collapses.</summary>
    public static SizedBuild? TrySize(Evaluator evaluator, ConductorChoice[] near)
    {
        CompleteBuild build = evaluator.Model.Build;
        if (!IsGiven(build)) return Size(evaluator, near);
        return evaluator.TryEvaluate(Given(build)) is { } evaluation
            ? SizedBuild.Given(evaluator, evaluation)
            : null;
    }

    private static bool IsGiven(CompleteBuild build) => build.Runs.All(run => run.Given is not null);

    private static Design Given(CompleteBuild build) => SizingTask.WithoutFuses(
        [.. build.Runs.Select(run => new ConductorChoice(run.Given!, run.GivenCount ?? 1))]);

    private SizedBuild Choose()
    {
        var refused = new List<Goal>();
        foreach (Goal goal in goals.All)
        {
            if (build.Meter.IsUsedUp) break;
            if (Reached(goal, acceptsChosen: false, refused) is { } sized) return sized;
        }

        foreach (Goal goal in refused)
        {
            if (build.Meter.IsUsedUp) break;
            if (Reached(goal, acceptsChosen: true, refused: null) is { } sized) return sized;
        }

        return ComeNear();
    }

    /// <summary>What is chosen for a goal; <c>null</c> where nothing keeps it.</summary>
    /// <param name="goal">The goal.</param>
    /// <param name="acceptsChosen">Whether a rule that no choice keeps may be broken by what is chosen.</param>
    /// <param name="refused">Takes the goal where such a rule stood against it.</param>
    private SizedBuild? Reached(Goal goal, bool acceptsChosen, List<Goal>? refused)
    {
        if (!goals.MayBeKept(goal)) return null;
        GoalSearch search = new GoalSearch(task, goal, acceptsChosen).Run(near);
        if (search.HasRefused) refused?.Add(goal);
        if (search.Best is not { } best) return null;
        Func<double> bound = search.Bound;
        if (build.Stated.Sizing.Prefer is Prefer.FewestSizes)
        {
            (best, double ofAsFew) = FewestSizes.Find(task, search);
            bound = () => ofAsFew;
        }

        return new SizedBuild(best.Evaluation, best.Faults, !task.IsOutOfWork)
        {
            IsBeyondStock = goal.Stock is Stock.Any && !IsStocked(best.Evaluation.Design.Conductors),
            GapBy = () => boundsHold && bound() is > 0 and var least ? best.GapTo(least) : null,
            Cost = CostOf(best.Evaluation),
        };
    }

    /// <summary>
    /// Where given parts or the candidates leave too much drop whatever is chosen: the choice that adds only a little to the
    /// least possible drop; where the voltage collapses in any case, one that stays within its ampacity.
    /// </summary>
    private SizedBuild ComeNear()
    {
        foreach (Stock stock in goals.Stocks)
        {
            if (build.Meter.IsUsedUp) break;
            if (goals.Strongest(stock) is not { } least) continue;
            if (Reached(goals.Unavoidable(least, stock), acceptsChosen: true, refused: null) is { } near) return near;
        }

        if (goals.Strongest(Stock.Any) is { } strongest) return Unproven(strongest);
        Goal hard = goals.Of(build.Drop.HardVolts, Stock.Single);
        IReadOnlyList<ConductorChoice>[] candidates = task.Candidates(hard.Stock);
        var rules = new ChoiceRules(task);
        var draft = new ConstructiveHeuristic(task, hard, rules, candidates, ReturnRule.Of(task, hard, rules, candidates));
        return Unproven(task.Evaluator.Evaluate(SizingTask.WithoutFuses(draft.Ampacity())));
    }

    /// <summary>Whether a choice from everything is one from what the trade keeps.</summary>
    private bool IsStocked(ConductorChoice[] chosen)
    {
        IReadOnlyList<ConductorChoice>[] stocked = task.Candidates(Stock.Paired);
        return Array.TrueForAll(task.Open, run => stocked[run].Contains(chosen[run]));
    }

    private SizedBuild Unproven(DesignEvaluation evaluation)
    {
        task.Allow(1);
        FaultReport faults = FaultRuleBook.Report(task.Model, evaluation);
        return new SizedBuild(evaluation, faults, !task.IsOutOfWork) { Cost = CostOf(evaluation) };
    }

    private double CostOf(DesignEvaluation evaluation) =>
        task.Open.Sum(run => task.Costs.Of(run, evaluation.Design.Conductors[run]));
}
