using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

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

    /// <summary>How far off what is stated or assumed may be.</summary>
    public Tolerances Tolerances { get; init; } = new();

    /// <summary>What else to work out that costs more than one assessment.</summary>
    public IReadOnlyList<Extra> Include { get; init; } = [];
}

/// <summary>How far off what is stated or assumed may be, each either way.</summary>
public sealed record Tolerances
{
    /// <summary>Of the efficiency, or of the stated input current, as a share of it, 0 to 1.</summary>
    public double? EfficiencyShare { get; init; }

    /// <summary>Of the charging voltage, in volts.</summary>
    public double? ChargingVolts { get; init; }

    /// <summary>Of every length, as a share of it, 0 to 1.</summary>
    public double? LengthShare { get; init; }

    /// <summary>Of the temperature of all surroundings, in kelvin.</summary>
    public double? SurroundingsKelvin { get; init; }
}

/// <summary>The vehicle's electrical supply.</summary>
public sealed record Vehicle
{
    /// <summary>The voltage at the battery that the alternator charges, engine running, in volts.</summary>
    public double? ChargingVolts { get; init; }

    /// <summary>The alternator; not together with <see cref="Converter"/>.</summary>
    public Alternator? Alternator { get; init; }

    /// <summary>The converter that charges a hybrid or electric vehicle's battery in an alternator's place.</summary>
    public Converter? Converter { get; init; }

    /// <summary>What the vehicle itself draws with the engine running, in amperes.</summary>
    public double? BaseLoadAmps { get; init; }

    /// <summary>What the vehicle itself draws with the engine off while music plays, in amperes.</summary>
    public double? StandbyLoadAmps { get; init; }

    /// <summary>
    /// The batteries; the first stands at the alternator unless the alternator says otherwise. Empty: one is assumed.
    /// </summary>
    public IReadOnlyList<Battery> Batteries { get; init; } = [];

    /// <summary>Capacitors that stiffen the supply.</summary>
    public IReadOnlyList<Capacitor> Capacitors { get; init; } = [];

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

    /// <summary>Output current at the low speed of its label (1500 turns a minute of its shaft), cold, in amperes.</summary>
    public double? LowSpeedAmps { get; init; }

    /// <summary>Points of its output curve, cold; they win over the label.</summary>
    public IReadOnlyList<OutputPoint> OutputPoints { get; init; } = [];

    /// <summary>Turns of its shaft for each turn of the engine, 1 to 6.</summary>
    public double? PulleyRatio { get; init; }

    /// <summary>The engine's speed at idle, in turns a minute.</summary>
    public double? IdleRpm { get; init; }

    /// <summary>The battery that it charges, or a place of its own from which runs lead to one.</summary>
    public string? At { get; init; }
}

/// <summary>One point of an alternator's output curve.</summary>
/// <param name="ShaftRpm">Speed of its shaft, in turns a minute.</param>
/// <param name="Amps">Output current there.</param>
public sealed record OutputPoint(double ShaftRpm, double Amps);

/// <summary>A converter from the drive battery; its limit is the vehicle maker's. One of the two figures is stated.</summary>
public sealed record Converter
{
    /// <summary>Largest lasting output current, in amperes.</summary>
    public double? RatedAmps { get; init; }

    /// <summary>Largest lasting output power, in watts.</summary>
    public double? RatedWatts { get; init; }

    /// <summary>The battery that it charges.</summary>
    public string? At { get; init; }
}

/// <summary>A capacitor across the supply.</summary>
public sealed record Capacitor
{
    /// <summary>The place where it is connected: an amplifier, a battery or a junction of the supply side.</summary>
    public required string At { get; init; }

    /// <summary>Capacitance, in farads.</summary>
    public required double Farads { get; init; }

    /// <summary>Equivalent series resistance, in ohms.</summary>
    public double? SeriesOhms { get; init; }
}

/// <summary>One battery.</summary>
public sealed record Battery
{
    /// <summary>The battery's place name.</summary>
    public required string Id { get; init; }

    /// <summary>What a person calls it; it changes no result.</summary>
    public string? Name { get; init; }

    /// <summary>What it is made of.</summary>
    public Chemistry? Chemistry { get; init; }

    /// <summary>Capacity at its rating time, in ampere-hours.</summary>
    public double? CapacityAmpHours { get; init; }

    /// <summary>The time in which its capacity is drawn when it is rated, in hours; 20 where it is not stated.</summary>
    public double? RatingHours { get; init; }

    /// <summary>Minutes that it gives 25 A down to 10.5 V (reserve capacity), where that is what is known.</summary>
    public double? ReserveMinutes { get; init; }

    /// <summary>Peukert's exponent, 1 to 2.</summary>
    public double? PeukertExponent { get; init; }

    /// <summary>State of charge when the engine stops, 0 to 1.</summary>
    public double? StateOfCharge { get; init; }

    /// <summary>Share of the capacity that may be used, 0 to 1.</summary>
    public double? UsableShare { get; init; }

    /// <summary>How its voltage settles under a load: at most two resistances, each with its time constant.</summary>
    public IReadOnlyList<Polarisation> Polarisation { get; init; } = [];

