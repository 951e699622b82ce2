using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>What became of a choice that was worked out.</summary>
/// <param name="Evaluation">What it leads to; <c>null</c> where the voltage collapses.</param>
/// <param name="Broken">The rules it has to keep and does not, besides the goal.</param>
/// <param name="IsKept">Whether it keeps the goal and the rules.</param>
internal readonly record struct Tried(DesignEvaluation? Evaluation, IReadOnlyList<Violation> Broken, bool IsKept);

/// <summary>The choices that were worked out in full for one goal, and the best of them.</summary>
/// <param name="task">The task.</param>
/// <param name="goal">The goal.</param>
/// <param name="rules">The rules to keep.</param>
/// <param name="taper">What feeds what.</param>
/// <param name="lighterThan">A choice counts only where it weighs less.</param>
internal sealed class Trials(SizingTask task, Goal goal, ChoiceRules rules, TaperRule taper, double lighterThan)
{
    /// <summary>How much of the work that is left is spent once something is found: the rest is for the bound.</summary>
    private const double ShareOnceAny = 0.9;

    /// <summary>The best that was found; <c>null</c>: none.</summary>
    public Trial? Best { get; private set; }

    /// <summary>Only what weighs less is of interest.</summary>
    public double Below => Best?.Below ?? lighterThan;

    /// <summary>Whether a choice weighs less than the best.</summary>
    public bool MayBeLighter(ConductorChoice[] conductors) => task.WeightOf(taper.Raised(conductors)) < Below;

    /// <summary>Works a choice out in full and takes it where it is better.</summary>
    public Tried Try(ConductorChoice[] conductors)
    {
        conductors = taper.Raised(conductors);
        if (goal.IsUsual && !GroundRule.IsKeptBy(conductors, task.SupplyOf)) return new Tried(null, [], false);
        if (task.Evaluate(conductors) is not { } evaluation) return new Tried(null, [], false);
        List<Violation> broken =
            [
                .. evaluation.Violations.Where(rules.IsBroken),
                .. task.Open.Select(run => Overfull(run, evaluation)).OfType<Violation>(),
            ];
        if (broken.Count > 0 || !IsKept(evaluation)) return new Tried(evaluation, broken, false);
        FaultReport faults = FaultRuleBook.Report(task.Model, evaluation);
        broken.AddRange(faults.Violations.Where(rules.IsBroken));
        if (broken.Count > 0) return new Tried(evaluation, broken, false);
        double weight = task.WeightOf(conductors);
        if (weight < Below)
        {
            Best = new Trial(evaluation, faults, weight);
            task.Allow(ShareOnceAny);
        }

        return new Tried(evaluation, broken, true);
    }

    /// <summary>A run that carries what is drawn continuously, and not full output.</summary>
    private Violation? Overfull(int run, DesignEvaluation evaluation)
    {
        if (rules.AcceptsHeatOf(run)) return null;
        double full = task.RequiredAmps(run, goal, continuous: 0, evaluation.Envelope.PeakAmps[run]);
        double ampacity = task.Model.Ampacities.OfAll(run, evaluation.Design.Conductors[run]);
        return Significant.Exceeds(full, ampacity)
            ? new Violation(ViolationKind.OverAmpacity, Severity.Caution, run, Measured: full, Limit: ampacity)
            : null;
    }

    /// <summary>
    /// Whether the goal is kept, which speaks of the whole loss, and the limit too, which speaks of the conductors alone.
    /// </summary>
    private bool IsKept(DesignEvaluation evaluation) => goal.IsKeptBy(evaluation.Envelope, task.Model.Circuit)
        && (goal.MayExceedLimit
            || !evaluation.Violations.Any(violation => violation.Kind is ViolationKind.DropOverLimit));
}
