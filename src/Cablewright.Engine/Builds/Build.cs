using Cablewright.Engine.Conductors;
using Cablewright.Engine.Protection;

namespace Cablewright.Engine.Builds;

/// <summary>
/// What the caller has, wishes, or leaves open, in SI units. A member that is <c>null</c> was left out: a conductor or a fuse
/// is then chosen, any other value is taken from the ruleset and listed among the assumptions.
/// </summary>
public sealed record Build
{
    /// <summary>A name for people; it changes no result.</summary>
    public string? Name { get; init; }

    /// <summary>The units in which the answer's sentences are written.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>The vehicle's electrical supply.</summary>
    public Vehicle Vehicle { get; init; } = new();

    /// <summary>The loads, 1 to 64.</summary>
    public IReadOnlyList<Amplifier> Amplifiers { get; init; } = [];

    /// <summary>
    /// Facts about junctions, where there are any to state. A junction that is only named by runs needs no entry.
    /// </summary>
    public IReadOnlyList<Junction> Junctions { get; init; } = [];

    /// <summary>The conductors between places, 1 to 512.</summary>
    public IReadOnlyList<Run> Runs { get; init; } = [];

    /// <summary>The caller's own limits.</summary>
    public Limits Limits { get; init; } = new();

    /// <summary>What may be chosen from where something is left open.</summary>
    public SizingWishes Sizing { get; init; } = new();
}

/// <summary>The vehicle's electrical supply.</summary>
public sealed record Vehicle
{
    /// <summary>The voltage at the battery that the alternator charges, engine running, in volts.</summary>
    public double? ChargingVolts { get; init; }

    /// <summary>The alternator, or the converter in its place.</summary>
    public Alternator? Alternator { get; init; }

    /// <summary>What the vehicle itself draws, in amperes.</summary>
    public double? BaseLoadAmps { get; init; }

    /// <summary>
    /// The batteries; the first stands at the alternator unless the alternator says otherwise. Empty: one is assumed.
    /// </summary>
    public IReadOnlyList<Battery> Batteries { get; init; } = [];

    /// <summary>The resistance of the body between the loads' ground points and a battery's strap, in ohms.</summary>
    public double? BodyReturnOhms { get; init; }
}

/// <summary>The alternator's figures.</summary>
public sealed record Alternator
{
    /// <summary>Rated output current, cold, at full speed, in amperes.</summary>
    public double? RatedAmps { get; init; }

    /// <summary>Output current at idle, in amperes.</summary>
    public double? IdleAmps { get; init; }

    /// <summary>What share of the rated current is left when hot, 0 to 1.</summary>
    public double? HotFactor { get; init; }

    /// <summary>The id of the battery that it charges.</summary>
    public string? At { get; init; }
}

/// <summary>One battery.</summary>
public sealed record Battery
{
    /// <summary>The battery's place name.</summary>
    public required string Id { get; init; }

    /// <summary>What it is made of.</summary>
    public Chemistry? Chemistry { get; init; }

    /// <summary>Capacity at the 20-hour rate, in ampere-hours.</summary>
    public double? CapacityAmpHours { get; init; }

    /// <summary>Cold-cranking current (SAE J537), in amperes.</summary>
    public double? ColdCrankingAmps { get; init; }

    /// <summary>Internal resistance, in ohms.</summary>
    public double? InternalOhms { get; init; }
}

/// <summary>One load. At least one of rated output, rated input current and on-board fuse is stated.</summary>
public sealed record Amplifier
{
    /// <summary>The amplifier's place name.</summary>
    public required string Id { get; init; }

    /// <summary>Rated output of all channels together, in watts.</summary>
    public double? RatedOutputWatts { get; init; }

    /// <summary>Input current at rated output as its maker states it, in amperes.</summary>
    public double? RatedInputAmps { get; init; }

    /// <summary>The sum of the fuses on the amplifier itself, in amperes.</summary>
    public double? OnBoardFuseAmps { get; init; }

    /// <summary>The class of its output stage.</summary>
    public AmplifierClass? Class { get; init; }

    /// <summary>Output over input power at rated output, 0 to 1.</summary>
    public double? Efficiency { get; init; }

    /// <summary>How its converter treats a falling supply.</summary>
    public PowerSupply? PowerSupply { get; init; }

    /// <summary>What it plays.</summary>
    public Programme? Programme { get; init; }

    /// <summary>Crest factor of the programme at clip onset, in decibels; in place of <see cref="Programme"/>.</summary>
    public double? CrestFactorDecibels { get; init; }

