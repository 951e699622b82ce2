using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Loads;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sources;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Completion;

/// <summary>A build with every value in its place: stated, or assumed and listed.</summary>
internal sealed record CompleteBuild
{
    public required Build Stated { get; init; }

    public required Ruleset Ruleset { get; init; }

    /// <summary>Counts the work on this build.</summary>
    public required WorkMeter Meter { get; init; }

    public required PlaceNames Names { get; init; }

    /// <summary>The system's nominal voltage over 12 V.</summary>
    public required double NominalFactor { get; init; }

    public required double ChargingVolts { get; init; }

    public required double BodyOhms { get; init; }

    /// <summary>An upper bound of the same, for the smallest fault current.</summary>
    public required double MostBodyOhms { get; init; }

    public required DropLimits Drop { get; init; }

    public required SupplyFigures Supply { get; init; }

    public required IReadOnlyList<CompleteBattery> Batteries { get; init; }

    /// <summary>Which battery stands at the alternator.</summary>
    public required int ChargingBattery { get; init; }

    public required IReadOnlyList<AmplifierDraw> Draws { get; init; }

    public required IReadOnlyList<CompleteRun> Runs { get; init; }

    public required BodyConnections Body { get; init; }

    public required IReadOnlyList<CompleteCapacitor> Capacitors { get; init; }

    /// <summary>The alternator's own place, or <c>null</c> where it stands at a battery.</summary>
    public string? AlternatorPlace { get; init; }

    /// <summary>Whether a run ends at the engine.</summary>
    public required bool NamesEngine { get; init; }

    /// <summary>
    /// Whether the alternator's case sits on the engine, over which its current comes back. What it gives has to be known.
    /// </summary>
    public bool IsAlternatorOnEngine => NamesEngine && Supply is { IsConverter: false, HotAmps: not null };

    /// <summary>Whether what the alternator gives enters the wiring elsewhere than at a battery's terminals.</summary>
    public bool PutsInCurrent => AlternatorPlace is not null || IsAlternatorOnEngine;

    /// <summary>Whether a run leads to the alternator's own place.</summary>
    public bool IsAlternatorCable(CompleteRun run) =>
        AlternatorPlace is { } place && run.EndsAt(place);

    /// <summary>Whether the build speaks of batteries or of playing time, so that their energy is counted.</summary>
    public required bool CountsEnergy { get; init; }

    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>How far off things may be; <c>null</c> where that is not asked for.</summary>
    public CompleteTolerances? Tolerances { get; init; }

    /// <summary>Battery voltage with the engine off or the alternator overrun; never above the charging voltage.</summary>
    public double LowestSupplyVolts => Math.Min(ChargingVolts, Ruleset.Circuit.LowestSupplyVoltage.Value * NominalFactor);

    /// <summary>
    /// Whether the lowest supply voltage counts for heat and fuses too: where batteries feed for long, since there are several
    /// or music plays with the engine off.
    /// </summary>
    public bool LastsAtLowest => Batteries.Count > 1 || Stated.Limits.EngineOffMinutes is not null;

    /// <summary>What is said of the fuse at an end of a run.</summary>
    public FuseSlot SlotAt(RunEnd end) => end.IsFar ? Runs[end.Run].Far : Runs[end.Run].Near;

    /// <summary>The place at an end of a run.</summary>
    public string PlaceAt(RunEnd end) => end.IsFar ? Runs[end.Run].To : Runs[end.Run].From;

    public double HighestSupplyVolts => Ruleset.Circuit.HighestSupplyVoltage.Value * NominalFactor;
}

/// <summary>How much may be lost on the way to an amplifier and back.</summary>
/// <param name="HardVolts">Above it the build fails.</param>
/// <param name="CleanVolts">Above it a caution is due.</param>
/// <param name="TargetVolts">What a choice aims at; the same as the hard limit where the build states its own.</param>
/// <param name="Rule">The figure behind the hard limit.</param>
internal sealed record DropLimits(double HardVolts, double CleanVolts, double TargetVolts, Figure Rule);

