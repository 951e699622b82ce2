using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>
/// What is certain of the fuses before a choice is made: the least they add, and which conductors none can guard.
/// </summary>
/// <remarks>
/// <para>A chosen fuse carries the lasting current, so its rating is at least the smallest that carries a floor of that; it is at
/// most the smallest that carries a ceiling of the full current, or what the conductor bears, or the least of all. Its resistance
/// is the permitted drop over its rating, so a ceiling of the rating is a floor of the resistance.</para>
/// <para>What enters a run on a tree passes every fuse before it; each of these carries the run's own current at least. A chosen
/// one is at least what a floor of the full current wants or the weakest candidate of its run bears.</para>
/// </remarks>
internal sealed class FuseFloors
{
    private readonly CompleteBuild build;
    private readonly SupplyShape shape;
    private readonly Ampacities ampacities;
    private readonly int mostParallel;
    private readonly ChoiceRules rules;
    private readonly double[] entering;
    private RunAmps[] carried = [];
    private double[] weakest = [];

    /// <summary>Prepares the floors for one build.</summary>
    /// <param name="build">The build.</param>
    /// <param name="shape">Its supply side.</param>
    /// <param name="ampacities">What its conductors may carry.</param>
    /// <param name="mostParallel">How many conductors may be laid in parallel.</param>
    /// <param name="rules">The rules that are to be kept; where one is not, nothing that follows from it is certain.</param>
    public FuseFloors(
        CompleteBuild build, SupplyShape shape, Ampacities ampacities, int mostParallel,
        ChoiceRules rules)
    {
        this.rules = rules;
        this.build = build;
        this.shape = shape;
        this.ampacities = ampacities;
        this.mostParallel = mostParallel;
        entering = new double[build.Runs.Count];
    }

    /// <summary>Takes what is proven of each run.</summary>
    /// <param name="amps">Its least currents.</param>
    /// <param name="weakestAmps">The least that one conductor of it bears.</param>
    /// <param name="settled">The conductors, where they are known, and with them where no fuse stands; nothing is then
    /// proven.</param>
    public void Take(RunAmps[] amps, double[] weakestAmps, ConductorChoice[]? settled = null)
    {
        carried = amps;
        weakest = weakestAmps;
        if (!shape.IsRadial) return;
        var at = new double[shape.NodeCount];
        foreach (int battery in shape.BatteryNodes) at[battery] = double.PositiveInfinity;
        foreach (int run in shape.Outwards)
        {
            bool fed = shape.IsFedAtFarEnd(run);
            entering[run] = at[shape.NodeAt(run, fed)];
            at[shape.NodeAt(run, !fed)] = Math.Min(Math.Min(entering[run], Passing(run, fed)), Passing(run, !fed));
        }

        double Passing(int run, bool far) =>
            settled is null || SlotOf(run, far).RatingAmps is not null || IsCertain(run, settled[run], SlotOf(run, far), far)
                ? LeastPassing(run, far)
                : double.PositiveInfinity;
    }

    /// <summary>Whether no fuse can guard a conductor in a run, whatever else is chosen.</summary>
    public bool CanGuard(int run, ConductorChoice choice, double lastingAmps) => build.Runs[run].Side is Side.Return
        || (CanGuard(run, choice, lastingAmps, far: false) && CanGuard(run, choice, lastingAmps, far: true));

    /// <summary>The least resistance that the fuses of a run have, in ohms.</summary>
    /// <param name="run">The run.</param>
    /// <param name="choice">Its conductors.</param>
    /// <param name="amps">The least lasting current, and the most that a fuse may have been chosen for.</param>
    public double LeastOhms(int run, ConductorChoice choice, (double Lasting, double Most) amps) =>
        build.Runs[run].Side is Side.Return
        ? 0
        : LeastOhms(run, choice, amps, far: false) + LeastOhms(run, choice, amps, far: true);

    /// <summary>The most resistance that the fuses of a run have while they are chosen, in ohms.</summary>
    /// <param name="run">The run.</param>
    /// <param name="choice">Its conductors.</param>
    /// <param name="fullAmps">The least full current with nothing lost, and the most that a fuse may have been chosen
    /// for.</param>
    public double MostOhms(int run, ConductorChoice choice, (double Least, double Most) fullAmps) =>
        build.Runs[run].Side is Side.Return
        ? 0
        : MostOhms(run, choice, fullAmps, far: false) + MostOhms(run, choice, fullAmps, far: true);