    /// <summary>The largest conductor that its terminals accept.</summary>
    public ConductorSize? LargestConductor { get; init; }
}

/// <summary>A distribution block or bus bar about which something is known.</summary>
public sealed record Junction
{
    /// <summary>The junction's place name, as the runs use it.</summary>
    public required string Id { get; init; }

    /// <summary>The largest conductor that its terminals accept.</summary>
    public ConductorSize? LargestConductor { get; init; }
}

/// <summary>A conductor, or several in parallel, between two places.</summary>
public sealed record Run
{
    /// <summary>The run's own name.</summary>
    public required string Id { get; init; }

    /// <summary>The place where it starts and where its fuse stands.</summary>
    public required string From { get; init; }

    /// <summary>The place where it ends.</summary>
    public required string To { get; init; }

    /// <summary>Supply or return, where the places do not tell.</summary>
    public Side? Side { get; init; }

    /// <summary>Length of the conductor, in metres, more than 0.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Where it lies.</summary>
    public Route? Route { get; init; }

    /// <summary>What is known of the conductor; its size may be left out.</summary>
    public ConductorWish Conductor { get; init; } = new();

    /// <summary>The fuse at <see cref="From"/>; <c>null</c> where it was left out.</summary>
    public FuseWish? Fuse { get; init; }

    /// <summary>The fuse at <see cref="To"/>, for a run fed from both ends; <c>null</c> where it was left out.</summary>
    public FuseWish? FarFuse { get; init; }

    /// <summary>Resistance of the run's joints and terminals together, in ohms.</summary>
    public double? JointOhms { get; init; }
}

/// <summary>What is known of a run's conductor. Without a size it is open, and what is stated restricts the choice.</summary>
public sealed record ConductorWish
{
    /// <summary>The size.</summary>
    public ConductorSize? Size { get; init; }

    /// <summary>The metal.</summary>
    public Material? Material { get; init; }

    /// <summary>Temperature rating of the insulation, in degrees Celsius, 60 to 125.</summary>
    public double? InsulationCelsius { get; init; }

    /// <summary>How many lie in parallel, 1 to 8.</summary>
    public int? Count { get; init; }
}

/// <summary>What is known of a fuse. Without a rating it is open.</summary>
public sealed record FuseWish
{
    /// <summary><c>false</c>: there is none, and none shall be chosen.</summary>
    public bool Fitted { get; init; } = true;

    /// <summary>Rated current, in amperes.</summary>
    public double? RatingAmps { get; init; }

    /// <summary>The family it belongs to.</summary>
    public FuseFamilyName? Family { get; init; }

    /// <summary>Length of conductor between the end of the run where the fuse stands and the fuse, in metres.</summary>
    public double? DistanceMetres { get; init; }

    /// <summary>The part's own voltage rating, in volts.</summary>
    public double? VoltageRatingVolts { get; init; }

    /// <summary>The part's own interrupting rating, in amperes.</summary>
    public double? InterruptingRatingAmps { get; init; }

    /// <summary>Each conductor of a parallel run has a fuse of this rating of its own.</summary>
    public bool? PerConductor { get; init; }

    /// <summary>The largest conductor that its holder accepts.</summary>
    public ConductorSize? LargestConductor { get; init; }
}

/// <summary>The caller's own limits.</summary>
public sealed record Limits
{
    /// <summary>Largest permitted drop from battery to amplifier and back, in volts; hard.</summary>
    public double? MaxDropVolts { get; init; }

    /// <summary>The same as a fraction of the charging voltage, 0 to 1; hard.</summary>
    public double? MaxDropFraction { get; init; }

    /// <summary>Temperature of the air in the engine bay, in degrees Celsius.</summary>
    public double? EngineBayCelsius { get; init; }

    /// <summary>Temperature of the air in the cabin, in degrees Celsius.</summary>
    public double? CabinCelsius { get; init; }

    /// <summary>Temperature of the air below the floor, in degrees Celsius.</summary>
    public double? UnderbodyCelsius { get; init; }
}

/// <summary>What may be chosen from where something is left open.</summary>
public sealed record SizingWishes
{
    /// <summary>The metals to choose from; empty: copper.</summary>
    public IReadOnlyList<Material> Materials { get; init; } = [];

    /// <summary>The sizes to choose from; empty: the trade's usual ones.</summary>
    public IReadOnlyList<ConductorSize> Sizes { get; init; } = [];
}
