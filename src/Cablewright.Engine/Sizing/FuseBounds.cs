using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>
/// What is certain of the fuses before a choice is made: the least they add, and which conductors none can protect.
/// </summary>
/// <remarks>
/// <para>A chosen fuse carries the continuous current, so its rating is at least the smallest that carries a floor of that; it
/// is at most the ampacity of the conductor, or the least of all. Its resistance is the permitted drop over its rating, so a
/// ceiling of the rating is a floor of the resistance.</para>
/// <para>What enters a run on a tree passes every fuse before it; each of these carries the run's own current at least. A chosen
/// one is at least what a floor of the full current wants or the weakest candidate of its run bears.</para>
/// </remarks>
internal sealed class FuseBounds
{
    private readonly CompleteBuild build;
    private readonly FuseLadders ladders;
    private readonly SupplyTopology topology;
    private readonly Ampacities ampacities;
    private readonly int mostParallel;
    private readonly ChoiceRules rules;
    private readonly double[] entering;
    private RunAmps[] carried = [];
    private double[] weakest = [];

    /// <summary>Prepares the floors for one build.</summary>
    /// <param name="model">The build.</param>
    /// <param name="ladders">The families that its fuses may be of.</param>
    /// <param name="mostParallel">How many conductors may be laid in parallel.</param>
    /// <param name="rules">The rules that are to be kept; where one is not, nothing that follows from it is certain.</param>
    public FuseBounds(BuildModel model, FuseLadders ladders, int mostParallel, ChoiceRules rules)
    {
        this.ladders = ladders;
        this.rules = rules;
        build = model.Build;
        topology = model.Topology;
        ampacities = model.Ampacities;
        this.mostParallel = mostParallel;
        entering = new double[build.Runs.Count];
    }

    private FuseFamilies Families => build.Ruleset.FuseFamilies;

    /// <summary>Takes what is proven of each run.</summary>
    /// <param name="amps">Its least currents.</param>
    /// <param name="weakestAmps">The least ampacity of one conductor of it.</param>
    /// <param name="settled">The conductors, where they are known, and with them where no fuse stands; nothing is then
    /// proven.</param>
    public void Take(RunAmps[] amps, double[] weakestAmps, ConductorChoice[]? settled = null)
    {
        carried = amps;
        weakest = weakestAmps;
        if (!topology.IsRadial) return;
        var at = new double[topology.NodeCount];
        foreach (int battery in topology.BatteryNodes) at[battery] = double.PositiveInfinity;
        foreach (int run in topology.Outwards)
        {
            RunEnd fed = topology.FedEndOf(run);
            entering[run] = at[topology.NodeAt(fed)];
            at[topology.NodeAt(fed.Other)] = Math.Min(Math.Min(entering[run], TotalRating(fed)), TotalRating(fed.Other));
        }

        double TotalRating(RunEnd end) =>
            settled is null || build.SlotAt(end).RatingAmps is not null || IsCertain(end, settled[end.Run])
                ? LeastTotalRating(end)
                : double.PositiveInfinity;
    }

    /// <summary>Whether a conductor can carry what its run carries, and be protected, where a choice has to keep that.</summary>
    /// <param name="run">The run.</param>
    /// <param name="choice">Its conductors.</param>
    /// <param name="required">What they are to be rated for, in amperes.</param>
    /// <param name="continuousAmps">The continuous current.</param>
    public bool CanBear(int run, ConductorChoice choice, double required, double continuousAmps)
    {
        double ampacity = ampacities.OfAll(run, choice);
        return ampacity <= 0
            || ((rules.AcceptsHeatOf(run) || !Significant.Exceeds(required, ampacity))
                && (rules.AcceptsFuseOf(run) || CanProtect(run, choice, continuousAmps)));
    }

    /// <summary>Whether a fuse can protect a conductor in a run, whatever else is chosen.</summary>
    private bool CanProtect(int run, ConductorChoice choice, double continuousAmps) => build.Runs[run].Side is Side.Return
        || RunEnd.Of(run).All(end => CanProtect(end, choice, continuousAmps));

    /// <summary>The least resistance that the fuses of a run have, in ohms.</summary>
    public double LeastOhms(int run, ConductorChoice choice) => build.Runs[run].Side is Side.Return
        ? 0
        : LeastOhms(RunEnd.Near(run), choice) + LeastOhms(RunEnd.Far(run), choice);

    /// <summary>The resistance that the fuses of a run have where all currents are what was taken, in ohms.</summary>
    public double LikelyOhms(int run, ConductorChoice choice) => build.Runs[run].Side is Side.Return
        ? 0
        : LikelyOhms(RunEnd.Near(run), choice) + LikelyOhms(RunEnd.Far(run), choice);

    private double LikelyOhms(RunEnd end, ConductorChoice choice)
    {
        int run = end.Run;
        FuseSlot slot = build.SlotAt(end);
        if (slot.RatingAmps is not null) return LeastOhms(end, choice);
        if (!IsCertain(end, choice)) return 0;
        int share = IsPerConductor(slot, choice, chosen: true) ? choice.Count : 1;
        double each = ampacities.Of(run, choice.Conductor).LimitAmps, full = carried[run].Full / share;
        return FamiliesFor(end, full, full, each).Max(family =>
        {
            double wanted = ladders.At(end).SmallestCarrying(family, full) ?? family.RatingsAmps.Values[^1];
            return Ohms(run, family, Math.Max(family.RatingsAmps.Values[0], Math.Min(wanted, LargestWithin(family, each))));
        }) / share;
    }

