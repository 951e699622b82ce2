using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rulesets;

/// <summary>Batteries, alternator, capacitors and the vehicle's own draw.</summary>
internal sealed class SupplySection(FigureReader figures)
{
    public Figure ChargingVoltage { get; } = figures.Take("supply.charging-voltage", "V per 12 V nominal");

    public Figure BaseLoad { get; } = figures.Take("supply.base-load", "W");

    public Figure AlternatorHotFactor { get; } = figures.Take("supply.alternator-hot-factor", "1");

    public Figure AlternatorIdleShare { get; } = figures.Take("supply.alternator-idle-share", "1");

    public Figure BodyResistance { get; } = figures.Take("supply.body-resistance", "ohm");

    /// <summary>The same at most, for the smallest fault current.</summary>
    public Figure MostBodyResistance { get; } = figures.Take("supply.most-body-resistance", "ohm");

    public Figure ChargingReach { get; } = figures.Take("supply.charging-reach", "1");

    public Figure AverageOfAvailable { get; } = figures.Take("supply.average-of-available", "1");

    public Figure StrapResistance { get; } = figures.Take("supply.strap-resistance", "ohm");

    public Figure CrankingTestFall { get; } = figures.Take("supply.cranking-test-fall", "V per 12 V nominal");

    public Figure LeastResistanceShare { get; } = figures.Take("supply.least-resistance-share", "1");

    public Figure BatteryCapacity { get; } = figures.Take("supply.battery-capacity", "Ah");

    /// <summary>Least internal resistance times capacity, lithium iron phosphate.</summary>
    public Figure LiFePo4LeastResistanceCapacity { get; } =
        figures.Take("supply.lifepo4-least-resistance-capacity", "ohm Ah per 12 V nominal");

    /// <summary>Cold-cranking current over capacity, lead-acid.</summary>
    public Figure CrankingOfCapacity { get; } = figures.Take("supply.cranking-of-capacity", "A/Ah");

    public Figure FullOutputVoltage { get; } = figures.Take("supply.full-output-voltage", "V per 12 V nominal");

    public Figure ConverterLimit { get; } = figures.Take("supply.converter-limit", "1");

    public Figure OneChemistry { get; } = figures.Take("supply.one-chemistry", "1");

    public Figure StandbyLoad { get; } = figures.Take("supply.standby-load", "A");

    public Figure RatingHours { get; } = figures.Take("supply.rating-hours", "h");

    public Figure ReserveCurrent { get; } = figures.Take("supply.reserve-current", "A");

    public Figure WishedMinutes { get; } = figures.Take("supply.wished-minutes", "min");

    public Figure PulleyRatio { get; } = figures.Take("supply.pulley-ratio", "1");

    public Figure IdleSpeed { get; } = figures.Take("supply.idle-speed", "rpm");

    public Figure AlternatorLowSpeed { get; } = figures.Take("supply.alternator-low-speed", "rpm");

    public Figure AlternatorRatedSpeed { get; } = figures.Take("supply.alternator-rated-speed", "rpm");

    public Figure Burst { get; } = figures.Take("supply.burst", "ms");

    public Figure CapacitorResistance { get; } = figures.Take("supply.capacitor-resistance", "ohm");

    public Figure CapacitorFall { get; } = figures.Take("supply.capacitor-fall", "V per 12 V nominal");

    public Figure CapacitorHelp { get; } = figures.Take("supply.capacitor-help", "1");

    /// <summary>Internal resistance times capacity, where only the capacity is known.</summary>
    public Figure ResistanceCapacity(Chemistry chemistry) =>
        chemistry is Chemistry.LiFePo4 ? LiFePo4ResistanceCapacity : LeadAcidResistanceCapacity;

    /// <summary>Continuous charging current over capacity, at most.</summary>
    public Figure ChargingRate(Chemistry chemistry) =>
        chemistry is Chemistry.LiFePo4 ? LiFePo4ChargingRate : LeadAcidChargingRate;

    /// <summary>Share of its capacity that may be drawn from a battery.</summary>
    public Figure Usable(Chemistry chemistry) => chemistry is Chemistry.LiFePo4 ? UsableLiFePo4 : UsableLeadAcid;

    /// <summary>Rest voltage at half charge.</summary>
    public Figure HalfCharged(Chemistry chemistry) => chemistry switch
    {
        Chemistry.Flooded => HalfChargedFlooded,
        Chemistry.Agm => HalfChargedAgm,
        Chemistry.Gel => HalfChargedGel,
        _ => HalfChargedLiFePo4,
    };

    /// <summary>Peukert's exponent.</summary>
    public Figure Peukert(Chemistry chemistry) => chemistry switch
    {
        Chemistry.Flooded => PeukertFlooded,
        Chemistry.Agm => PeukertAgm,
        Chemistry.Gel => PeukertGel,
        _ => PeukertLiFePo4,
    };

    private Figure LeadAcidResistanceCapacity { get; } =
        figures.Take("supply.lead-acid-resistance-capacity", "ohm Ah per 12 V nominal");

    private Figure LiFePo4ResistanceCapacity { get; } =
        figures.Take("supply.lifepo4-resistance-capacity", "ohm Ah per 12 V nominal");

    private Figure LeadAcidChargingRate { get; } = figures.Take("supply.lead-acid-charging-rate", "1/h");

    private Figure LiFePo4ChargingRate { get; } = figures.Take("supply.lifepo4-charging-rate", "1/h");

    private Figure HalfChargedFlooded { get; } = figures.Take("supply.half-charged-flooded", "V per 12 V nominal");

    private Figure HalfChargedAgm { get; } = figures.Take("supply.half-charged-agm", "V per 12 V nominal");

    private Figure HalfChargedGel { get; } = figures.Take("supply.half-charged-gel", "V per 12 V nominal");

    private Figure HalfChargedLiFePo4 { get; } = figures.Take("supply.half-charged-lifepo4", "V per 12 V nominal");

    private Figure PeukertFlooded { get; } = figures.Take("supply.peukert-flooded", "1");

    private Figure PeukertAgm { get; } = figures.Take("supply.peukert-agm", "1");

    private Figure PeukertGel { get; } = figures.Take("supply.peukert-gel", "1");

    private Figure PeukertLiFePo4 { get; } = figures.Take("supply.peukert-lifepo4", "1");

    private Figure UsableLeadAcid { get; } = figures.Take("supply.usable-lead-acid", "1");

    private Figure UsableLiFePo4 { get; } = figures.Take("supply.usable-lifepo4", "1");
}
