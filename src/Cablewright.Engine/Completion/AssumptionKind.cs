namespace Cablewright.Engine.Completion;

/// <summary>What was assumed, and why.</summary>
internal enum AssumptionKind
{
    ChargingVoltage,
    BodyResistance,
    StandbyLoad,
    BaseLoad,
    HotFactor,
    PulleyRatio,
    IdleSpeed,
    LowSpeedCurrent,

    /// <summary>One battery, since none is listed.</summary>
    OneBattery,
    Chemistry,
    Capacity,
    PeukertExponent,
    UsableShare,
    StateOfCharge,

    /// <summary>What a battery beside the charged one takes for long.</summary>
    ChargingCurrent,
    ResistanceFromCranking,
    ResistanceFromCapacity,
    CapacitorResistance,

    /// <summary>A strap from a battery to the body.</summary>
    Strap,

    /// <summary>A strap from the engine, to which a battery is tied, to the body.</summary>
    EngineStrap,

    /// <summary>The voltage that a stated input current stands for.</summary>
    RatingVoltage,

    /// <summary>An amplifier of which only its own fuse is stated draws that fuse's rating.</summary>
    OwnFuseAlone,
    AmplifierClass,

    /// <summary>The largest conductor that an amplifier's terminals usually accept.</summary>
    TerminalSize,
    Efficiency,

    /// <summary>An amplifier just large enough for class D draws no less than a smaller one of class AB.</summary>
    EfficiencyNoLess,
    PowerSupply,
    Programme,
    InsulationRating,
    JointResistance,
    FuseFamily,
    FuseDistance,

    /// <summary>A gauge off a label is AWG.</summary>
    LabelledGauge,

    /// <summary>The first metal of those to choose from.</summary>
    FirstMaterial,

    /// <summary>Copper, where no metals to choose from are stated.</summary>
    PlainMaterial,

    /// <summary>A run that starts in the engine bay.</summary>
    RouteFromEngineBay,

    /// <summary>A run that ends at the engine.</summary>
    RouteAtEngine,
    Route,

    /// <summary>A return run for an amplifier that has none.</summary>
    ReturnRun,
    Surroundings,
    ContactResistance,
    ForwardVoltage,
    ChargerOutput,
    ChargerEfficiency,
    DropLimits,

    /// <summary>How far off a figure may be.</summary>
    Tolerance,

    /// <summary>How far off several figures may be.</summary>
    Tolerances,

    /// <summary>How far off a reading on the bench may be.</summary>
    Uncertainty,
    TemperatureUncertainty,

    /// <summary>How far off a temperature may be that is itself assumed.</summary>
    UnstatedTemperatureUncertainty,
    BenchTemperature,
    LayFactor,

    /// <summary>The metal of a cable of which one measurement alone was made.</summary>
    UntestedMaterial,
}
