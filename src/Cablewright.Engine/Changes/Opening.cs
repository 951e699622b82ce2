using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>Several given conductors and fuses changed together.</summary>
/// <remarks>
/// Method: given fuses, and if that is not enough given conductors too, are left open and chosen anew as for a build of which nothing is given; then as
/// many as can be are given back, halves of the list at a time; what is chosen for the rest is the change. Where that is not
/// enough either, all amplifiers besides get less power, or all runs shorter.
/// </remarks>
internal sealed class Opening(CompleteBuild build, Attempts attempts, FuseChanges fuses, ConductorChanges conductors)
{
    private const int PercentStep = 5;

    /// <summary>The smallest combination found; <c>null</c> where none stands.</summary>
    /// <param name="byLoss">The stated runs, the one that matters most first.</param>
    /// <param name="isLastResort">Nothing else was found, so power and lengths may change besides.</param>
    public Change? Find(IReadOnlyList<int> byLoss, bool isLastResort)
    {
        int[] given = [.. byLoss.Where(run => build.Runs[run].Given is not null)];
        IReadOnlyList<RunEnd> places = fuses.Given;
        Attempt? anew = given.Length > 0 ? attempts.Full(Open(given, places)) : null;
        Verdict reached = anew is { Stands: true } ? anew.Variant.Verdict : Verdict.Caution;
        if (places.Count > 1 && Reaches(Open([], places), reached))
            return Named([], Fewest(places, some => Open([], some), reached), Change.Unsaid(same => same));
        if (given.Length == 0) return null;
        if (anew is { Stands: true })
        {
            // The least important are given back first.
            IReadOnlyList<int> open = Fewest([.. given.Reverse()], some => Open(some, places), reached);
            return Named(open, Fewest(places, some => Open(open, some), reached), Change.Unsaid(same => same));
        }

        if (!isLastResort) return null;
        return WithLess(given, places, PowerChanges.OfAll(build.Stated))
            ?? WithLess(given, places, LengthChanges.OfAll(build.Stated))
            ?? Named(given, places, Change.Unsaid(same => same));
    }

    private Change? WithLess(int[] given, IReadOnlyList<RunEnd> places, Ladder shares)
    {
        var coarse = new Ladder(shares.Count / PercentStep, place => Open(given, places).And(shares.At(place * PercentStep)));
        return new LadderSearch(attempts).FindFull(coarse) is { } found
            ? Named(given, places, shares.At(found.Place * PercentStep))
            : null;
    }

    /// <summary>Whether a build is judged no worse after a change.</summary>
    private bool Reaches(Change change, Verdict verdict) =>
        attempts.Full(change) is { Stands: true } attempt && attempt.Variant.Verdict <= verdict;

    /// <summary>What can be left out of a list while the rest still reaches a verdict is left out, the first first.</summary>
    private List<T> Fewest<T>(IReadOnlyList<T> all, Func<IReadOnlyList<T>, Change> open, Verdict verdict)
    {
        List<T> kept = [.. all];
        LeaveOut([.. all]);
        return kept;

        void LeaveOut(T[] some)
        {
            List<T> rest = [.. kept.Except(some)];
            if (Reaches(open(rest), verdict)) kept = rest;
            else if (some.Length > 1)
            {
                LeaveOut(some[..(some.Length / 2)]);
                LeaveOut(some[(some.Length / 2)..]);
            }
        }
    }

    private Change Open(IReadOnlyList<int> runs, IReadOnlyList<RunEnd> places) =>
        places.Select(fuses.Open).Aggregate(
            Change.Unsaid(changed => runs.Aggregate(
                changed, (all, run) => all.WithConductor(run, wish => wish with { Size = null, Count = null, Material = MetalOf(run) }))),
            (all, fuse) => all.And(fuse));

    private Material MetalOf(int run) =>
        build.Runs[run].Given!.Material is Material.TinnedCopper ? Material.TinnedCopper : Material.Copper;

    /// <summary>What is chosen for what was left open, stated.</summary>
    private Change? Named(IReadOnlyList<int> runs, IReadOnlyList<RunEnd> places, Change besides)
    {
        if (attempts.Full(Open(runs, places).And(besides)) is not { Variant: { } variant }) return null;
        Change named = besides;
        foreach (int run in runs.Order())
        {
            ConductorChoice choice = variant.Sized.Evaluation.Design.Conductors[run];
            if (choice != conductors.Now(run)) named = named.And(conductors.To(run, choice));
        }

        return fuses.Stated(named with { OpenFuses = places }, variant);
    }
}
