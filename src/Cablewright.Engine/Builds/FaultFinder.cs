using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>Finds what makes it impossible to say what a build means.</summary>
internal sealed class FaultFinder
{
    private const int Several = -1;

    private readonly Build build;
    private readonly PlaceNames names;
    private readonly List<BuildFault> faults = [];

    private FaultFinder(Build build)
    {
        this.build = build;
        names = new PlaceNames(build);
    }

    /// <summary>The codes of all that it can find.</summary>
    public static IReadOnlyList<CodeMeaning> Codes { get; } = CodeMeaning.In(typeof(BuildFaultCodes));

    /// <summary>What makes it impossible to say what the build means; empty for a build that can be assessed.</summary>
    /// <remarks>Only ids, places, sides and which kinds of figures are stated matter here, never their values.</remarks>
    /// <param name="build">The build.</param>
    public static IReadOnlyList<BuildFault> Find(Build build)
    {
        var finder = new FaultFinder(build);
        finder.FindNameFaults();
        finder.FindRunFaults();
        finder.FindDrawFaults();
        finder.FindChargingFaults();
        Side[] sides = SideResolution.Resolve(build, finder.names, finder.faults);
        finder.FindLooseEnds();
        if (finder.faults.Count == 0) finder.FindReachFaults(sides);
        if (finder.faults.Count == 0) IsolatorFaults.Find(build, finder.names, sides, finder.faults);
        return finder.faults;
    }

    private void Fault(BuildFaultKind kind, Target at, string id = "") => faults.Add(new BuildFault(kind, at, id));

    private void FindNameFaults()
    {
        IReadOnlyList<Battery> batteries = build.Vehicle.Batteries;
        var places = new Dictionary<string, Target>(StringComparer.Ordinal)
        {
            [PlaceNames.Body] = new(Part.Body),
            [PlaceNames.Engine] = new(Part.Vehicle),
        };
        if (batteries.Count == 0) places.Add(PlaceNames.AssumedBattery, new Target(Part.Battery));
        for (int i = 0; i < batteries.Count; i++) TakeName(places, batteries[i].Id, new Target(Part.Battery, i));
        for (int i = 0; i < build.Amplifiers.Count; i++) TakeName(places, build.Amplifiers[i].Id, new Target(Part.Amplifier, i));
        for (int i = 0; i < build.Junctions.Count; i++) TakeName(places, build.Junctions[i].Id, new Target(Part.Junction, i));
        var runs = new Dictionary<string, Target>(build.Runs.Count, StringComparer.Ordinal);
        for (int i = 0; i < build.Runs.Count; i++) TakeName(runs, build.Runs[i].Id, new Target(Part.Run, i));
    }

    private void TakeName(Dictionary<string, Target> taken, string id, Target owner)
    {
        if (taken.TryAdd(id, owner)) return;
        BuildFaultKind kind = taken[id] switch
        {
            { Index: not null } => BuildFaultKind.IdTaken,
            { Part: Part.Body } => BuildFaultKind.IdOfBody,
            { Part: Part.Vehicle } => BuildFaultKind.IdOfEngine,
            _ => BuildFaultKind.IdOfAssumedBattery,
        };
        faults.Add(new BuildFault(kind, owner[Member.Id], id) { TakenBy = taken[id][Member.Id] });
    }

    private void FindRunFaults()
    {
        for (int i = 0; i < build.Runs.Count; i++)
        {
            Run run = build.Runs[i];
            if (run.From != run.To) continue;
            faults.Add(new BuildFault(BuildFaultKind.RunEndsEqual, new Target(Part.Run, i, Member.To), run.Id)
            {
                Place = run.From,
            });
        }
    }

    private void FindDrawFaults()
    {
        if (build.Amplifiers.Count == 0) Fault(BuildFaultKind.AmplifiersNone, Target.Of(Part.Build, Member.Amplifiers));
        for (int i = 0; i < build.Amplifiers.Count; i++)
        {
            if (build.Amplifiers[i] is { RatedOutputWatts: null, RatedInputAmps: null, OnBoardFuseAmps: null })
                Fault(BuildFaultKind.AmplifierDrawUnknown, new Target(Part.Amplifier, i), build.Amplifiers[i].Id);
        }
    }

    private void FindChargingFaults()
    {
        Vehicle vehicle = build.Vehicle;
        var charger = new Target(vehicle.Converter is null ? Part.Alternator : Part.Converter);
        if (vehicle is { Converter: not null, Alternator: not null }) Fault(BuildFaultKind.VehicleTwoChargers, charger);
        if (ChargingPlace.Stated(build) is not { } at) return;
        (int battery, string? ownPlace) = ChargingPlace.Of(build, names);
        if (battery < 0 || names[at].Kind is PlaceKind.Amplifier || names[at].Kind.IsGround)
            faults.Add(new BuildFault(BuildFaultKind.ChargerPlaceUnknown, charger[Member.At]) { Place = at });
        else if (ownPlace is not null && vehicle is { Alternator.RatedAmps: null, Converter: null })
            faults.Add(new BuildFault(BuildFaultKind.AlternatorRatingUnknown, charger) { Place = at });
    }