    /// <summary>The resistance that the fuses of a run have where all currents are what was taken, in ohms.</summary>
    public double LikelyOhms(int run, ConductorChoice choice) => build.Runs[run].Side is Side.Return
        ? 0
        : LikelyOhms(run, choice, far: false) + LikelyOhms(run, choice, far: true);

    private double LikelyOhms(int run, ConductorChoice choice, bool far)
    {
        FuseSlot slot = SlotOf(run, far);
        return slot.RatingAmps is not null || IsCertain(run, choice, slot, far)
            ? MostOhms(run, choice, (carried[run].Full, carried[run].Full), far)
            : 0;
    }

    private double MostOhms(int run, ConductorChoice choice, (double Least, double Most) fullAmps, bool far)
    {
        FuseSlot slot = SlotOf(run, far);
        if (slot.RatingAmps is not null) return LeastOhms(run, choice, (0, 0), far);
        if (slot.Refused) return 0;
        int share = IsPerConductor(slot, choice, chosen: true) ? choice.Count : 1;
        double each = ampacities.Of(run, choice.Conductor).LimitAmps;
        return FamiliesFor(run, slot, (fullAmps.Least / share, fullAmps.Most / share), each).Max(family =>
        {
            double borne = Borne(family, each);
            double wanted = CarryingHot(run, family, fullAmps.Least / share) ?? family.RatingsAmps.Values[^1];
            return Ohms(run, family, Math.Max(family.RatingsAmps.Values[0], Math.Min(wanted, borne)));
        }) / share;
    }

    private bool CanGuard(int run, ConductorChoice choice, double lastingAmps, bool far)
    {
        FuseSlot slot = SlotOf(run, far);
        bool atBattery = shape.IsAtBattery(run, far);
        if (!atBattery && (!shape.IsRadial || far != shape.IsFedAtFarEnd(run))) return true;
        double before = atBattery ? double.PositiveInfinity : entering[run];
        double each = ampacities.Of(run, choice.Conductor).LimitAmps;
        if (slot.RatingAmps is { } rating)
        {
            double passing = rating * (IsPerConductor(slot, choice, chosen: false) ? choice.Count : 1);
            double bearing = IsPerConductor(slot, choice, chosen: false) ? each * choice.Count : each;
            return !Significant.Exceeds(Math.Min(before, passing), bearing);
        }

        if (!Significant.Exceeds(before, each)) return true;
        if (slot.Refused) return double.IsInfinity(before);
        int share = IsPerConductor(slot, choice, chosen: true) ? choice.Count : 1;
        return !Significant.Exceeds(LeastRating(slot, lastingAmps / share), each);
    }

    private double LeastOhms(int run, ConductorChoice choice, (double Lasting, double Most) amps, bool far)
    {
        FuseSlot slot = SlotOf(run, far);
        if (slot.RatingAmps is { } given)
            return Ohms(run, FuseFamily.Of(slot.Family!.Value), given)
                / (IsPerConductor(slot, choice, chosen: false) ? choice.Count : 1);
        if (!IsCertain(run, choice, slot, far)) return 0;
        int share = IsPerConductor(slot, choice, chosen: true) ? choice.Count : 1;
        double each = ampacities.Of(run, choice.Conductor).LimitAmps;
        bool mustBeBorne = !rules.AcceptsFuseOf(run) && (shape.IsAtBattery(run, far) || Significant.Exceeds(entering[run], each));
        (double Lasting, double Most) shared = (amps.Lasting / share, amps.Most / share);
        return FamiliesFor(run, slot, shared, each)
            .Min(family => Ohms(run, family, MostRating(run, family, shared.Most, mustBeBorne ? each : null))) / share;
    }

    /// <summary>
    /// The families that the plan may come to: the stated one, or whichever of a blade and a strip the currents allow.
    /// </summary>
    private IEnumerable<FuseFamily> FamiliesFor(int run, FuseSlot slot, (double Lasting, double Most) amps, double each)
    {
        if (slot.Family is not null) return FamiliesOf(slot);
        FuseFamily blade = FuseFamily.Of(FuseFamilyName.BladeC), strip = FuseFamily.Of(FuseFamilyName.Anl);
        double small = build.Ruleset["fuse.blade-up-to"].Value;
        if (each < strip.RatingsAmps.Values[0] || CarryingHot(run, blade, amps.Most) <= small) return [blade];
        return CarryingHot(run, blade, amps.Lasting) is { } rating && rating <= small ? [blade, strip] : [strip];
    }