    private bool CanProtect(RunEnd end, ConductorChoice choice, double continuousAmps)
    {
        int run = end.Run;
        FuseSlot slot = build.SlotAt(end);
        bool atBattery = topology.IsAtBattery(end);
        if (!atBattery && (!topology.IsRadial || end != topology.FedEndOf(run))) return true;
        double before = atBattery ? double.PositiveInfinity : entering[run];
        double each = ampacities.Of(run, choice.Conductor).LimitAmps;
        if (slot.RatingAmps is { } rating)
        {
            double totalRating = rating * (IsPerConductor(slot, choice, chosen: false) ? choice.Count : 1);
            double ampacity = IsPerConductor(slot, choice, chosen: false) ? each * choice.Count : each;
            return !Significant.Exceeds(Math.Min(before, totalRating), ampacity);
        }

        if (!Significant.Exceeds(before, each)) return true;
        if (slot.Refused) return double.IsInfinity(before);
        int share = IsPerConductor(slot, choice, chosen: true) ? choice.Count : 1;
        return !Significant.Exceeds(LeastRating(end, continuousAmps / share), each);
    }

    /// <summary>That of the largest fuse that the plan may come to, since a larger one has less.</summary>
    private double LeastOhms(RunEnd end, ConductorChoice choice)
    {
        int run = end.Run;
        FuseSlot slot = build.SlotAt(end);
        if (slot.RatingAmps is { } given)
            return Ohms(run, Families.Of(slot.Family!.Value), given) / (IsPerConductor(slot, choice, chosen: false)
                ? choice.Count : 1);
        if (!IsCertain(end, choice)) return 0;
        int share = IsPerConductor(slot, choice, chosen: true) ? choice.Count : 1;
        double each = ampacities.Of(run, choice.Conductor).LimitAmps;
        bool mustBeWithin = !rules.AcceptsFuseOf(run) && (topology.IsAtBattery(end) || Significant.Exceeds(entering[run], each));
        double most = carried[run].Most / share;
        return FamiliesFor(end, carried[run].Continuous / share, most, each).Min(family =>
        {
            double wanted = topology.IsFedFromBothEnds(run) ? double.PositiveInfinity
                : ladders.At(end).SmallestCarrying(family, most) ?? double.PositiveInfinity;
            double largest = mustBeWithin ? LargestWithin(family, each) : family.RatingsAmps.Values[^1];
            return Ohms(run, family, Math.Max(Math.Min(wanted, largest), family.RatingsAmps.Values[0]));
        }) / share;
    }

    /// <summary>The families that the plan may come to for a current.</summary>
    private IEnumerable<FuseFamily> FamiliesFor(RunEnd end, double least, double most, double each) =>
        topology.IsFedFromBothEnds(end.Run)
            ? ladders.At(end).Between((Math.Min(least, each), each), (double.PositiveInfinity, each))
            : ladders.At(end).Between((least, each), (most, each));

    private bool IsCertain(RunEnd end, ConductorChoice choice) =>
        build.SlotAt(end) is { Refused: false } slot
        && (slot.MustBeFitted
            || topology.IsAtBattery(end)
            || (topology.IsRadial && end == topology.FedEndOf(end.Run)
                && Significant.Exceeds(entering[end.Run], ampacities.Of(end.Run, choice.Conductor).LimitAmps)));

    /// <summary>What the fuse at an end lets through at least; infinite where none can stand there.</summary>
    private double LeastTotalRating(RunEnd end)
    {
        int run = end.Run;
        FuseSlot slot = build.SlotAt(end);
        if (slot.RatingAmps is { } rating) return rating;
        if (slot.Refused) return double.PositiveInfinity;
        if (rules.AcceptsFuseOf(run)) return 0;
        return (build.Runs[run].GivenCount ?? mostParallel) > 1 ? carried[run].Continuous : LeastChosen(end);
    }

    /// <summary>The least rating that the plan may choose for a run of one conductor.</summary>
    private double LeastChosen(RunEnd end)
    {
        int run = end.Run;
        FuseLadder ladder = ladders.At(end);
        (double, double) beyond = (double.PositiveInfinity, double.PositiveInfinity);
        return ladder.Between((carried[run].Full, weakest[run]), beyond).Min(family =>
        {
            double largest = family.RatingsAmps.Values[^1];
            double continuous = family.SmallestCarrying(carried[run].Continuous) ?? largest;
            return Math.Max(continuous,
                Math.Min(ladder.SmallestCarrying(family, carried[run].Full) ?? largest, LargestWithin(family, weakest[run])));
        });
    }

    /// <summary>The largest rating within an ampacity; 0 where there is none.</summary>
    private static double LargestWithin(FuseFamily family, double amps) =>
        family.RatingsAmps.Values.LastOrDefault(value => !Significant.Exceeds(value, amps));

    /// <summary>Resistance of a fuse with its terminations.</summary>
    private double Ohms(int run, FuseFamily family, double rating) => family.Ohms(rating) + build.Runs[run].FuseTerminationOhms;

    private double LeastRating(RunEnd end, double amps) =>
        ladders.At(end).Families.Min(family => family.SmallestCarrying(amps))
            ?? ladders.At(end).Families.Max(family => family.RatingsAmps.Values[^1]);

    private static bool IsPerConductor(FuseSlot slot, ConductorChoice choice, bool chosen) =>
        choice.Count > 1 && (slot.PerConductor ?? chosen);
}
