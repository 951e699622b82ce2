using Cablewright.Engine.Completion;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Protection;

/// <summary>Puts fuses where they are needed and were left out.</summary>
/// <remarks>
/// <para>A fuse is needed at every end of a supply run that stands at a battery, and where a run bears less than what the fuses
/// towards the batteries let through. It is of the smallest rating of its family that carries the run's full current without
/// end in the air of its place, so that it neither opens on a test tone nor adds more resistance than it must; where the
/// conductor does not bear that, of the largest that it bears; and at least of the smallest that carries the lasting current. At
/// the far battery of a run between two it is of the largest rating that the conductor bears, since what that battery will give
/// is not known.</para>
/// <para>Steps: (1) the given ones; (2) those at batteries; (3) from the batteries outwards, one at the first run of each way
/// that is not guarded well enough; again until none is added.</para>
/// </remarks>
internal sealed class FusePlan
{
    private readonly CompleteBuild build;
    private readonly SupplyShape shape;
    private readonly Ampacities ampacities;
    private readonly Decision decision;
    private readonly WorstCurrents currents;
    private readonly Decision? least;
    private readonly FittedFuse?[] near;
    private readonly FittedFuse?[] far;

    private FusePlan(
        CompleteBuild build, SupplyShape shape, Ampacities ampacities, Decision decision, WorstCurrents currents, Decision? least)
    {
        this.build = build;
        this.shape = shape;
        this.ampacities = ampacities;
        this.currents = currents;
        this.least = least;
        near = new FittedFuse?[build.Runs.Count];
        far = new FittedFuse?[build.Runs.Count];
        this.decision = decision.With(near, far);
    }

    /// <summary>The given fuses and the needed ones.</summary>
    /// <param name="build">The build.</param>
    /// <param name="shape">Its supply side.</param>
    /// <param name="ampacities">What its conductors may carry.</param>
    /// <param name="decision">Its conductors.</param>
    /// <param name="currents">The current of each run.</param>
    /// <param name="least">Chosen fuses that must stand again, with at least their ratings; <c>null</c>: none.</param>
    public static Decision Place(
        CompleteBuild build, SupplyShape shape, Ampacities ampacities, Decision decision, WorstCurrents currents, Decision? least)
    {
        var plan = new FusePlan(build, shape, ampacities, decision, currents, least);
        foreach (int run in shape.Outwards)
        {
            plan.PlaceStatedOrAtBattery(run, far: false);
            plan.PlaceStatedOrAtBattery(run, far: true);
        }

        while (plan.PlaceAtReductions())
        {
        }

        return plan.decision;
    }

    private void PlaceStatedOrAtBattery(int run, bool far)
    {
        FuseSlot slot = SlotOf(run, far);
        if (slot.Refused) return;
        if (slot.RatingAmps is { } rating) Set(run, far, Fitted(run, slot, rating, Decided.Given));
        else if (slot.MustBeFitted || shape.IsAtBattery(run, far) || Least(run, far) is not null) Set(run, far, Chosen(run, far));
    }

    private bool PlaceAtReductions()
    {
        var guards = new GuardMap(shape, decision);
        build.Meter.Count(shape.Outwards.Count);
        var closed = new HashSet<int>();
        bool placed = false;
        foreach (int run in shape.Outwards)
        {
            bool fed = shape.IsFedAtFarEnd(run);
            if (!closed.Contains(shape.NodeAt(run, fed)))
            {
                bool atFed = PlaceWhereTooMuchEnters(run, fed, guards);
                placed |= atFed | PlaceWhereTooMuchEnters(run, !fed, guards);
                if (!atFed) continue;
            }

            closed.Add(shape.NodeAt(run, !fed));
        }

        return placed;
    }