/// <summary>What charges the batteries.</summary>
/// <param name="HotAmps">What it gives at speed, an alternator hot; <c>null</c> where none is stated.</param>
/// <param name="IdleAmps">At idle.</param>
/// <param name="BaseLoadAmps">What the vehicle itself takes of either.</param>
/// <param name="StandbyAmps">What the vehicle itself takes with the engine off.</param>
internal sealed record SupplyFigures(double? HotAmps, double? IdleAmps, double BaseLoadAmps, double StandbyAmps)
{
    /// <summary>Whether a converter stands in an alternator's place.</summary>
    public bool IsConverter { get; init; }

    /// <summary>An alternator's rated current, cold.</summary>
    public double? RatedAmps { get; init; }

    /// <summary>Engine speed at idle.</summary>
    public double IdleRpm { get; init; }

    /// <summary>Turns of the alternator's shaft for each turn of the engine.</summary>
    public double PulleyRatio { get; init; }

    /// <summary>An alternator's output over its shaft's speed, hot.</summary>
    public AlternatorCurve? HotCurve { get; init; }
}

/// <summary>One battery, complete.</summary>
internal sealed record CompleteBattery
{
    /// <summary>Its place name.</summary>
    public required string Id { get; init; }

    public required Chemistry Chemistry { get; init; }

    /// <summary>Its resistance as a source; on the large side where it is not stated.</summary>
    public required double InternalOhms { get; init; }

    /// <summary>A lower bound of the same, for the largest fault current.</summary>
    public required double LeastOhms { get; init; }

    /// <summary>An upper bound of the same, for the smallest fault current.</summary>
    public required double MostOhms { get; init; }

    /// <summary>Its cold-cranking current; for lithium iron phosphate <c>null</c>.</summary>
    public required double? CrankingAmps { get; init; }

    /// <summary>What it counts as while it recharges.</summary>
    public required double RechargingOhms { get; init; }

    /// <summary>Its rest voltage at half charge.</summary>
    public required double HalfChargedVolts { get; init; }

    /// <summary>Its rest voltage when full.</summary>
    public required double FullVolts { get; init; }

    /// <summary>Its rest voltage at its state of charge.</summary>
    public required double RestVolts { get; init; }

    /// <summary>Its rest voltage half way from there to its limit.</summary>
    public required double WorkingVolts { get; init; }

    /// <summary>A strap that is assumed for it.</summary>
    public required double StrapOhms { get; init; }

    /// <summary>What it holds.</summary>
    public required Peukert.Cell Energy { get; init; }

    /// <summary>Resistances that show after a while.</summary>
    public required IReadOnlyList<Polarisation> Polarisation { get; init; }
}

/// <summary>How far off what is stated or assumed may be, each either way.</summary>
/// <param name="EfficiencyShare">Of an efficiency or an input current, as a share of it.</param>
/// <param name="ChargingVolts">Of the charging voltage.</param>
/// <param name="LengthShare">Of every length, as a share of it.</param>
/// <param name="Kelvin">Of the temperature of all surroundings.</param>
internal sealed record CompleteTolerances(double EfficiencyShare, double ChargingVolts, double LengthShare, double Kelvin);

/// <summary>A capacitor, complete.</summary>
/// <param name="At">Its place.</param>
/// <param name="Farads">Its capacitance.</param>
/// <param name="SeriesOhms">Its equivalent series resistance.</param>
internal sealed record CompleteCapacitor(string At, double Farads, double SeriesOhms);

/// <summary>An isolator, complete.</summary>
/// <param name="Kind">How it parts the batteries.</param>
/// <param name="RatedAmps">Its rating, where it is stated.</param>
/// <param name="ContactOhms">A relay's closed contacts; else 0.</param>
/// <param name="FallVolts">A diode's forward voltage; else 0.</param>
/// <param name="OutputVolts">A charger's output voltage.</param>
/// <param name="InputWatts">What a charger draws at its rating; else 0.</param>
internal sealed record CompleteIsolator(
    IsolatorKind Kind, double? RatedAmps, double ContactOhms, double FallVolts, double OutputVolts, double InputWatts)
{
    /// <summary>What a charger puts out; <c>null</c> for a relay, a diode and a charger of unstated output.</summary>
    public double? ChargerAmps => Kind is IsolatorKind.DcDcCharger ? RatedAmps : null;

    /// <summary>
    /// What it counts as in a short circuit. It may fail closed, so it never protects; a diode's fall is put down as the
    /// resistance that would make it at its rating, which is more than it has at the currents of a short circuit.
    /// </summary>
    public double FaultOhms => ContactOhms + (RatedAmps is { } rated ? FallVolts / rated : 0);
}