    /// <summary>Cold-cranking current (SAE J537), in amperes.</summary>
    public double? ColdCrankingAmps { get; init; }

    /// <summary>Internal resistance, in ohms.</summary>
    public double? InternalOhms { get; init; }
}

/// <summary>A resistance of a battery that shows only after a while: a resistance beside a capacitance.</summary>
/// <param name="Ohms">The resistance, in ohms.</param>
/// <param name="Seconds">The time constant, in seconds.</param>
public sealed record Polarisation(double Ohms, double Seconds);

/// <summary>One load. At least one of rated output, rated input current and on-board fuse is stated.</summary>
public sealed record Amplifier
{
    /// <summary>The amplifier's place name.</summary>
    public required string Id { get; init; }

    /// <summary>What a person calls it; it changes no result.</summary>
    public string? Name { get; init; }

    /// <summary>Rated output of all channels together, in watts.</summary>
    public double? RatedOutputWatts { get; init; }

    /// <summary>Input current at rated output as its maker states it, in amperes.</summary>
    public double? RatedInputAmps { get; init; }

    /// <summary>The sum of the fuses on the amplifier itself, in amperes.</summary>
    public double? OnBoardFuseAmps { get; init; }

    /// <summary>The lowest supply voltage that it works at, in volts.</summary>
    public double? LowestSupplyVolts { get; init; }

    /// <summary>The highest supply voltage that it works at, in volts.</summary>
    public double? HighestSupplyVolts { get; init; }

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

    /// <summary>How many terminals it has for the supply, and for the return; one where that is not stated.</summary>
    public int? Terminals { get; init; }
}

/// <summary>A distribution block or bus bar about which something is known.</summary>
public sealed record Junction
{
    /// <summary>The junction's place name, as the runs use it.</summary>
    public required string Id { get; init; }

    /// <summary>What a person calls it; it changes no result.</summary>
    public string? Name { get; init; }

    /// <summary>The largest conductor that its terminals accept.</summary>
    public ConductorSize? LargestConductor { get; init; }
}

/// <summary>A conductor, or several in parallel, between two places.</summary>
public sealed record Run
{
    /// <summary>The run's own name.</summary>
    public required string Id { get; init; }

    /// <summary>What a person calls it; it changes no result.</summary>
    public string? Name { get; init; }

    /// <summary>The place where it starts and where its fuse stands.</summary>
    public required string From { get; init; }

    /// <summary>The place where it ends.</summary>
    public required string To { get; init; }

    /// <summary>Whether one of its ends is at a place.</summary>
    internal bool EndsAt(string place) => From == place || To == place;

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

    /// <summary>How much of it lies in the engine bay, in metres.</summary>
    public double? EngineBayMetres { get; init; }

    /// <summary>How much of it lies in a bundle, in metres; <c>null</c>: all of it in a loom, else nothing.</summary>
    public double? BundledMetres { get; init; }

    /// <summary>What parts two batteries on this run, seen from <see cref="From"/> to <see cref="To"/>.</summary>
    public Isolator? Isolator { get; init; }
}

/// <summary>A part between two batteries that keeps one from emptying the other.</summary>
public sealed record Isolator
{
    /// <summary>How it does that.</summary>
    public required IsolatorKind Kind { get; init; }

    /// <summary>Continuous current that it is rated for; a charger's output current. In amperes.</summary>
    public double? RatedAmps { get; init; }

    /// <summary>A relay's closed contacts, in ohms.</summary>
    public double? ContactOhms { get; init; }

    /// <summary>A diode's forward voltage, in volts.</summary>
    public double? ForwardVolts { get; init; }

    /// <summary>A charger's output voltage, in volts.</summary>
    public double? OutputVolts { get; init; }

    /// <summary>A charger's output over input power, 0 to 1.</summary>
    public double? Efficiency { get; init; }
}

/// <summary>What is known of a run's conductor. Without a size it is open, and what is stated restricts the choice.</summary>
public sealed record ConductorWish
{
    /// <summary>The size.</summary>
    public ConductorSize? Size { get; init; }

    /// <summary>Whether the size is a gauge off a label, which does not say that it is AWG.</summary>
    public bool IsLabelled { get; init; }

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

    /// <summary>Its own time-current curve, the smallest current first; its family's where there is none.</summary>
    public IReadOnlyList<OpeningTime> OpeningTimes { get; init; } = [];
}

/// <summary>The caller's own limits.</summary>
public sealed record Limits
{
    /// <summary>Largest permitted drop from battery to amplifier and back, in volts; hard.</summary>
    public double? MaxDropVolts { get; init; }

    /// <summary>The same as a fraction of the charging voltage, 0 to 1; hard.</summary>
    public double? MaxDropFraction { get; init; }

    /// <summary>How long the music must play with the engine off, in minutes; hard.</summary>
    public double? EngineOffMinutes { get; init; }

    /// <summary>Temperature of the air in the engine bay, in degrees Celsius.</summary>
    public double? EngineBayCelsius { get; init; }

    /// <summary>Temperature of the air in the cabin, in degrees Celsius.</summary>
    public double? CabinCelsius { get; init; }

    /// <summary>Temperature of the air below the floor, in degrees Celsius.</summary>
    public double? UnderbodyCelsius { get; init; }
}
