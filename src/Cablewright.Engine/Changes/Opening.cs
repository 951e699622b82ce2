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
        if (places.Count > 1 && attempts.Full(Open([], places)) is { Stands: true })
            return Named([], Fewest(places, some => Open([], some)), Change.Unsaid(same => same));
        if (given.Length == 0) return null;
        if (attempts.Full(Open(given, places)) is { Stands: true })
        {
            // The least important are given back first.
            IReadOnlyList<int> open = Fewest([.. given.Reverse()], some => Open(some, places), triesNone: false);
            return Named(open, Fewest(places, some => Open(open, some)), Change.Unsaid(same => same));
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

    /// <summary>What can be left out of a list while the rest still stands is left out, the first first.</summary>
    private List<T> Fewest<T>(IReadOnlyList<T> all, Func<IReadOnlyList<T>, Change> open, bool triesNone = true)
    {
        List<T> kept = [.. all];
        LeaveOut([.. all], isKnown: !triesNone);
        return kept;

        void LeaveOut(T[] some, bool isKnown = false)
        {
            List<T> rest = [.. kept.Except(some)];
            if (!isKnown && attempts.Full(open(rest)) is { Stands: true }) kept = rest;
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
