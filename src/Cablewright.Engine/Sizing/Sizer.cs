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
/// choices that keep the first goal that any keeps, and every rule besides, the lightest is taken, whether weight means price or
/// mass (<see cref="GoalSearch"/>), or the one of fewest sizes (<see cref="FewestSizes"/>).</para>
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
    private readonly bool proves;
    private readonly DropGoals goals;
    private bool isProven = true;

    private Sizer(SizingTask task, bool proves)
    {
        this.task = task;
        build = task.Build;
        goals = new DropGoals(task);
        boundsHold = !build.PutsInCurrent && build.Runs.All(run => run.Isolator is null);
        this.proves = proves && (boundsHold || build.Stated.Sizing.Prefer is Prefer.FewestSizes);
    }

    /// <summary>Decides what is open; the search stops where it is once the build's meter is used up.</summary>
    /// <param name="evaluator">Works out each trial of the build.</param>
    /// <param name="proves">Whether the best is looked for and proven; a good choice will else do.</param>
    public static SizedBuild Size(Evaluator evaluator, bool proves = true)
    {
        CompleteBuild build = evaluator.Model.Build;
        if (IsGiven(build)) return SizedBuild.Given(evaluator, evaluator.Evaluate(Given(build)));
        return new Sizer(new SizingTask(evaluator), proves).Choose();
    }

    /// <summary>The same; <c>null</c> where everything is given and the voltage collapses.</summary>
    public static SizedBuild? TrySize(Evaluator evaluator)
    {
        CompleteBuild build = evaluator.Model.Build;
        if (!IsGiven(build)) return Size(evaluator);
        return evaluator.TryEvaluate(Given(build)) is { } evaluation
            ? SizedBuild.Given(evaluator, evaluation)
            : null;
    }

    private static bool IsGiven(CompleteBuild build) => build.Runs.All(run => run.Given is not null);

    private static Design Given(CompleteBuild build) => SizingTask.WithoutFuses(
        [.. build.Runs.Select(run => new ConductorChoice(run.Given!, run.GivenCount ?? 1))]);

    private SizedBuild Choose()
    {
        foreach (Goal goal in goals.All)
        {
            if (build.Meter.IsUsedUp) break;
            if (Reached(goal) is { } sized) return sized;
        }

        return ComeNear();
    }

    private SizedBuild? Reached(Goal goal)
    {
        var search = new GoalSearch(task, goal);
        if (!proves && search.Sketch().Best is { } sketch) return Sketched(sketch);
        if (proves) search.Run();
        if (search.Best is null)
        {
            isProven &= search.IsProven;
            return null;
        }

        (Trial best, double bound, bool proven) = build.Stated.Sizing.Prefer is Prefer.FewestSizes
            ? FewestSizes.Find(task, search)
            : (search.Best, search.Bound, search.IsProven);
        proven &= isProven;
        return new SizedBuild(best.Evaluation, best.Faults, proven)
        {
            IsBeyondStock = goal.Stock is Stock.Any && !IsStocked(best.Evaluation.Design.Conductors),
            IsOptimal = proven && boundsHold,
            Gap = !boundsHold ? null : proven ? 0 : Math.Max(0, 1 - bound / best.Weight),
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
            if (goals.Strongest(stock) is { } least && Reached(goals.Unavoidable(least, stock)) is { } near) return near;
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

    private SizedBuild Sketched(Trial sketch) =>
        new(sketch.Evaluation, sketch.Faults, !task.IsOutOfWork) { Cost = CostOf(sketch.Evaluation) };

    private SizedBuild Unproven(DesignEvaluation evaluation)
    {
        task.Allow(1);
        FaultReport faults = FaultRuleBook.Report(task.Model, evaluation);
        return new SizedBuild(evaluation, faults, !task.IsOutOfWork) { Cost = CostOf(evaluation) };
    }

    private double CostOf(DesignEvaluation evaluation) =>
        task.Open.Sum(run => task.Costs.Of(run, evaluation.Design.Conductors[run]));
}
