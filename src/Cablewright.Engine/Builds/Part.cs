namespace Cablewright.Engine.Builds;

/// <summary>The parts of what a caller states: of a build, and of a report from the bench.</summary>
internal enum Part
{
    Build,
    Vehicle,
    Body,
    Alternator,
    Converter,
    Battery,
    Capacitor,
    Amplifier,
    Junction,
    Run,

    /// <summary>A run's conductor.</summary>
    Conductor,

    /// <summary>The fuse where a run comes from.</summary>
    Fuse,

    /// <summary>The fuse where a run leads to.</summary>
    FarFuse,

    /// <summary>A run's isolator.</summary>
    Isolator,
    Limits,
    Tolerances,

    /// <summary>A size to choose from.</summary>
    OfferedSize,

    /// <summary>A metal to choose from.</summary>
    OfferedMaterial,

    /// <summary>A report from the bench.</summary>
    Bench,

    /// <summary>What was counted and measured of a cable's strands.</summary>
    Strands,

    /// <summary>What was measured of a cable's resistance.</summary>
    Resistance,

    /// <summary>What was weighed.</summary>
    Mass,

    /// <summary>What a cable's label says.</summary>
    Claim,
}
