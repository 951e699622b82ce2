using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>Finds the smallest changes after which no rule of a failing build fails.</summary>
/// <remarks>
/// Method: every kind of change to every part by itself, the parts first that matter most; where no other part alone does,
/// several of them together. Each is assessed in full, with what is open chosen anew, before it is named.
/// </remarks>
internal sealed class ChangeFinder
{
    private readonly Variant present;
    private readonly CompleteBuild build;
    private readonly Build stated;
    private readonly Attempts attempts;
    private readonly LadderSearch search;
    private readonly FuseChanges fuses;
    private readonly ConductorChanges conductors;
    private readonly ChoiceChanges choices;
    private readonly Violation[] fails;
    private readonly List<(Change Change, Variant After)> found = [];

    private ChangeFinder(Variant present, WorkMeter meter)
    {
        this.present = present;
        build = present.Build;
        stated = build.Stated;
        attempts = new Attempts(present, meter);
        search = new LadderSearch(attempts);
        fuses = new FuseChanges(build);
        conductors = new ConductorChanges(build);
        choices = new ChoiceChanges(build);
        fails = [.. present.Violations.Where(violation => violation.Severity is Severity.Fail)];
    }

    /// <summary>Looks for what would make a failing build feasible.</summary>
    public static FoundChanges For(Variant present, WorkMeter meter)
    {
        var finder = new ChangeFinder(present, meter);
        finder.Search();
        return new FoundChanges(finder.found, finder.attempts.Nearest, !finder.attempts.IsOutOfWork);
    }

    private void Search()
    {
        IReadOnlyList<int> runs = Relevance.Order(present, fails);
        int[] amplifiers = Relevance.Amplifiers(present);
        foreach (Violation violation in fails) OfParts(violation);
        if (amplifiers.Length > 1) Keep(search.Find(PowerChanges.OfAll(stated)));
        for (int rank = 0; rank < Math.Max(runs.Count, amplifiers.Length) && !attempts.IsOutOfWork; rank++)
        {
            if (rank < runs.Count) OfRun(runs[rank]);
            if (rank < amplifiers.Length) Keep(search.Find(PowerChanges.Of(stated, amplifiers[rank])));
        }

        OfChoice();
        if (!found.Exists(each => each.Change is { Kind: ChangeKind.Length }) && runs.Count > 1)
            Keep(search.Find(LengthChanges.OfAll(stated)));
        if (conductors.CopperInAll() is { } copper && !found.Exists(each => each.Change.Kind is ChangeKind.Material))
            Keep(copper);
        if (!found.Exists(each =>
            each.Change.Kind is not (ChangeKind.Power or ChangeKind.Length) && each.After.Verdict is Verdict.Pass)
            && new Opening(build, attempts, fuses, conductors).Find(runs, found.Count == 0) is { } several) Keep(several);
    }

    private void OfRun(int run)
    {
        if (build.Runs[run].Given is not null)
        {
            if (IsHopeless(run)) return;
            OfConductor(run, conductors.Larger(run));
            OfConductor(run, conductors.Metals(run));
            OfConductor(run, conductors.InParallel(run));
        }
        else Keep(search.Find(choices.InParallel(run)));
        Keep(search.Find(LengthChanges.Of(stated, run)));
    }

    /// <summary>Whether not even everything about a run together helps.</summary>
    private bool IsHopeless(int run) =>
        attempts.Quick(WithOwnFuses(conductors.Best(run), run)) is { Stands: false, BreaksMore: false };

    private Change WithOwnFuses(Change change, int run) =>
        fuses.Given.Where(place => place.Run == run).Select(fuses.Open).Aggregate(change, (all, fuse) => all.And(fuse));

    /// <summary>Another conductor; where its given fuses then do not fit, with these chosen anew.</summary>
    private void OfConductor(int run, Ladder ladder)
    {
        Keep(search.Find(ladder));
        if (search.First is not { Stands: false } first || !fuses.Given.Any(place => place.Run == run)) return;
        if (!first.Fails.Any(violation => violation.Index == run && Concerns.Fuse(violation.Kind))) return;
        Keep(search.Find(ladder with { At = place => WithOwnFuses(ladder.At(place), run) }));
    }

    private void OfParts(Violation violation)
    {
        if (violation.Kind is ViolationKind.EngineOffTooShort)
        {
            for (int battery = 0; battery < stated.Vehicle.Batteries.Count; battery++)
                Keep(search.Find(PartChanges.Battery(build, battery)));
        }

        if (violation.Index >= stated.Runs.Count) return;
        if (violation.Kind is ViolationKind.IsolatorOverRated) Keep(PartChanges.Isolator(build, violation));
        if (violation.Kind is ViolationKind.FuseTooFar) Keep(fuses.Nearer(violation.End));
        if (violation.Kind is ViolationKind.TerminalTooSmall && build.Runs[violation.Index].Given is not null)
            OfConductor(violation.Index, conductors.Smaller(violation.Index));
        if (Concerns.Heat(violation.Kind)) Keep(search.Find(PartChanges.Insulation(build, violation.Index)));
        if (!Concerns.Fuse(violation.Kind)) return;
        HashSet<int> devices = [.. present.Sized.Evaluation.Protection.RunsProtecting(violation.Index)];
        foreach (RunEnd end in fuses.Given.Where(end => end.Run == violation.Index || devices.Contains(end.Run))) OfFuse(end);
    }

    private void OfFuse(RunEnd place)
    {
        if (found.Exists(each => each.Change.Kind is ChangeKind.Fuse && each.Change.Runs.Contains(build.Runs[place.Run].Id)))
            return;
        foreach (Change change in fuses.Anew(place))
        {
            if (attempts.Quick(change) is { } quick && quick.Fails.Any(violation => !Concerns.Fuse(violation.Kind))) return;
            if (Keep(change)) return;
        }
    }

    private void OfChoice()
    {
        if (!attempts.HasOpen) return;
        Keep(search.FindFull(choices.LargerSize()));
        foreach (Change change in choices.Copper()) Keep(change);
    }

    private void Keep(Found? change)
    {
        if (change is not { } stands) return;
        if (stands.Change.OpenFuses.Count > 0) Keep(stands.Change);
        else found.Add((stands.Change, stands.Attempt.Variant!));
    }

    /// <summary>Keeps a change if it stands, with the fuses stated that it leaves open.</summary>
    private bool Keep(Change change)
    {
        if (attempts.Full(change) is not { } attempt) return false;
        if (attempt.Stands && change.OpenFuses.Count > 0)
        {
            change = fuses.Stated(change, attempt.Variant);
            if (attempts.Full(change) is not { } named) return false;
            attempt = named;
        }

        if (!attempt.Stands || change.Edits.Count == 0) return false;
        found.Add((change, attempt.Variant));
        return true;
    }
}
