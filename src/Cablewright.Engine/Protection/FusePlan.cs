using Cablewright.Engine.Builds;
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
/// end in the air of its place, so that it neither opens on a test tone nor adds more resistance than it must; where the conductor does not bear that,
/// of the largest that it bears; and at least of the smallest that carries the lasting current. At the far battery of a run
/// between two it is of the largest rating that the conductor bears, since what that battery will give is not known.</para>
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

    private FusePlan(BuildModel model, Decision decision, WorstCurrents currents, Decision? least)
    {
        build = model.Build;
        shape = model.Topology;
        ampacities = model.Ampacities;
        this.currents = currents;
        this.least = least;
        this.decision = decision.With(new FittedFuse?[build.Runs.Count], new FittedFuse?[build.Runs.Count]);
    }

    /// <summary>The given fuses and the needed ones.</summary>
    /// <param name="model">The build.</param>
    /// <param name="decision">Its conductors.</param>
    /// <param name="currents">The current of each run.</param>
    /// <param name="least">Chosen fuses that must stand again, with at least their ratings; <c>null</c>: none.</param>
    public static Decision Place(BuildModel model, Decision decision, WorstCurrents currents, Decision? least)
    {
        var plan = new FusePlan(model, decision, currents, least);
        foreach (RunEnd end in model.Topology.Outwards.SelectMany(RunEnd.Of)) plan.PlaceStatedOrAtBattery(end);

        while (plan.PlaceAtReductions())
        {
        }

        return plan.decision;
    }

    private void PlaceStatedOrAtBattery(RunEnd end)
    {
        FuseSlot slot = build.SlotAt(end);
        if (slot.Refused) return;
        if (slot.RatingAmps is { } rating) Set(end, Fitted(end.Run, slot, rating, Decided.Given));
        else if (slot.MustBeFitted || shape.IsAtBattery(end) || least?.FuseAt(end) is not null) Set(end, Chosen(end));
    }

    private bool PlaceAtReductions()
    {
        var guards = new GuardMap(shape, decision);
        build.Meter.Count(shape.Outwards.Count);
        var closed = new HashSet<int>();
        bool placed = false;
        foreach (int run in shape.Outwards)
        {
            RunEnd fed = shape.FedEndOf(run);
            if (!closed.Contains(shape.NodeAt(fed)))
            {
                bool atFed = PlaceWhereTooMuchEnters(fed, guards);
                placed |= atFed | PlaceWhereTooMuchEnters(fed.Other, guards);
                if (!atFed) continue;
            }

            closed.Add(shape.NodeAt(fed.Other));
        }

        return placed;
    }

    private bool PlaceWhereTooMuchEnters(RunEnd end, GuardMap guards)
    {
        if (build.SlotAt(end).Refused || decision.FuseAt(end) is not null) return false;
        double bearing = ampacities.Of(end.Run, decision.Conductors[end.Run].Conductor).LimitAmps;
        if (!Significant.Exceeds(guards.EnteringAmps(end), bearing)) return false;
        Set(end, Chosen(end));
        return true;
    }

    private FittedFuse Chosen(RunEnd end)
    {
        int run = end.Run;
        FuseSlot slot = build.SlotAt(end);
        int share = IsPerConductor(run, slot) ? decision.Conductors[run].Count : 1;
        double bearing = ampacities.Of(run, decision.Conductors[run].Conductor).LimitAmps;
        bool unknown = shape.IsAtBattery(end) && shape.NodeAt(end) != shape.ChargingNode && shape.IsFedFromBothEnds(run);
        double full = unknown ? bearing : Math.Max(currents.PeakAmps[run], currents.ThermalAmps[run]) / share;
        FuseFamily family = FamilyFor(run, slot, full, bearing);
        double cool = full / family.HotShareAt(build.Runs[run].AirCelsius);
        double wanted = unknown ? bearing : family.SmallestCarrying(cool) ?? family.RatingsAmps.Values[^1];
        double borne = family.RatingsAmps.Values.LastOrDefault(value => !Significant.Exceeds(value, bearing));
        double carrying = family.SmallestCarrying(currents.ThermalAmps[run] / share) ?? family.RatingsAmps.Values[^1];
        double rating = Math.Max(carrying, Math.Min(wanted, borne));
        if (least?.FuseAt(end) is { } stood && stood.RatingAmps > rating) return stood;
        return Fitted(run, slot with { Family = family.Name }, rating, Decided.Chosen);
    }

    /// <summary>
    /// A blade where it carries the full current in a small rating, or where the conductor bears no larger family; else an ANL.
    /// </summary>
    private FuseFamily FamilyFor(int run, FuseSlot slot, double full, double bearing)
    {
        if (slot.Family is { } stated) return FuseFamily.Of(stated);
        FuseFamily blade = FuseFamily.Of(FuseFamilyName.BladeC), strip = FuseFamily.Of(FuseFamilyName.Anl);
        bool small = blade.SmallestCarrying(full / blade.HotShareAt(build.Runs[run].AirCelsius)) is { } rating && rating <= build.Ruleset["fuse.blade-up-to"].Value;
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

    private void Set(RunEnd end, FittedFuse fuse) => (end.IsFar ? decision.Far : decision.Near)[end.Run] = fuse;
}
