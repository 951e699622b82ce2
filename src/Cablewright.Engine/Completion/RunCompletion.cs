using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Data;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Text;
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
    private readonly Phrase phrase;
    private readonly Ruleset ruleset;
    private readonly TerminalLimits terminals;
    private readonly double engineBayCelsius;
    private readonly double cabinCelsius;
    private readonly double underbodyCelsius;

    private RunCompletion(Build build, PlaceNames names, SupplySetting setting, AssumptionList assumptions, Phrase phrase)
    {
        this.build = build;
        this.names = names;
        this.setting = setting;
        this.assumptions = assumptions;
        this.phrase = phrase;
        ruleset = assumptions.Ruleset;
        terminals = new TerminalLimits(build, assumptions);
        engineBayCelsius = build.Limits.EngineBayCelsius ?? ruleset.Heat.EngineBay.Value;
        cabinCelsius = build.Limits.CabinCelsius ?? ruleset.Heat.Cabin.Value;
        underbodyCelsius = build.Limits.UnderbodyCelsius ?? ruleset.Heat.Underbody.Value;
    }

    public static IReadOnlyList<CompleteRun> Complete(
        Build build, PlaceNames names, SupplySetting setting, AssumptionList assumptions, Phrase phrase)
    {
        var completion = new RunCompletion(build, names, setting, assumptions, phrase);
        Side[] sides = SideResolution.Resolve(build, names, []);
        List<CompleteRun> runs = [.. build.Runs.Select((run, index) => completion.Complete(run, sides[index], $"/runs/{index}"))];
        runs.AddRange(completion.MissingReturns(sides));
        completion.NoteSurroundings(runs);
        return runs;
    }

    private CompleteRun Complete(Run run, Side side, string pointer)
    {
        Route route = run.Route ?? RouteOf(run, pointer);
        double insulation = assumptions.Take(
            run.Conductor.InsulationCelsius, pointer, "/conductor/insulationRating", ruleset.Heat.InsulationRating,
            "the insulation's rating is not stated");
        (double Hottest, double Mean) air = AirAlong(run, route);
        Conductor? given = run.Conductor.Size is { } size
            ? Conductor.Of(size, run.Conductor.Material ?? MaterialFor(pointer))
            : null;
        return new CompleteRun
        {
            Id = run.Id,
            Pointer = pointer,
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
                run.JointOhms, pointer, "/jointResistance", ruleset.Run.JointResistance, "its joints are not stated"),
            FuseTerminationOhms = run.JointOhms is null ? ruleset.Fuse.TerminationResistance.Value : 0,
            Isolator = run.Isolator is null ? null : IsolatorCompletion.Complete(run.Isolator, pointer, setting, assumptions),
            Given = given,
            GivenCount = run.Conductor.Count ?? (given is null ? null : 1),
            Wish = run.Conductor,
            Terminals = [.. terminals.On(run, pointer)],
            Near = SlotOf(run.Fuse, pointer, "/fuse"),
            Far = SlotOf(run.FarFuse, pointer, "/farFuse"),
        };
    }

    private bool IsBundled(Run run, Route route) => Significant.Exceeds(
        Math.Min(run.LengthMetres, run.BundledMetres ?? (route is Route.Loom ? run.LengthMetres : 0)),
        ruleset.Heat.BundleLength.Value);

    private FuseSlot SlotOf(FuseWish? wish, string pointer, string member)
    {
        FuseFamilyName? family = wish?.Family
            ?? (wish?.RatingAmps is { } rating ? FamilyOf(rating, pointer + member) : null);
        return new FuseSlot(
            pointer,
            member,
            wish is { Fitted: false },
            wish?.RatingAmps,
            wish is { Fitted: true },
            family,
            wish?.RatingAmps is null ? wish?.DistanceMetres : DistanceOf(wish, pointer, member),
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

    private FuseFamilyName FamilyOf(double ratingAmps, string pointer)
    {
        FuseFamily family = ruleset.FuseFamilies.UsualFor(ratingAmps);
        assumptions.Note(
            pointer + "/family",
            family.Name.Word(),
            "a rating is stated without a family",
            "trade practice (common practice, no source)");
        return family.Name;
    }

    private double DistanceOf(FuseWish wish, string pointer, string member) => wish.DistanceMetres ?? assumptions.Take(
        null, pointer + member, "/distanceFromSource", ruleset.Fuse.MaxDistance,
        "its place is not stated; it is taken to be at the limit, so measure it");

    private Material MaterialFor(string pointer)
    {
        Material taken = build.Sizing.Materials.Count > 0 ? build.Sizing.Materials[0] : Material.Copper;
        assumptions.Note(
            pointer + "/conductor/material", TradeWords.Word(taken), "a size is stated without a material",
            build.Sizing.Materials.Count > 0
                ? "the first of the build's own list"
                : "copper is what a plain size means in the trade");
        return taken;
    }

    private Route RouteOf(Run run, string pointer)
    {
        bool atFirstBattery = IsUnderBonnet(run.From) || IsUnderBonnet(run.To);
        Route route = atFirstBattery ? Route.EngineBay : Route.Cabin;
        assumptions.Note(
            pointer + "/route", TradeWords.Word(route),
            atFirstBattery
                ? $"it starts at the battery that the alternator charges, so {phrase.Length(
                    BayMetres(null, run))} of it are taken to "
                    + "lie in the engine bay and the rest in the cabin"
                : "it is not stated where it lies",
            "the hottest part of a run decides what it may carry");
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
            share >= 1 ? engineBayCelsius : share > 0 ? Math.Max(engineBayCelsius, rest) : rest,
            share * engineBayCelsius + (1 - share) * rest);
    }

    private double BayMetres(double? stated, Run run) =>
        Math.Min(run.LengthMetres, stated ?? ruleset.Run.EngineBayLength.Value);

    private double AirOn(Route route) => route switch
    {
        Route.EngineBay => engineBayCelsius,
        Route.Underbody => underbodyCelsius,
        _ => cabinCelsius,
    };

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
            assumptions.Note(
                "/runs/-", $"\"{run.Id}\" from \"{amplifier.Id}\" to \"body\", {phrase.Length(run.LengthMetres)}",
                $"no return is stated for amplifier \"{amplifier.Id}\"", ruleset.Run.ReturnLength.Citation);
            yield return Complete(run, Side.Return, "/runs/-");
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
        Note(Route.EngineBay, build.Limits.EngineBayCelsius, "/limits/engineBayTemperature", ruleset.Heat.EngineBay);
        Note(Route.Cabin, build.Limits.CabinCelsius, "/limits/cabinTemperature", ruleset.Heat.Cabin);
        Note(Route.Underbody, build.Limits.UnderbodyCelsius, "/limits/underbodyTemperature", ruleset.Heat.Underbody);

        void Note(Route route, double? stated, string pointer, Figure figure)
        {
            if (runs.Exists(run => run.Route == route || (route is Route.Cabin && run.Route is Route.Loom)))
                assumptions.Take(stated, pointer, figure, "the temperature of these surroundings is not stated");
        }
    }
}