    private bool PlaceWhereTooMuchEnters(int run, bool atFarEnd, GuardMap guards)
    {
        if (SlotOf(run, atFarEnd).Refused || FuseAt(run, atFarEnd) is not null) return false;
        double bearing = ampacities.Of(run, decision.Conductors[run].Conductor).LimitAmps;
        if (!Significant.Exceeds(guards.EnteringAmps(run, atFarEnd), bearing)) return false;
        Set(run, atFarEnd, Chosen(run, atFarEnd));
        return true;
    }

    private FittedFuse Chosen(int run, bool far)
    {
        FuseSlot slot = SlotOf(run, far);
        int share = IsPerConductor(run, slot) ? decision.Conductors[run].Count : 1;
        double bearing = ampacities.Of(run, decision.Conductors[run].Conductor).LimitAmps;
        bool unknown = shape.IsAtBattery(run, far) && shape.NodeAt(run, far) != shape.ChargingNode
            && shape.IsFedFromBothEnds(run);
        double full = unknown ? bearing : Math.Max(currents.PeakAmps[run], currents.ThermalAmps[run]) / share;
        FuseFamily family = FamilyFor(run, slot, full, bearing);
        double cool = full / family.HotShareAt(build.Runs[run].AirCelsius);
        double wanted = unknown ? bearing : family.SmallestCarrying(cool) ?? family.RatingsAmps.Values[^1];
        double borne = family.RatingsAmps.Values.LastOrDefault(value => !Significant.Exceeds(value, bearing));
        double least = family.SmallestCarrying(currents.ThermalAmps[run] / share) ?? family.RatingsAmps.Values[^1];
        double rating = Math.Max(least, Math.Min(wanted, borne));
        if (Least(run, far) is { } stood && stood.RatingAmps > rating) return stood;
        return Fitted(run, slot with { Family = family.Name }, rating, Decided.Chosen);
    }

    private FittedFuse? Least(int run, bool atFarEnd) => atFarEnd ? least?.Far[run] : least?.Near[run];

    /// <summary>
    /// A blade where it carries the full current in a small rating, or where the conductor bears no larger family; else an ANL.
    /// </summary>
    private FuseFamily FamilyFor(int run, FuseSlot slot, double full, double bearing)
    {
        if (slot.Family is { } stated) return FuseFamily.Of(stated);
        FuseFamily blade = FuseFamily.Of(FuseFamilyName.BladeC), strip = FuseFamily.Of(FuseFamilyName.Anl);
        bool small = blade.SmallestCarrying(full / blade.HotShareAt(build.Runs[run].AirCelsius)) is { } rating
            && rating <= build.Ruleset["fuse.blade-up-to"].Value;
        return small || bearing < strip.RatingsAmps.Values[0] ? blade : strip;
    }

    private FittedFuse Fitted(int run, FuseSlot slot, double rating, Decided decided)
    {
        FuseFamily family = FuseFamily.Of(slot.Family!.Value);
        return new FittedFuse(
            decided,
            rating,
            family,
            slot.DistanceMetres ?? build.Ruleset["fuse.near-distance"].Value,
            IsPerConductor(run, slot, decided),
            slot.VoltageRatingVolts ?? family.VoltageRatingVolts.Value,
            slot.InterruptingRatingAmps)
        {
            HotShare = family.HotShareAt(build.Runs[run].AirCelsius),
            TerminationOhms = build.Runs[run].FuseTerminationOhms,
        };
    }

    /// <summary>
    /// Parallel conductors get a fuse each where it is chosen; a given fuse stands for all unless the build says else.
    /// </summary>
    private bool IsPerConductor(int run, FuseSlot slot, Decided decided = Decided.Chosen) =>
        decision.Conductors[run].Count > 1 && (slot.PerConductor ?? decided is Decided.Chosen);

    private FuseSlot SlotOf(int run, bool atFarEnd) => atFarEnd ? build.Runs[run].Far : build.Runs[run].Near;

    private FittedFuse? FuseAt(int run, bool atFarEnd) => atFarEnd ? far[run] : near[run];

    private void Set(int run, bool atFarEnd, FittedFuse fuse) => (atFarEnd ? far : near)[run] = fuse;
}
