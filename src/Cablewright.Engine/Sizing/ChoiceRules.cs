using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>Which rules a choice has to keep.</summary>
/// <remarks>
/// Every rule that would make the build fail, and every one about fuse, conductor and load, whether it speaks of what is chosen
/// or of what is given; and, though breaking it is only a caution, that an amplifier's return conducts no worse than its supply,
/// where some candidate for the return does, in parallel if need be. What is broken in any case is accepted, by rule and place.
/// The drop has its own goal.
/// </remarks>
internal sealed class ChoiceRules
{
    private readonly SizingTask task;
    private readonly HashSet<(ViolationKind Kind, RunEnd End)> accepted = [];
    private readonly bool[] returnBinds;

    public ChoiceRules(SizingTask task)
    {
        this.task = task;
        IReadOnlyList<ConductorChoice>[] candidates = task.Candidates(Stock.Any);
        returnBinds = [.. task.Build.Stated.Amplifiers.Select(amplifier => CanReturn(task, candidates, amplifier.Id))];
    }

    /// <summary>Whether it is accepted that a run gets too hot.</summary>
    public bool AcceptsHeatOf(int run) =>
        accepted.Any(violation => violation.End.Run == run && violation.Kind is ViolationKind.OverAmpacity);

    /// <summary>Whether it is accepted that a run's fuse does not protect it, or does not carry its load.</summary>
    public bool AcceptsFuseOf(int run) => accepted.Any(violation => violation.End.Run == run && violation.Kind
        is ViolationKind.NoFuseFits or ViolationKind.FuseAboveConductor or ViolationKind.FuseMissingAtReduction
        or ViolationKind.ParallelUnprotected or ViolationKind.FuseBelowLoad);

    /// <summary>Whether the return of an amplifier has to conduct no worse than its supply.</summary>
    public bool ReturnBinds(int amplifier) => returnBinds[amplifier];

    /// <summary>Accepts what is broken in each of several choices.</summary>
    /// <param name="mayAccept">Whether a violation that these open runs could cure may be accepted.</param>
    /// <param name="broken">What each breaks.</param>
    /// <returns>Whether there was anything to accept.</returns>
    public bool Accept(Func<IEnumerable<int>, bool> mayAccept, params IReadOnlyList<Violation>[] broken)
    {
        IEnumerable<(ViolationKind, RunEnd)> everywhere = broken[0]
            .Where(violation => Binds(violation) && mayAccept(CuringRuns(violation))).Select(Key);
        foreach (IReadOnlyList<Violation> other in broken) everywhere = everywhere.Intersect(other.Where(Binds).Select(Key));
        int before = accepted.Count;
        accepted.UnionWith([.. everywhere]);
        return accepted.Count > before;
    }

    /// <summary>Whether a violation is of a rule that a choice has to keep and whose violation is not accepted.</summary>
    public bool IsBroken(Violation violation) => Binds(violation) && !accepted.Contains(Key(violation));

    /// <summary>Whether a choice has to keep the rule that a violation is about.</summary>
    public bool Binds(Violation violation) => violation.Kind switch
    {
        ViolationKind.ReturnBelowSupply => returnBinds[violation.Index],
        ViolationKind.StrapBelowFuses => violation.Other >= 0 && task.Build.Runs[violation.Other].Given is null,
        _ => MustHold(violation),
    };

    /// <summary>
    /// Whether a choice has to keep a rule wherever it can: what is chosen is never above what its fuse may be, although a given
    /// conductor may be a little.
    /// </summary>
    public static bool MustHold(Violation violation) => violation.Kind switch
    {
        ViolationKind.DropOverLimit => false,
        ViolationKind.NoFuseFits or ViolationKind.FuseAboveConductor or ViolationKind.FuseMissingAtReduction
            or ViolationKind.FuseBelowLoad => true,
        ViolationKind.FuseOpensOnNote => violation.Severity is not Severity.Info,
        _ => violation.Severity is Severity.Fail,
    };

    private static (ViolationKind, RunEnd) Key(Violation violation) => (violation.Kind, violation.End);

    private static bool CanReturn(SizingTask task, IReadOnlyList<ConductorChoice>[] candidates, string amplifier)
    {
        double supply = 0, back = 0;
        bool isOpen = false;
        for (int run = 0; run < candidates.Length; run++)
        {
            CompleteRun described = task.Build.Runs[run];
            if (!described.EndsAt(amplifier)) continue;
            if (described.Side is Side.Supply) supply = Math.Max(supply, 1 / candidates[run][0].OhmsPerMetreAt20);
            else back += 1 / candidates[run][^1].OhmsPerMetreAt20;
            isOpen |= described.Side is Side.Return && described.Given is null;
        }

        return isOpen && !Significant.Exceeds(supply, back);
    }

    /// <summary>The open runs whose conductor may cure a violation.</summary>
    public IEnumerable<int> CuringRuns(Violation violation) => violation.Kind switch
    {
        ViolationKind.OverAmpacity or ViolationKind.NoFuseFits or ViolationKind.FuseAboveConductor
            or ViolationKind.FuseMissingAtReduction or ViolationKind.ParallelUnprotected
            or ViolationKind.FuseClearsTooLate or ViolationKind.FuseMayNotOpen or ViolationKind.FuseOpensOnNote =>
            task.Build.Runs[violation.Index].Given is null ? [violation.Index] : [],
        ViolationKind.StrapBelowFuses => [violation.Other],
        ViolationKind.ReturnBelowSupply =>
            task.Open.Where(run => task.Build.Runs[run].Side is Side.Return
                && task.Build.Runs[run].EndsAt(task.Build.Stated.Amplifiers[violation.Index].Id)),
        _ => [],
    };
}
