using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Data;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Completion;

/// <summary>Fills in what is not stated of the runs, and adds a return for each load that has none.</summary>
internal sealed class RunCompletion
{
    private const string OwnCurve = "the part's own curve, as stated";

    private readonly Build build;
    private readonly PlaceNames names;
    private readonly SupplySetting setting;
    private readonly AssumptionList assumptions;
    private readonly Ruleset ruleset;
    private readonly TerminalLimits terminals;

    private RunCompletion(Build build, PlaceNames names, SupplySetting setting, AssumptionList assumptions)
    {
        this.build = build;
        this.names = names;
        this.setting = setting;
        this.assumptions = assumptions;
        ruleset = assumptions.Ruleset;
        terminals = new TerminalLimits(build, assumptions);
    }

    public static IReadOnlyList<CompleteRun> Complete(
        Build build, PlaceNames names, SupplySetting setting, AssumptionList assumptions)
    {
        var completion = new RunCompletion(build, names, setting, assumptions);
        Side[] sides = SideResolution.Resolve(build, names, []);
        List<CompleteRun> runs = [.. build.Runs.Select((run, index) => completion.Complete(run, sides[index], index))];
        runs.AddRange(completion.MissingReturns(sides));
        completion.NoteSurroundings(runs);
        return runs;
    }

    private CompleteRun Complete(Run run, Side side, int? index)
    {
        Route route = run.Route ?? RouteOf(run, index);
        double insulation = assumptions.Take(
            run.Conductor.InsulationCelsius, AssumptionKind.InsulationRating,
            new Target(Part.Conductor, index, Member.InsulationRating), ruleset.Heat.InsulationRating);
        (double Hottest, double Mean) air = AirAlong(run, route);
        if (run.Conductor is { IsLabelled: true, Size: { } gauge })
            assumptions.Note(new AssumedSize(
                AssumptionKind.LabelledGauge, new Target(Part.Conductor, index, Member.Size), gauge));
        Conductor? given = run.Conductor.Size is { } size
            ? Conductor.Of(size, run.Conductor.Material ?? MaterialFor(index))
            : null;
        return new CompleteRun
        {
            Id = run.Id,
            Index = index,
            From = run.From,
            To = run.To,
            Side = side,
            LengthMetres = run.LengthMetres,
            Route = route,
            AirCelsius = air.Hottest,
            MeanAirCelsius = air.Mean,
            Bundling = IsBundled(run, route) ? ruleset.Heat.LoomFactor.Value : 1,
            InsulationCelsius = insulation,
            JointOhms = assumptions.Take(
                run.JointOhms, AssumptionKind.JointResistance, new Target(Part.Run, index, Member.JointResistance),
                ruleset.Run.JointResistance),
            FuseTerminationOhms = run.JointOhms is null ? ruleset.Fuse.TerminationResistance.Value : 0,
            Isolator = run.Isolator is null ? null : IsolatorCompletion.Complete(run.Isolator, index, setting, assumptions),
            Given = given,
            GivenCount = run.Conductor.Count ?? (given is null ? null : 1),
            Wish = run.Conductor,
            Terminals = [.. terminals.On(run, index)],
            Near = SlotOf(run.Fuse, new Target(Part.Fuse, index)),
            Far = SlotOf(run.FarFuse, new Target(Part.FarFuse, index)),
        };
    }

    private bool IsBundled(Run run, Route route) => Significant.Exceeds(
        Math.Min(run.LengthMetres, run.BundledMetres ?? (route is Route.Loom ? run.LengthMetres : 0)),
        ruleset.Heat.BundleLength.Value);

    private FuseSlot SlotOf(FuseWish? wish, Target at)
    {
        FuseFamilyName? family = wish?.Family
            ?? (wish?.RatingAmps is { } rating ? FamilyOf(rating, at) : null);
        return new FuseSlot(
            at,
            wish is { Fitted: false },
            wish?.RatingAmps,
            wish is { Fitted: true },
            family,
            wish?.RatingAmps is null ? wish?.DistanceMetres : DistanceOf(wish, at),
            wish?.VoltageRatingVolts,
            wish?.InterruptingRatingAmps,
            wish?.PerConductor)
        {
            Band = wish is { OpeningTimes.Count: > 0, RatingAmps: not null } ? BandOf(wish.OpeningTimes, family!.Value) : null,
        };
    }

    private TimeCurrentBand BandOf(IReadOnlyList<OpeningTime> points, FuseFamilyName family) => new(
        [.. points.Select(point => new TimeCurrentPoint(
            point.ShareOfRating, point.FastestSeconds, point.SlowestSeconds, OwnCurve, "read"))],
        new SourcedNumber(1, OwnCurve, "read"),
        ruleset.FuseFamilies.Of(family).TimeCurrentBand.ArcingSeconds);