    /// <summary>A junction that only one run knows joins nothing: most often a misspelt name.</summary>
    private void FindLooseEnds()
    {
        Dictionary<string, int> ends = EndsAtJunctions();
        foreach ((string place, int end) in ends)
        {
            if (end == Several) continue;
            string? near = NearestWord.Of(place, names.Named.Concat(ends.Keys.Where(other => other != place)));
            faults.Add(new BuildFault(
                BuildFaultKind.PlaceJoinsNothing,
                new Target(Part.Run, end / 2, end % 2 == 0 ? Member.From : Member.To),
                build.Runs[end / 2].Id)
            {
                Place = place,
                Nearest = near,
            });
        }

        for (int i = 0; i < build.Junctions.Count; i++)
        {
            string id = build.Junctions[i].Id;
            if (ends.ContainsKey(id) || names[id].Kind is PlaceKind.Charger) continue;
            Fault(BuildFaultKind.JunctionUnnamed, new Target(Part.Junction, i, Member.Id), id);
        }
    }

    /// <summary>
    /// The one end at each junction, 2 n for the start of run n and 2 n + 1 for its end, or <see cref="Several"/>.
    /// </summary>
    private Dictionary<string, int> EndsAtJunctions()
    {
        var ends = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int end = 0; end < 2 * build.Runs.Count; end++)
        {
            Run run = build.Runs[end / 2];
            string place = end % 2 == 0 ? run.From : run.To;
            if (names.IsJunction(place) && !ends.TryAdd(place, end)) ends[place] = Several;
        }

        return ends;
    }

    private void FindReachFaults(Side[] sides)
    {
        var supply = new Reach(build, sides, Side.Supply);
        var back = new Reach(build, sides, Side.Return);
        back.Mark(PlaceNames.Body);
        foreach (string battery in PlaceNames.BatteriesOf(build))
        {
            supply.Mark(battery);
            back.Mark(battery);
        }

        if (back.Touches(PlaceNames.Engine) && !IsEngineJoined(sides))
        {
            FindEngineFault();
            back.Mark(PlaceNames.Engine);
        }

        for (int i = 0; i < build.Amplifiers.Count; i++)
        {
            string id = build.Amplifiers[i].Id;
            if (!supply.Contains(id))
                faults.Add(new BuildFault(BuildFaultKind.AmplifierNoSupply, new Target(Part.Amplifier, i), id)
                {
                    Others = PlaceNames.BatteriesOf(build),
                });
            else if (back.Touches(id) && !back.Contains(id))
                Fault(BuildFaultKind.AmplifierNoReturn, new Target(Part.Amplifier, i), id);
        }

        for (int i = 0; i < build.Runs.Count; i++)
        {
            Reach reach = sides[i] is Side.Supply ? supply : back;
            if (!reach.Contains(build.Runs[i].From))
                Fault(BuildFaultKind.RunNotConnected, new Target(Part.Run, i), build.Runs[i].Id);
        }

        for (int i = 0; i < build.Vehicle.Capacitors.Count; i++)
        {
            string at = build.Vehicle.Capacitors[i].At;
            if (!supply.Contains(at))
                faults.Add(new BuildFault(BuildFaultKind.CapacitorPlaceUnknown, new Target(Part.Capacitor, i, Member.At))
                {
                    Place = at,
                });
        }

        for (int i = 0; i < build.Vehicle.Batteries.Count; i++)
        {
            string id = build.Vehicle.Batteries[i].Id;
            if (!supply.Touches(id)) Fault(BuildFaultKind.BatteryNotConnected, new Target(Part.Battery, i), id);
        }
    }

    /// <summary>Whether returns lead from the engine to the body or a battery; over an amplifier's terminal none does.</summary>
    private bool IsEngineJoined(Side[] sides)
    {
        int[] wires = [.. Enumerable.Range(0, sides.Length).Where(run =>
            names[build.Runs[run].From].Kind is not PlaceKind.Amplifier
            && names[build.Runs[run].To].Kind is not PlaceKind.Amplifier)];
        var joined = new Reach(
            build with { Runs = [.. wires.Select(run => build.Runs[run])] }, [.. wires.Select(run => sides[run])], Side.Return);
        joined.Mark(PlaceNames.Body);
        foreach (string battery in PlaceNames.BatteriesOf(build)) joined.Mark(battery);
        return joined.Contains(PlaceNames.Engine);
    }

    /// <summary>The fault is told at the first run that names the engine.</summary>
    private void FindEngineFault()
    {
        int run = 0;
        while (!build.Runs[run].EndsAt(PlaceNames.Engine)) run++;
        Member end = build.Runs[run].From == PlaceNames.Engine ? Member.From : Member.To;
        Fault(BuildFaultKind.EngineNotConnected, new Target(Part.Run, run, end), build.Runs[run].Id);
    }
}
