using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>What can make it impossible to say what a build means.</summary>
internal static class BuildFaultCodes
{
    [Meaning("An id that something else has.")]
    public const string IdTaken = "id.taken";

    [Meaning("A run that starts and ends at the same place.")]
    public const string RunEndsEqual = "run.ends-equal";

    [Meaning("A run that no battery reaches.")]
    public const string RunNotConnected = "run.not-connected";

    [Meaning("Runs end at the engine, and none joins it with the body or with a battery's negative terminal.")]
    public const string EngineNotConnected = "engine.not-connected";

    [Meaning("A run marked supply that meets a return run.")]
    public const string RunSideContradicts = "run.side-contradicts";

    [Meaning("A run whose places do not tell whether it is supply or return.")]
    public const string RunSideUnclear = "run.side-unclear";

    [Meaning("A junction that only one run names; the detail names the nearest known place.")]
    public const string PlaceJoinsNothing = "place.joins-nothing";

    [Meaning("A build without an amplifier.")]
    public const string AmplifiersNone = "amplifiers.none";

    [Meaning("An amplifier of which nothing says what it draws.")]
    public const string AmplifierDrawUnknown = "amplifier.draw-unknown";

    [Meaning("An amplifier that no supply run reaches.")]
    public const string AmplifierNoSupply = "amplifier.no-supply";

    [Meaning("An amplifier whose return runs lead nowhere.")]
    public const string AmplifierNoReturn = "amplifier.no-return";

    [Meaning("A vehicle with an alternator and a converter in its place.")]
    public const string VehicleTwoChargers = "vehicle.two-chargers";

    [Meaning("An alternator or a converter at a place from which no run leads to a battery.")]
    public const string AlternatorPlaceUnknown = "alternator.place-unknown";

    [Meaning("An alternator at a place of its own of which nothing says what its cable must carry.")]
    public const string AlternatorRatingUnknown = "alternator.rating-unknown";

    [Meaning("A capacitor at a place to which no supply run leads.")]
    public const string CapacitorPlaceUnknown = "capacitor.place-unknown";

    [Meaning("An isolator on a return run.")]
    public const string IsolatorInReturn = "isolator.in-return";

    [Meaning("An isolator past which another way leads.")]
    public const string IsolatorBypassed = "isolator.bypassed";

    [Meaning("Chargers that feed each other in a ring.")]
    public const string IsolatorRing = "isolator.ring";

    [Meaning("An isolator with no battery on one of its sides.")]
    public const string IsolatorNoBattery = "isolator.no-battery";

    [Meaning("A diode or a charger that points towards the battery that the alternator charges.")]
    public const string IsolatorPointsBack = "isolator.points-back";

    [Meaning("A battery that no run touches.")]
    public const string BatteryNotConnected = "battery.not-connected";

    /// <summary>The code of a fault.</summary>
    public static string Of(BuildFaultKind kind) => kind switch
    {
        BuildFaultKind.IdTaken or BuildFaultKind.IdOfBody or BuildFaultKind.IdOfEngine
            or BuildFaultKind.IdOfAssumedBattery => IdTaken,
        BuildFaultKind.RunEndsEqual => RunEndsEqual,
        BuildFaultKind.AmplifiersNone => AmplifiersNone,
        BuildFaultKind.AmplifierDrawUnknown => AmplifierDrawUnknown,
        BuildFaultKind.VehicleTwoChargers => VehicleTwoChargers,
        BuildFaultKind.ChargerPlaceUnknown => AlternatorPlaceUnknown,
        BuildFaultKind.AlternatorRatingUnknown => AlternatorRatingUnknown,
        BuildFaultKind.PlaceJoinsNothing or BuildFaultKind.JunctionUnnamed => PlaceJoinsNothing,
        BuildFaultKind.AmplifierNoSupply => AmplifierNoSupply,
        BuildFaultKind.AmplifierNoReturn => AmplifierNoReturn,
        BuildFaultKind.RunNotConnected => RunNotConnected,
        BuildFaultKind.EngineNotConnected => EngineNotConnected,
        BuildFaultKind.CapacitorPlaceUnknown => CapacitorPlaceUnknown,
        BuildFaultKind.BatteryNotConnected => BatteryNotConnected,
        BuildFaultKind.RunSideContradicts => RunSideContradicts,
        BuildFaultKind.RunSideUnclear => RunSideUnclear,
        BuildFaultKind.IsolatorInReturn => IsolatorInReturn,
        BuildFaultKind.IsolatorBypassed or BuildFaultKind.ChargerBypassed => IsolatorBypassed,
        BuildFaultKind.IsolatorRing => IsolatorRing,
        BuildFaultKind.IsolatorNoBattery => IsolatorNoBattery,
        // Whoever checks what a build states lists this code with its meaning.
        BuildFaultKind.IsolatorRatingMissing => "isolator.rating-missing",
        _ => IsolatorPointsBack,
    };
}
