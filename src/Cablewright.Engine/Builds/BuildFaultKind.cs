namespace Cablewright.Engine.Builds;

/// <summary>What can make it impossible to say what a build means.</summary>
internal enum BuildFaultKind
{
    /// <summary>An id that another part has.</summary>
    IdTaken,

    /// <summary>An id that stands for the vehicle's body.</summary>
    IdOfBody,

    /// <summary>An id that stands for the engine.</summary>
    IdOfEngine,

    /// <summary>An id that stands for the battery that is assumed.</summary>
    IdOfAssumedBattery,
    RunEndsEqual,
    AmplifiersNone,
    AmplifierDrawUnknown,
    VehicleTwoChargers,
    ChargerPlaceUnknown,
    AlternatorRatingUnknown,

    /// <summary>A place that only one run names.</summary>
    PlaceJoinsNothing,

    /// <summary>A junction that no run names.</summary>
    JunctionUnnamed,
    AmplifierNoSupply,
    AmplifierNoReturn,
    RunNotConnected,

    /// <summary>Runs end at the engine, and none joins it with the body or a battery.</summary>
    EngineNotConnected,
    CapacitorPlaceUnknown,
    BatteryNotConnected,
    RunSideContradicts,
    RunSideUnclear,
    IsolatorInReturn,
    IsolatorBypassed,

    /// <summary>A way past a charger, whose runs are named.</summary>
    ChargerBypassed,
    IsolatorRing,
    IsolatorNoBattery,
    IsolatorRatingMissing,
    IsolatorPointsBack,
}