/// <summary>One run, complete but for what is to be chosen.</summary>
internal sealed record CompleteRun
{
    public required string Id { get; init; }

    /// <summary>Its place in the build; <c>null</c> for a run that was added.</summary>
    public required int? Index { get; init; }

    public required string From { get; init; }

    public required string To { get; init; }

    /// <summary>Whether one of its ends is at a place.</summary>
    public bool EndsAt(string place) => From == place || To == place;

    public required Side Side { get; init; }

    public required double LengthMetres { get; init; }

    public required Route Route { get; init; }

    /// <summary>The air around its hottest part, which decides what it may carry.</summary>
    public required double AirCelsius { get; init; }

    /// <summary>The mean over its length, which decides its resistance.</summary>
    public required double MeanAirCelsius { get; init; }

    public required double Bundling { get; init; }

    public required double InsulationCelsius { get; init; }

    public required double JointOhms { get; init; }

    /// <summary>
    /// What each fuse's terminations add; 0 where the joints are stated, since those are all joints of the run.
    /// </summary>
    public required double FuseTerminationOhms { get; init; }

    /// <summary>What parts two batteries on it, if anything.</summary>
    public CompleteIsolator? Isolator { get; init; }

    /// <summary>Joints, and the closed contacts of a relay.</summary>
    public double SeriesOhms => JointOhms + (Isolator?.ContactOhms ?? 0);

    /// <summary>The conductor, or <c>null</c> where it is to be chosen.</summary>
    public required Conductor? Given { get; init; }

    /// <summary>How many in parallel, or <c>null</c> where that is to be chosen.</summary>
    public required int? GivenCount { get; init; }

    /// <summary>What is stated of the conductor, which restricts a choice.</summary>
    public required ConductorWish Wish { get; init; }

    /// <summary>What its terminals accept, where that is stated.</summary>
    public required IReadOnlyList<TerminalLimit> Terminals { get; init; }

    public required FuseSlot Near { get; init; }

    public required FuseSlot Far { get; init; }
}

/// <summary>The largest conductor that a terminal accepts.</summary>
/// <param name="Largest">The size.</param>
/// <param name="At">Where that is stated.</param>
/// <param name="Count">How many such terminals there are.</param>
/// <param name="IsAssumed">Whether it is only what such terminals usually accept.</param>
internal readonly record struct TerminalLimit(ConductorSize Largest, Target At, int Count, bool IsAssumed = false)
{
    /// <summary>Whether conductors go in.</summary>
    public bool Takes(ConductorChoice choice) => choice.Conductor.Size.FitsWhere(Largest)
        && !Significant.Exceeds(choice.Conductor.Size.NominalAreaMm2 * choice.Count, Largest.NominalAreaMm2 * Count);
}

/// <summary>What is known of the place for a fuse at one end of a run.</summary>
/// <param name="At">What describes it.</param>
/// <param name="Refused">The build says that there is none.</param>
/// <param name="RatingAmps">The stated rating, or <c>null</c> where it is to be chosen if a fuse is needed.</param>
/// <param name="MustBeFitted">The build speaks of a fuse here, so one stands even where none is needed.</param>
/// <param name="Family">The stated family, if any.</param>
/// <param name="DistanceMetres">The stated distance, if any.</param>
/// <param name="VoltageRatingVolts">The stated voltage rating, if any.</param>
/// <param name="InterruptingRatingAmps">The stated interrupting rating, if any.</param>
/// <param name="PerConductor">Whether each parallel conductor has its own.</param>
internal sealed record FuseSlot(
    Target At,
    bool Refused,
    double? RatingAmps,
    bool MustBeFitted,
    FuseFamilyName? Family,
    double? DistanceMetres,
    double? VoltageRatingVolts,
    double? InterruptingRatingAmps,
    bool? PerConductor)
{
    /// <summary>The part's own time-current band, if any.</summary>
    public TimeCurrentBand? Band { get; init; }
}
