using Cablewright.Contract.Builds;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Assessments;

/// <summary>From the contract's battery to the engine's.</summary>
internal static class BatteryMapping
{
    private const double SecondsPerMinute = 60;
    private const double SecondsPerHour = 3600;

    /// <summary>The same battery in the engine's units.</summary>
    public static Engine.Builds.Battery ToEngine(Battery battery) => new()
    {
        Id = battery.Id,
        Name = battery.Name,
        Chemistry = battery.Chemistry,
        CapacityAmpHours = Stated<Battery>.Value(battery.Capacity, nameof(battery.Capacity)),
        RatingHours = Stated<Battery>.Value(battery.RatingTime, nameof(battery.RatingTime)) / SecondsPerHour,
        ReserveMinutes = Stated<Battery>.Value(battery.ReserveCapacity, nameof(battery.ReserveCapacity)) / SecondsPerMinute,
        PeukertExponent = battery.PeukertExponent,
        StateOfCharge = Stated<Battery>.Value(battery.StateOfCharge, nameof(battery.StateOfCharge)),
        UsableShare = Stated<Battery>.Value(battery.UsableShare, nameof(battery.UsableShare)),
        Polarisation = [.. (battery.Polarisation ?? []).Select(PolarisationOf)],
        ColdCrankingAmps = Stated<Battery>.Value(battery.ColdCrankingCurrent, nameof(battery.ColdCrankingCurrent)),
        InternalOhms = Stated<Battery>.Value(battery.InternalResistance, nameof(battery.InternalResistance)),
    };

    private static Engine.Builds.Polarisation PolarisationOf(Polarisation polarisation) => new(
        Stated<Polarisation>.Read(polarisation.Resistance, nameof(polarisation.Resistance)).Value,
        Stated<Polarisation>.Read(polarisation.TimeConstant, nameof(polarisation.TimeConstant)).Value);
}
