using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>Finds what makes it impossible to say what a build means.</summary>
public sealed class FaultFinder
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

    private void Fault(string pointer, string code, string detail, string accepted) =>
        faults.Add(new BuildFault(pointer, code, detail, accepted));

    private void FindNameFaults()
    {
        IReadOnlyList<Battery> batteries = build.Vehicle.Batteries;
        var places = new Dictionary<string, Owner>(StringComparer.Ordinal) { [PlaceNames.Body] = new("the vehicle's body") };
        if (batteries.Count == 0)
            places.Add(PlaceNames.AssumedBattery, new Owner("the battery that is assumed where none is listed"));
        for (int i = 0; i < batteries.Count; i++) TakeName(places, batteries[i].Id, new Owner("/vehicle/batteries", i));
        for (int i = 0; i < build.Amplifiers.Count; i++) TakeName(places, build.Amplifiers[i].Id, new Owner("/amplifiers", i));
        for (int i = 0; i < build.Junctions.Count; i++) TakeName(places, build.Junctions[i].Id, new Owner("/junctions", i));
        var runs = new Dictionary<string, Owner>(build.Runs.Count, StringComparer.Ordinal);
        for (int i = 0; i < build.Runs.Count; i++) TakeName(runs, build.Runs[i].Id, new Owner("/runs", i));
    }

    private void TakeName(Dictionary<string, Owner> taken, string id, Owner owner)
    {
        if (taken.TryAdd(id, owner)) return;
        Fault(owner.ToString(), BuildFaultCodes.IdTaken, $"The id \"{id}\" is already taken by {taken[id]}.",
            "an id that nothing else has");
    }

    private void FindRunFaults()
    {
        for (int i = 0; i < build.Runs.Count; i++)
        {
            Run run = build.Runs[i];
            if (run.From == run.To)
                Fault(
                    $"/runs/{i}/to",
                    BuildFaultCodes.RunEndsEqual,
                    $"Run \"{run.Id}\" starts and ends at \"{run.From}\".",
                    "two different places");
        }
    }

    private void FindDrawFaults()
    {
        if (build.Amplifiers.Count == 0)
            Fault("/amplifiers", BuildFaultCodes.AmplifiersNone, "There is no amplifier.", "at least one amplifier");
        for (int i = 0; i < build.Amplifiers.Count; i++)
        {
            Amplifier amplifier = build.Amplifiers[i];
            if (amplifier.RatedOutputWatts is null && amplifier.RatedInputAmps is null && amplifier.OnBoardFuseAmps is null)
            {
                Fault(
                    $"/amplifiers/{i}", BuildFaultCodes.AmplifierDrawUnknown,
                        $"Nothing says what amplifier \"{amplifier.Id}\" draws.",
                    "at least one of \"ratedOutput\", \"ratedInputCurrent\" and \"fuse\"");
            }
        }
    }

    private void FindChargingFaults()
    {
        Vehicle vehicle = build.Vehicle;
        string pointer = vehicle.Converter is null ? "/vehicle/alternator" : "/vehicle/converter";
        if (vehicle is { Converter: not null, Alternator: not null })
            Fault(
                "/vehicle/converter", BuildFaultCodes.VehicleTwoChargers,
                    "The vehicle has an alternator and a converter in its place.",
                "one of the two");
        if (ChargingPlace.Stated(build) is not { } at) return;
        (int battery, string? ownPlace) = ChargingPlace.Of(build, names);
        if (battery < 0 || names[at].Kind is PlaceKind.Amplifier or PlaceKind.Body)
            Fault(
                pointer + "/at",
                BuildFaultCodes.AlternatorPlaceUnknown,
                $"It stands at \"{at}\", which is no battery and no place from which supply runs lead to one.",
                "the id of a battery, or a place that a supply run joins to a battery");
        else if (ownPlace is not null && vehicle is { Alternator.RatedAmps: null, Converter: null })
            Fault(
                pointer, BuildFaultCodes.AlternatorRatingUnknown,
                $"The alternator stands at its own place \"{at}\", and nothing says what its cable must carry.",
                "\"ratedCurrent\"");
    }

    /// <summary>A junction that only one run knows joins nothing: most often a misspelt name.</summary>
    private void FindLooseEnds()
    {
        Dictionary<string, int> ends = EndsAtJunctions();
        foreach ((string place, int end) in ends)
        {
            if (end == Several) continue;
            string? near = NearestWord.Of(place, names.Named.Concat(ends.Keys.Where(other => other != place)));
            Fault(
                $"/runs/{end / 2}/{(end % 2 == 0 ? "from" : "to")}", BuildFaultCodes.PlaceJoinsNothing,
                $"Nothing else is connected to \"{place}\", which is no battery and no amplifier."
                    + (near is null ? "" : $" Did you mean \"{near}\"?"),
                "the id of a battery or amplifier, \"body\", or a junction that another run names too");
        }

        for (int i = 0; i < build.Junctions.Count; i++)
        {
            if (ends.ContainsKey(build.Junctions[i].Id) || names[build.Junctions[i].Id].Kind is PlaceKind.Charger) continue;
            Fault(
                $"/junctions/{i}/id",
                BuildFaultCodes.PlaceJoinsNothing,
                $"No run names the junction \"{build.Junctions[i].Id}\".",
                "a junction that runs name");
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

        for (int i = 0; i < build.Amplifiers.Count; i++)
        {
            string id = build.Amplifiers[i].Id;
            if (!supply.Contains(id))
                Fault(
                    $"/amplifiers/{i}",
                    BuildFaultCodes.AmplifierNoSupply,
                    $"No supply run leads from a battery to amplifier \"{id}\"; "
                    + "a run that starts at an amplifier counts as its return.",
                    $"runs from a battery ({string.Join(", ", PlaceNames.BatteriesOf(build))}) towards \"{id}\", "
                    + "or \"side\": \"supply\" on one drawn the other way");
            else if (back.Touches(id) && !back.Contains(id))
                Fault(
                    $"/amplifiers/{i}",
                    BuildFaultCodes.AmplifierNoReturn,
                    $"The return runs of amplifier \"{id}\" lead neither to the body nor to a battery.",
                    "return runs to \"body\" or to a battery");
        }

        for (int i = 0; i < build.Runs.Count; i++)
        {
            Reach reach = sides[i] is Side.Supply ? supply : back;
            if (!reach.Contains(build.Runs[i].From))
                Fault(
                    $"/runs/{i}",
                    BuildFaultCodes.RunNotConnected,
                    $"Run \"{build.Runs[i].Id}\" is connected to no battery.",
                    "runs that lead to a battery");
        }

        for (int i = 0; i < build.Vehicle.Capacitors.Count; i++)
        {
            string at = build.Vehicle.Capacitors[i].At;
            if (!supply.Contains(at))
                Fault(
                    $"/vehicle/capacitors/{i}/at",
                    BuildFaultCodes.CapacitorPlaceUnknown,
                    $"No supply run leads to \"{at}\", where the capacitor is connected.",
                    "a battery, an amplifier or a junction of the supply side");
        }

        for (int i = 0; i < build.Vehicle.Batteries.Count; i++)
        {
            string id = build.Vehicle.Batteries[i].Id;
            if (!supply.Touches(id))
                Fault(
                    $"/vehicle/batteries/{i}",
                    BuildFaultCodes.BatteryNotConnected,
                    $"No supply run touches battery \"{id}\".",
                    $"a run from or to \"{id}\", or no such battery");
        }
    }

    /// <summary>What has a name: a thing of a list, or something that has no pointer.</summary>
    private readonly record struct Owner(string Where, int Index = -1)
    {
        public override string ToString() => Index < 0 ? Where : $"{Where}/{Index}/id";
    }
}
