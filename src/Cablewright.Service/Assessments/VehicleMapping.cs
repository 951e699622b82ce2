using Cablewright.Contract.Builds;

namespace Cablewright.Service.Assessments;

/// <summary>From the contract's vehicle to the engine's.</summary>
internal static class VehicleMapping
{
    /// <summary>The same supply in SI units.</summary>
    public static Engine.Builds.Vehicle ToEngine(Vehicle vehicle) => new()
    {
        ChargingVolts = Stated<Vehicle>.Value(vehicle.ChargingVoltage, nameof(vehicle.ChargingVoltage)),
        Alternator = vehicle.Alternator is null ? null : AlternatorOf(vehicle.Alternator),
        BaseLoadAmps = Stated<Vehicle>.Value(vehicle.BaseLoad, nameof(vehicle.BaseLoad)),
        Batteries = [.. (vehicle.Batteries ?? []).Select(BatteryOf)],
        BodyReturnOhms = Stated<Body>.Value(vehicle.Body?.ReturnResistance, nameof(Body.ReturnResistance)),
    };

    private static Engine.Builds.Alternator AlternatorOf(Alternator alternator) => new()
    {
        RatedAmps = Stated<Alternator>.Value(alternator.RatedCurrent, nameof(alternator.RatedCurrent)),
        IdleAmps = Stated<Alternator>.Value(alternator.IdleCurrent, nameof(alternator.IdleCurrent)),
        HotFactor = Stated<Alternator>.Value(alternator.HotFactor, nameof(alternator.HotFactor)),
        At = alternator.At,
    };

    private static Engine.Builds.Battery BatteryOf(Battery battery) => new()
    {
        Id = battery.Id,
        Chemistry = (Engine.Builds.Chemistry?)battery.Chemistry,
        CapacityAmpHours = Stated<Battery>.Value(battery.Capacity, nameof(battery.Capacity)),
        ColdCrankingAmps = Stated<Battery>.Value(battery.ColdCrankingCurrent, nameof(battery.ColdCrankingCurrent)),
        InternalOhms = Stated<Battery>.Value(battery.InternalResistance, nameof(battery.InternalResistance)),
    };
}