    private FuseFamilyName FamilyOf(double ratingAmps, Target at)
    {
        FuseFamily family = ruleset.FuseFamilies.UsualFor(ratingAmps);
        assumptions.Note(new AssumedWord(AssumptionKind.FuseFamily, at[Member.Family], family.Name));
        return family.Name;
    }

    private double DistanceOf(FuseWish wish, Target at) => assumptions.Take(
        wish.DistanceMetres, AssumptionKind.FuseDistance, at[Member.DistanceFromSource], ruleset.Fuse.MaxDistance);

    private Material MaterialFor(int? index)
    {
        bool isListed = build.Sizing.Materials.Count > 0;
        Material taken = isListed ? build.Sizing.Materials[0] : Material.Copper;
        assumptions.Note(new AssumedWord(
            isListed ? AssumptionKind.FirstMaterial : AssumptionKind.PlainMaterial,
            new Target(Part.Conductor, index, Member.Material), taken));
        return taken;
    }

    private Route RouteOf(Run run, int? index)
    {
        bool atEngine = run.EndsAt(PlaceNames.Engine);
        bool isInBay = atEngine || IsUnderBonnet(run.From) || IsUnderBonnet(run.To);
        Route route = isInBay ? Route.EngineBay : Route.Cabin;
        assumptions.Note(new AssumedRoute(
            atEngine ? AssumptionKind.RouteAtEngine : isInBay ? AssumptionKind.RouteFromEngineBay : AssumptionKind.Route,
            new Target(Part.Run, index, Member.Route), route, BayMetres(null, run)));
        return route;
    }

    private bool IsUnderBonnet(string place) =>
        names[place].Kind is PlaceKind.Charger || names[place] == (PlaceKind.Battery, setting.ChargingBattery);

    /// <summary>
    /// A stated route holds for the whole run unless it is stated too how much lies in the engine bay; a run of unstated route
    /// from the battery under the bonnet leaves the engine bay after a while.
    /// </summary>
    private (double Hottest, double Mean) AirAlong(Run run, Route route)
    {
        if (run.EngineBayMetres is null && (run.Route is not null || route is not Route.EngineBay))
            return (AirOn(route), AirOn(route));
        double share = BayMetres(run.EngineBayMetres, run) / run.LengthMetres;
        double rest = AirOn(route is Route.EngineBay ? Route.Cabin : route);
        return (
            share >= 1 ? AirOn(Route.EngineBay) : share > 0 ? Math.Max(AirOn(Route.EngineBay), rest) : rest,
            share * AirOn(Route.EngineBay) + (1 - share) * rest);
    }

    private double BayMetres(double? stated, Run run) =>
        Math.Min(run.LengthMetres, stated ?? ruleset.Run.EngineBayLength.Value);

    private double AirOn(Route route) => Surroundings.Celsius(route, build.Limits, ruleset);

    private IEnumerable<CompleteRun> MissingReturns(Side[] sides)
    {
        var returned = new HashSet<string>(StringComparer.Ordinal);
        for (int i = 0; i < build.Runs.Count; i++)
        {
            if (sides[i] is not Side.Return) continue;
            returned.Add(build.Runs[i].From);
            returned.Add(build.Runs[i].To);
        }

        foreach (Amplifier amplifier in build.Amplifiers)
        {
            if (returned.Contains(amplifier.Id)) continue;
            var run = new Run
            {
                Id = FreeId(amplifier.Id + "-return"),
                From = amplifier.Id,
                To = PlaceNames.Body,
                LengthMetres = ruleset.Run.ReturnLength.Value,
                Route = Route.Cabin,
            };
            assumptions.Note(new AssumedReturn(run.Id, amplifier.Id, ruleset.Run.ReturnLength));
            yield return Complete(run, Side.Return, null);
        }
    }

    private string FreeId(string wanted)
    {
        string id = wanted;
        for (int i = 2; build.Runs.Any(run => run.Id == id); i++) id = $"{wanted}-{i}";
        return id;
    }

    private void NoteSurroundings(List<CompleteRun> runs)
    {
        Note(Route.EngineBay, build.Limits.EngineBayCelsius, Member.EngineBayTemperature, ruleset.Heat.EngineBay);
        Note(Route.Cabin, build.Limits.CabinCelsius, Member.CabinTemperature, ruleset.Heat.Cabin);
        Note(Route.Underbody, build.Limits.UnderbodyCelsius, Member.UnderbodyTemperature, ruleset.Heat.Underbody);

        void Note(Route route, double? stated, Member member, Figure figure)
        {
            if (runs.Exists(run => run.Route == route || (route is Route.Cabin && run.Route is Route.Loom)))
                assumptions.Take(stated, AssumptionKind.Surroundings, Target.Of(Part.Limits, member), figure);
        }
    }
}