    private bool IsCertain(int run, ConductorChoice choice, FuseSlot slot, bool far) =>
        !slot.Refused
        && (slot.MustBeFitted
            || shape.IsAtBattery(run, far)
            || (shape.IsRadial && far == shape.IsFedAtFarEnd(run)
                && Significant.Exceeds(entering[run], ampacities.Of(run, choice.Conductor).LimitAmps)));

    /// <summary>The largest rating of a family that the plan may come to; see <see cref="FusePlan"/>.</summary>
    /// <param name="run">The run.</param>
    /// <param name="family">The family.</param>
    /// <param name="most">The most that it may have been chosen for.</param>
    /// <param name="bearing">What the conductor bears, where the fuse may not be larger; <c>null</c> where it may.</param>
    private double MostRating(int run, FuseFamily family, double most, double? bearing)
    {
        double largest = family.RatingsAmps.Values[^1];
        double wanted = double.IsInfinity(most) || shape.IsFedFromBothEnds(run)
            ? largest
            : CarryingHot(run, family, most) ?? largest;
        return Math.Max(bearing is { } amps ? Math.Min(wanted, Borne(family, amps)) : wanted, family.RatingsAmps.Values[0]);
    }

    /// <summary>What the fuse at an end lets through at least; infinite where none can stand there.</summary>
    private double LeastPassing(int run, bool far)
    {
        FuseSlot slot = SlotOf(run, far);
        if (slot.RatingAmps is { } rating) return rating;
        if (slot.Refused) return double.PositiveInfinity;
        if (rules.AcceptsFuseOf(run)) return 0;
        return (build.Runs[run].GivenCount ?? mostParallel) > 1 ? carried[run].Lasting : LeastChosen(run, slot);
    }

    /// <summary>The least rating that the plan may choose for a run of one conductor.</summary>
    private double LeastChosen(int run, FuseSlot slot)
    {
        FuseFamily strip = FuseFamily.Of(FuseFamilyName.Anl);
        IEnumerable<FuseFamily> families = slot.Family is null && weakest[run] >= strip.RatingsAmps.Values[0]
            ? FamiliesFor(run, slot, (carried[run].Full, double.PositiveInfinity), weakest[run])
            : FamiliesOf(slot);
        return families.Min(family =>
        {
            double largest = family.RatingsAmps.Values[^1];
            double lasting = family.SmallestCarrying(carried[run].Lasting) ?? largest;
            return Math.Max(
                lasting, Math.Min(CarryingHot(run, family, carried[run].Full) ?? largest, Borne(family, weakest[run])));
        });
    }

    /// <summary>The largest rating that a conductor bears; 0 where it bears none.</summary>
    private static double Borne(FuseFamily family, double amps) =>
        family.RatingsAmps.Values.LastOrDefault(value => !Significant.Exceeds(value, amps));

    /// <summary>The smallest rating that carries a current without end in the air of a run.</summary>
    private double? CarryingHot(int run, FuseFamily family, double amps) =>
        family.SmallestCarrying(amps / family.HotShareAt(build.Runs[run].AirCelsius));

    /// <summary>Resistance of a fuse with its terminations.</summary>
    private double Ohms(int run, FuseFamily family, double rating) => family.Ohms(rating) + build.Runs[run].FuseTerminationOhms;

    private static double LeastRating(FuseSlot slot, double amps) =>
        FamiliesOf(slot).Min(family => family.SmallestCarrying(amps))
            ?? FamiliesOf(slot).Max(family => family.RatingsAmps.Values[^1]);

    /// <summary>The families that a fuse which is left open may be of.</summary>
    public static IEnumerable<FuseFamily> FamiliesOf(FuseSlot slot) => slot.Family is { } stated
        ? [FuseFamily.Of(stated)]
        : [FuseFamily.Of(FuseFamilyName.BladeC), FuseFamily.Of(FuseFamilyName.Anl)];

    private static bool IsPerConductor(FuseSlot slot, ConductorChoice choice, bool chosen) =>
        choice.Count > 1 && (slot.PerConductor ?? chosen);

    private FuseSlot SlotOf(int run, bool far) => far ? build.Runs[run].Far : build.Runs[run].Near;
}
