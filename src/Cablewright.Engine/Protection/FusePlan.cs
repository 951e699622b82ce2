using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Protection;

/// <summary>Puts fuses where they are needed and were left out.</summary>
/// <remarks>
/// <para>A fuse is needed at every end of a supply run that stands at a battery, and where the ampacity of a run is less than the
/// ratings of the fuses upstream. It is of the smallest rating of its family that carries the run's full current continuously in
/// the air of its place, so that it neither opens on a test tone nor adds more resistance than it must; where the ampacity of the
/// conductor is less, of the largest within it; and at least of the smallest that carries the continuous current. At the far
/// battery of a run between two it is of the largest rating within the ampacity, since what that battery will give is not known.
/// </para>
/// <para>Steps: (1) the given ones; (2) those at batteries; (3) from the batteries outwards, one at the first run of each way
/// that is not protected well enough; again until none is added.</para>
/// </remarks>
internal sealed class FusePlan
{
    private readonly CompleteBuild build;
    private readonly FuseLadders ladders;
    private readonly SupplyTopology topology;
    private readonly Ampacities ampacities;
    private readonly Design design;
    private readonly OperatingEnvelope envelope;
    private readonly Design? least;

    private FusePlan(BuildModel model, FuseLadders ladders, Design design, OperatingEnvelope envelope, Design? least)
    {
        build = model.Build;
        this.ladders = ladders;
        topology = model.Topology;
        ampacities = model.Ampacities;
        this.envelope = envelope;
        this.least = least;
        this.design = design.With(new FittedFuse?[build.Runs.Count], new FittedFuse?[build.Runs.Count]);
    }

    /// <summary>The given fuses and the needed ones.</summary>
    /// <param name="model">The build.</param>
    /// <param name="ladders">The families that its fuses may be of.</param>
    /// <param name="design">Its conductors.</param>
    /// <param name="envelope">The current of each run.</param>
    /// <param name="least">Chosen fuses that must stand again, with at least their ratings; <c>null</c>: none.</param>
    public static Design Place(
        BuildModel model, FuseLadders ladders, Design design, OperatingEnvelope envelope, Design? least)
    {
        var plan = new FusePlan(model, ladders, design, envelope, least);
        foreach (RunEnd end in model.Topology.Outwards.SelectMany(RunEnd.Of)) plan.PlaceStatedOrAtBattery(end);

        while (plan.PlaceAtReductions())
        {
        }

        return plan.design;
    }

    private void PlaceStatedOrAtBattery(RunEnd end)
    {
        FuseSlot slot = build.SlotAt(end);
        if (slot.Refused) return;
        if (slot.RatingAmps is { } rating) Set(end, Fitted(end.Run, slot, rating, Decided.Given));
        else if (slot.MustBeFitted || topology.IsAtBattery(end) || least?.FuseAt(end) is not null) Set(end, Chosen(end));
    }

    private bool PlaceAtReductions()
    {
        var protection = new ProtectionMap(topology, design);
        build.Meter.Count(topology.Outwards.Count);
        var closed = new HashSet<int>();
        bool placed = false;
        foreach (int run in topology.Outwards)
        {
            RunEnd fed = topology.FedEndOf(run);
            if (!closed.Contains(topology.NodeAt(fed)))
            {
                bool atFed = PlaceWhereTooMuchEnters(fed, protection);
                placed |= atFed | PlaceWhereTooMuchEnters(fed.Other, protection);
                if (!atFed) continue;
            }

            closed.Add(topology.NodeAt(fed.Other));
        }

        return placed;
    }

    private bool PlaceWhereTooMuchEnters(RunEnd end, ProtectionMap protection)
    {
        if (build.SlotAt(end).Refused || design.FuseAt(end) is not null) return false;
        double ampacity = ampacities.Of(end.Run, design.Conductors[end.Run].Conductor).LimitAmps;
        if (!Significant.Exceeds(protection.EnteringAmps(end), ampacity)) return false;
        Set(end, Chosen(end));
        return true;
    }

    private FittedFuse Chosen(RunEnd end)
    {
        int run = end.Run;
        FuseSlot slot = build.SlotAt(end);
        int share = IsPerConductor(run, slot) ? design.Conductors[run].Count : 1;
        double ampacity = ampacities.Of(run, design.Conductors[run].Conductor).LimitAmps;
        bool unknown = topology.IsAtBattery(end) && topology.NodeAt(end) != topology.ChargingNode
            && topology.IsFedFromBothEnds(run);
        double full = unknown ? ampacity : Math.Max(envelope.PeakAmps[run], envelope.ThermalAmps[run]) / share;
        FuseLadder ladder = ladders.At(end);
        FuseFamily family = ladder.For(full, ampacity);
        double wanted = unknown ? ampacity : ladder.SmallestCarrying(family, full) ?? family.RatingsAmps.Values[^1];
        double within = family.RatingsAmps.Values.LastOrDefault(value => !Significant.Exceeds(value, ampacity));
        double carrying = family.SmallestCarrying(envelope.ThermalAmps[run] / share) ?? family.RatingsAmps.Values[^1];
        double rating = Math.Max(carrying, Math.Min(wanted, within));
        if (least?.FuseAt(end) is { } stood && stood.RatingAmps > rating) return stood;
        return Fitted(run, slot with { Family = family.Name }, rating, Decided.Chosen);
    }

    private FittedFuse Fitted(int run, FuseSlot slot, double rating, Decided decided)
    {
        FuseFamily family = build.Ruleset.FuseFamilies.Of(slot.Family!.Value);
        return new FittedFuse(
            decided,
            rating,
            family,
            slot.DistanceMetres ?? build.Ruleset.Fuse.NearDistance.Value,
            IsPerConductor(run, slot, decided),
            slot.VoltageRatingVolts ?? family.VoltageRatingVolts.Value,
            slot.InterruptingRatingAmps)
        {
            HotShare = family.HotShareAt(build.Runs[run].AirCelsius),
            InterruptsAtVolts = Math.Max(build.HighestSupplyVolts, slot.VoltageRatingVolts ?? 0),
            TerminationOhms = build.Runs[run].FuseTerminationOhms,
            Band = decided is Decided.Given && slot.Band is { } own ? own : family.TimeCurrentBand,
        };
    }

    /// <summary>
    /// Parallel conductors get a fuse each where it is chosen; a given fuse stands for all unless the build says else.
    /// </summary>
    private bool IsPerConductor(int run, FuseSlot slot, Decided decided = Decided.Chosen) =>
        design.Conductors[run].Count > 1 && (slot.PerConductor ?? decided is Decided.Chosen);

    private void Set(RunEnd end, FittedFuse fuse) => (end.IsFar ? design.Far : design.Near)[end.Run] = fuse;
}
