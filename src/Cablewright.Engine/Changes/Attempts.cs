using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Sizing;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>Assesses a build with something changed, as long as there is work left.</summary>
/// <remarks>
/// Where conductors are open, a search goes over the build with each of them as strong as it may be, and only what it finds is
/// assessed with the conductors chosen: nothing that is chosen loses less or carries more.
/// </remarks>
internal sealed class Attempts
{
    /// <summary>A choice may take this part of all work: enough to find one, since none has to be proven.</summary>
    private const double AttemptsInBudget = 50;

    private readonly Variant present;
    private readonly Build stated;
    private readonly Build strongest;
    private readonly HashSet<(ViolationKind Kind, RunEnd End)> failing;
    private readonly WorkMeter work;
    private (Change Change, Attempt Attempt)? nearest;

    /// <summary>Prepares attempts at changes to a build.</summary>
    /// <param name="present">The build, assessed.</param>
    /// <param name="meter">Counts the work.</param>
    public Attempts(Variant present, WorkMeter meter)
    {
        this.present = present;
        work = meter.Part(WorkBudgets.Changes);
        stated = present.Build.Stated with { Include = [] };
        HasOpen = present.Build.Runs.Any(run => run.Given is null);
        strongest = HasOpen ? Strongest(present) : stated;
        failing = [.. present.Violations.Where(violation => violation.Severity is Severity.Fail).Select(Key)];
    }

    /// <summary>Whether a conductor is to be chosen.</summary>
    public bool HasOpen { get; }

    /// <summary>Whether there is no work left.</summary>
    public bool IsOutOfWork => work.IsUsedUp;

    /// <summary>Of all changes tried, the one after which the fewest rules fail, and those by the least.</summary>
    public (Change Change, Variant After)? Nearest => nearest is { } known ? (known.Change, known.Attempt.Variant!) : null;

    /// <summary>
    /// The changed build with every open conductor as strong as it may be; <c>null</c> where there is no work left.
    /// </summary>
    public Attempt? Quick(Change change) => Assess(change.Apply(strongest));

    /// <summary>The changed build with its open conductors chosen; <c>null</c> where there is no work left.</summary>
    public Attempt? Full(Change change)
    {
        Attempt? attempt = Assess(change.Apply(stated));
        bool isStated = change.OpenFuses.Count == 0 && change.Edits.Count > 0;
        if (isStated && attempt is { Variant: not null }
            && (nearest is not { } known || Distance(attempt).CompareTo(Distance(known.Attempt)) < 0))
            nearest = (change, attempt);
        return attempt;
    }

    private Attempt? Assess(Build build) => work.Within(work.Budget, all =>
    {
        Variant? variant = present.Near(build, all.Part(work.Budget / AttemptsInBudget));
        return new Attempt(
            variant,
            variant is not null
                && variant.Violations.Any(violation => violation.Severity is Severity.Fail && !failing.Contains(Key(violation))));
    });

    /// <summary>Whether no choice of open conductors can stand where the strongest leave this.</summary>
    public static bool IsBeyondChoice(Attempt quick) =>
        quick.Variant is null
            || quick.Fails.Any(violation => violation.Kind is ViolationKind.DropOverLimit or ViolationKind.VoltageCollapse);

    private static (ViolationKind, RunEnd) Key(Violation violation) => (violation.Kind, violation.End);

    private static (int Fails, double Excess) Distance(Attempt attempt) => (
        attempt.Fails.Count(),
        attempt.Fails.Where(violation =>
            violation.Kind is ViolationKind.DropOverLimit or ViolationKind.OverAmpacity or ViolationKind.FuseBelowLoad)
            .Select(violation => Significant.Round(violation.Measured / violation.Limit)).DefaultIfEmpty(0).Max());

    private static Build Strongest(Variant present)
    {
        CompleteBuild build = present.Build;
        var costs = new PriceList(build.Stated.Sizing, build.Ruleset);
        ConductorChoice[] conductors = [.. build.Runs.Select((run, index) => run.Given is null
            ? CandidateList.For(run, build, costs, Stock.Any)[^1]
            : present.Sized.Evaluation.Design.Conductors[index])];
        return FrozenBuild.WithFusesOpen(build, SizingTask.WithoutFuses(conductors));
    }
}
