namespace Cablewright.Engine.Builds;

/// <summary>The units in which sentences are written. Numbers in an answer are always SI, with the unit in the name.</summary>
public enum UnitSystem
{
    /// <summary>Feet, inches, degrees Fahrenheit, AWG sizes.</summary>
    Us,

    /// <summary>Metres, centimetres, degrees Celsius, mm² sizes.</summary>
    Metric,
}

/// <summary>Which way the current goes in a run: towards the loads, or back from them.</summary>
public enum Side
{
    /// <summary>From a battery's positive terminal towards the loads.</summary>
    Supply,

    /// <summary>From the loads back to a battery's negative terminal or the vehicle's body.</summary>
    Return,
}

/// <summary>Where a run lies, which decides the surroundings its heat must reach.</summary>
public enum Route
{
    /// <summary>Under the bonnet, beside the engine.</summary>
    EngineBay,

    /// <summary>Inside the passenger space or boot, in free air.</summary>
    Cabin,

    /// <summary>Outside, below the floor.</summary>
    Underbody,

    /// <summary>Inside, bundled with other loaded conductors.</summary>
    Loom,
}

/// <summary>What a battery is made of, which decides its voltage and resistance.</summary>
public enum Chemistry
{
    /// <summary>Lead-acid with free liquid.</summary>
    Flooded,

    /// <summary>Lead-acid, absorbed in glass mat.</summary>
    Agm,

    /// <summary>Lead-acid, gelled.</summary>
    Gel,

    /// <summary>Lithium iron phosphate, four cells for each 12 V.</summary>
    LiFePo4,
}

/// <summary>How two batteries are kept from emptying each other.</summary>
public enum IsolatorKind
{
    /// <summary>Contacts that close while the engine runs.</summary>
    Relay,

    /// <summary>Lets current pass from the run's start to its end only.</summary>
    Diode,

    /// <summary>A converter that charges the battery at the run's end with a limited current.</summary>
    DcDcCharger,
}

/// <summary>What an answer holds only where it is asked for.</summary>
public enum Extra
{
    /// <summary>Each run with its neighbours in size, metal and count, and what the whole costs against what it loses.</summary>
    Alternatives,

    /// <summary>By how much all amplifiers could be larger.</summary>
    Headroom,

    /// <summary>What becomes of the verdict when what was stated or assumed is a little off.</summary>
    Robustness,
}

/// <summary>
/// The class of an amplifier's output stage, which decides its efficiency and how its current follows the music.
/// </summary>
public enum AmplifierClass
{
    /// <summary>Full current at all times.</summary>
    A,

    /// <summary>Linear with a small standing current.</summary>
    AB,

    /// <summary>Linear without standing current.</summary>
    B,

    /// <summary>Switching.</summary>
    D,

    /// <summary>Linear with rails that follow the music.</summary>
    H,
}

/// <summary>How an amplifier's own converter treats a falling supply.</summary>
public enum PowerSupply
{
    /// <summary>Holds the output: the input current rises as the voltage falls.</summary>
    Regulated,

    /// <summary>Lets the output fall with the square of the voltage.</summary>
    Unregulated,
}

/// <summary>What the music is like, and so the ratio of average to peak power.</summary>
public enum Programme
{
    /// <summary>A steady tone at full output.</summary>
    Sine,

    /// <summary>Dense, heavily limited music: one third of rated power on average.</summary>
    Compressed,

    /// <summary>Music with its dynamics left: one eighth of rated power on average.</summary>
    Dynamic,
}

/// <summary>What a choice of conductors makes least.</summary>
public enum Prefer
{
    /// <summary>What the conductors cost: the stated prices, else the ruleset's relative price of their metal.</summary>
    Cost,

    /// <summary>The mass of their metal.</summary>
    Mass,

    /// <summary>How many different conductors there are to buy, by size and metal; among equals, what they cost.</summary>
    FewestSizes,
}
