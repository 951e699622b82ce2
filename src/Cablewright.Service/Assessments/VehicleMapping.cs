using Cablewright.Contract.Builds;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Assessments;

/// <summary>From the contract's vehicle to the engine's.</summary>
internal static class VehicleMapping
{
    /// <summary>The same supply in SI units.</summary>
    public static Engine.Builds.Vehicle ToEngine(Vehicle vehicle) => new()
    {
        ChargingVolts = Stated<Vehicle>.Value(vehicle.ChargingVoltage, nameof(vehicle.ChargingVoltage)),
        Alternator = vehicle.Alternator is null ? null : AlternatorOf(vehicle.Alternator),
        Converter = vehicle.Converter is null ? null : ConverterOf(vehicle.Converter),
        BaseLoadAmps = Stated<Vehicle>.Value(vehicle.BaseLoad, nameof(vehicle.BaseLoad)),
        StandbyLoadAmps = Stated<Vehicle>.Value(vehicle.StandbyLoad, nameof(vehicle.StandbyLoad)),
        Batteries = [.. (vehicle.Batteries ?? []).Select(BatteryMapping.ToEngine)],
        Capacitors = [.. (vehicle.Capacitors ?? []).Select(CapacitorOf)],
        BodyReturnOhms = Stated<Body>.Value(vehicle.Body?.ReturnResistance, nameof(Body.ReturnResistance)),
    };

    /// <summary>Several side by side count as one that gives as much as all.</summary>
    private static Engine.Builds.Alternator AlternatorOf(Alternator alternator)
    {
        int count = alternator.Count ?? 1;
        return new Engine.Builds.Alternator
        {
            RatedAmps = Stated<Alternator>.Value(alternator.RatedCurrent, nameof(alternator.RatedCurrent)) * count,
            IdleAmps = Stated<Alternator>.Value(alternator.IdleCurrent, nameof(alternator.IdleCurrent)) * count,
            HotFactor = Stated<Alternator>.Value(alternator.HotFactor, nameof(alternator.HotFactor)),
            LowSpeedAmps = Stated<Alternator>.Value(alternator.LowSpeedCurrent, nameof(alternator.LowSpeedCurrent)) * count,
            OutputPoints = [.. (alternator.OutputPoints ?? []).Select(point => PointOf(point, count))],
            PulleyRatio = alternator.PulleyRatio,
            IdleRpm = Stated<Alternator>.Value(alternator.IdleSpeed, nameof(alternator.IdleSpeed)),
            At = alternator.At,
        };
    }

    private static Engine.Builds.OutputPoint PointOf(OutputPoint point, int count) => new(
        Stated<OutputPoint>.Read(point.Speed, nameof(point.Speed)).Value,
        Stated<OutputPoint>.Read(point.Current, nameof(point.Current)).Value * count);

    private static Engine.Builds.Converter ConverterOf(Converter converter) => new()
    {
        RatedAmps = Stated<Converter>.Value(converter.RatedCurrent, nameof(converter.RatedCurrent)),
        RatedWatts = Stated<Converter>.Value(converter.RatedPower, nameof(converter.RatedPower)),
        At = converter.At,
    };

    private static Engine.Builds.Capacitor CapacitorOf(Capacitor capacitor) => new()
    {
        At = capacitor.At,
        Farads = Stated<Capacitor>.Read(capacitor.Capacitance, nameof(capacitor.Capacitance)).Value,
        SeriesOhms = Stated<Capacitor>.Value(capacitor.SeriesResistance, nameof(capacitor.SeriesResistance)),
    };
}
