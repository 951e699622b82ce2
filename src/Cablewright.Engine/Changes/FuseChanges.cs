using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Text;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>Other fuses in place of those that are given, or where the build says that there is none.</summary>
internal sealed class FuseChanges(CompleteBuild build)
{
    /// <summary>The places of the supply side about which the build says something: a rating, or that there is none.</summary>
    public IReadOnlyList<RunEnd> Given { get; } =
        [.. Enumerable.Range(0, build.Stated.Runs.Count).Where(run => build.Runs[run].Side is Side.Supply)
            .SelectMany(RunEnd.Of)
            .Where(place => build.SlotAt(place) is { RatingAmps: not null } or { Refused: true })];

    /// <summary>A fuse chosen anew: of the family that is there, of the usual one, of those whose opening band is read.</summary>
    public IEnumerable<Change> Anew(RunEnd place)
    {
        FuseSlot slot = build.SlotAt(place);
        yield return Open(place);
        if (slot.Refused) yield break;
        yield return OfFamily(place, null);
        foreach (FuseFamily family in build.Ruleset.FuseFamilies.All
            .Where(family => family.TimeCurrentBand.IsRead && family.Name != slot.Family))
            yield return OfFamily(place, family.Name);
    }

    /// <summary>
    /// A fuse left open, its family kept and no farther from its source than is allowed; where there is none, whatever is needed.
    /// </summary>
    public Change Open(RunEnd place) => Open(
        place,
        wish => wish is { Fitted: true }
            ? wish with { RatingAmps = null, PerConductor = null, DistanceMetres = Allowed(wish.DistanceMetres) }
            : null);

    /// <summary>The fuse no farther from its source than is allowed.</summary>
    public Change Nearer(RunEnd place)
    {
        FuseSlot slot = build.SlotAt(place);
        double now = slot.DistanceMetres!.Value;
        WrittenFigure to = Farthest;
        return new Change
        {
            Kind = ChangeKind.FuseDistance,
            Apply = changed => changed.WithFuse(place, wish => wish! with { DistanceMetres = to.Value }),
            Edits = [new Edit(slot.At[Member.DistanceFromSource], Length(now), Held.Of(to))],
            Steps = [new Step.MoveFuse(build.Runs[place.Run].Id, to)],
            Share = 1 - to.Value / now,
            Runs = [build.Runs[place.Run].Id],
        };
    }

    /// <summary>A change with the fuses stated that were chosen for it.</summary>
    public Change Stated(Change change, Variant variant) => change.OpenFuses.Aggregate(
        change with { OpenFuses = [] }, (all, place) => all.And(Fitted(place, variant) ?? AsItWas(place)));

    private Change OfFamily(RunEnd place, FuseFamilyName? family) => Open(place, wish => wish! with
    {
        RatingAmps = null,
        Family = family,
        PerConductor = null,
        DistanceMetres = Allowed(wish.DistanceMetres),
        VoltageRatingVolts = null,
        InterruptingRatingAmps = null,
    });

    /// <summary>Nothing is said of it until the fuse is known.</summary>
    private static Change Open(RunEnd place, Func<FuseWish?, FuseWish?> open) =>
        Change.Unsaid(changed => changed.WithFuse(place, open)) with { OpenFuses = [place] };

    private Change AsItWas(RunEnd place) => Change.Unsaid(changed => changed.WithFuse(place, _ => build.Stated.FuseAt(place)));

    /// <summary>The fuse that stands in a place; <c>null</c> where it is the one that is given.</summary>
    private Change? Fitted(RunEnd place, Variant variant)
    {
        Design design = variant.Sized.Evaluation.Design;
        FuseSlot slot = build.SlotAt(place);
        if (design.FuseAt(place) is not { } fuse) return null;
        bool isShared = design.Conductors[place.Run].Count > 1;
        FuseWish? left = variant.Build.Stated.FuseAt(place);
        Edit[] edits = [.. Edits(place, left, fuse, isShared)];
        if (edits.Length == 0) return null;
        if (edits is [{ From: not null } only] && only.At.Member is Member.DistanceFromSource) return Nearer(place);
        return new Change
        {
            Kind = ChangeKind.Fuse,
            Apply = changed => changed.WithFuse(place, wish => (wish ?? new FuseWish()) with
            {
                Fitted = true,
                RatingAmps = fuse.RatingAmps,
                Family = fuse.Family.Name,
                DistanceMetres = Allowed(wish?.DistanceMetres) ?? (slot.Refused ? fuse.DistanceMetres : null),
                PerConductor = isShared ? fuse.PerConductor : wish?.PerConductor,
            }),
            Edits = edits,
            Steps =
            [
                new Step.FitFuse(
                    build.Runs[place.Run].Id, build.PlaceAt(place), fuse, isShared && fuse.PerConductor, slot.RatingAmps),
            ],
            Share = slot.RatingAmps is { } before ? Math.Abs(1 - fuse.RatingAmps / before) : 1,
            Runs = [build.Runs[place.Run].Id],
        };
    }

    private IEnumerable<Edit> Edits(RunEnd place, FuseWish? left, FittedFuse fuse, bool isShared)
    {
        FuseSlot slot = build.SlotAt(place);
        FuseFamilyName? family = build.Stated.FuseAt(place)?.Family;
        if (slot.Refused) yield return new Edit(slot.At[Member.Fitted], Held.Of(false), Held.Of(true));
        if (slot.RatingAmps != fuse.RatingAmps)
            yield return new Edit(slot.At[Member.Rating], Amps(slot.RatingAmps), Amps(fuse.RatingAmps));
        if (family != fuse.Family.Name)
            yield return new Edit(slot.At[Member.Family], Held.Of(family), Held.Of(fuse.Family.Name));
        double? farther = build.Stated.FuseAt(place)?.DistanceMetres;
        if (slot.Refused)
            yield return new Edit(slot.At[Member.DistanceFromSource], null, Length(fuse.DistanceMetres));
        else if (farther is { } metres && metres != left?.DistanceMetres)
            yield return new Edit(slot.At[Member.DistanceFromSource], Length(metres), Held.Of(Farthest));
        if (isShared && slot.PerConductor != fuse.PerConductor)
            yield return new Edit(slot.At[Member.PerConductor], Held.Of(slot.PerConductor), Held.Of(fuse.PerConductor));
        if (slot.VoltageRatingVolts is { } volts && left?.VoltageRatingVolts is null)
            yield return new Edit(slot.At[Member.VoltageRating], Held.Of(WrittenFigure.Of(volts, WrittenUnit.Volt)), null);
        if (slot.InterruptingRatingAmps is { } breaks && left?.InterruptingRatingAmps is null)
            yield return new Edit(slot.At[Member.InterruptingRating], Amps(breaks), null);
    }

    private WrittenFigure Farthest => WrittenSteps.LengthWithin(build.Ruleset.Fuse.MaxDistance.Value, build.Stated.Units);

    private double? Allowed(double? metres) => metres > Farthest.Value ? Farthest.Value : metres;

    private static Held? Amps(double? value) =>
        value is { } amps ? Held.Of(WrittenFigure.Of(amps, WrittenUnit.Ampere)) : null;

    private Held? Length(double metres) => Held.Of(WrittenSteps.Length(metres, build.Stated.Units));
}
