namespace Cablewright.Engine.Builds;

/// <summary>What stands behind a place's name.</summary>
internal enum PlaceKind
{
    Junction,
    Battery,
    Amplifier,
    Body,
    Engine,
    Charger,
}

/// <summary>What a kind of place is.</summary>
internal static class PlaceKinds
{
    extension(PlaceKind kind)
    {
        /// <summary>Whether it is metal that grounds end at.</summary>
        public bool IsGround => kind is PlaceKind.Body or PlaceKind.Engine;
    }
}

/// <summary>What each name in a build stands for.</summary>
internal sealed class PlaceNames
{
    /// <summary>The vehicle's body.</summary>
    public const string Body = "body";

    /// <summary>The engine block, on which the alternator's case sits.</summary>
    public const string Engine = "engine";

    /// <summary>The battery that is assumed where the build lists none.</summary>
    public const string AssumedBattery = "battery";

    private readonly Dictionary<string, (PlaceKind Kind, int Index)> known =
        new(StringComparer.Ordinal) { [Body] = (PlaceKind.Body, 0), [Engine] = (PlaceKind.Engine, 0) };

    public PlaceNames(Build build)
    {
        IReadOnlyList<Battery> batteries = build.Vehicle.Batteries;
        if (batteries.Count == 0) known.TryAdd(AssumedBattery, (PlaceKind.Battery, 0));
        for (int i = 0; i < batteries.Count; i++) known.TryAdd(batteries[i].Id, (PlaceKind.Battery, i));
        for (int i = 0; i < build.Amplifiers.Count; i++) known.TryAdd(build.Amplifiers[i].Id, (PlaceKind.Amplifier, i));
        if (ChargingPlace.Stated(build) is { } at) known.TryAdd(at, (PlaceKind.Charger, 0));
    }

    /// <summary>The batteries' ids, or that of the one that is assumed where none is listed.</summary>
    public static IReadOnlyList<string> BatteriesOf(Build build) => build.Vehicle.Batteries.Count == 0
        ? [AssumedBattery]
        : [.. build.Vehicle.Batteries.Select(battery => battery.Id)];

    /// <summary>The names that are not junctions.</summary>
    public IEnumerable<string> Named => known.Keys;

    /// <summary>What a name stands for; any name that is nothing else is a junction.</summary>
    public (PlaceKind Kind, int Index) this[string name] => known.GetValueOrDefault(name, (PlaceKind.Junction, -1));

    public bool IsJunction(string name) => !known.ContainsKey(name);
}
