using Cablewright.Contract.Builds;
using Cablewright.Contract.Quantities;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Assessments;

/// <summary>From the contract's build to the engine's.</summary>
internal static class BuildMapping
{
    private const double SecondsPerMinute = 60;

    /// <summary>The same build in SI units.</summary>
    public static Engine.Builds.Build ToEngine(Build build) => new()
    {
        Name = build.Name,
        Units = (build.Units ?? default),
        Vehicle = build.Vehicle is null ? new Engine.Builds.Vehicle() : VehicleMapping.ToEngine(build.Vehicle),
        Amplifiers = [.. build.Amplifiers.Select(LoadOf)],
        Junctions = [.. (build.Junctions ?? []).Select(JunctionOf)],
        Runs = [.. build.Runs.Select(RunMapping.ToEngine)],
        Limits = LimitsOf(build.Limits ?? new Limits()),
        Sizing = SizingOf(build.Sizing ?? new Sizing()),
        Tolerances = TolerancesOf(build.Tolerances ?? new Tolerances()),
        Include = [.. (build.Include ?? []).Select(extra => extra).Distinct().Order()],
    };

    private static Engine.Builds.Amplifier LoadOf(Amplifier amplifier) => new()
    {
        Id = amplifier.Id,
        RatedOutputWatts = Stated<Amplifier>.Value(amplifier.RatedOutput, nameof(amplifier.RatedOutput)),
        RatedInputAmps = Stated<Amplifier>.Value(amplifier.RatedInputCurrent, nameof(amplifier.RatedInputCurrent)),
        LowestSupplyVolts = Stated<SupplyRange>.Value(amplifier.SupplyRange?.Lowest, nameof(SupplyRange.Lowest)),
        HighestSupplyVolts = Stated<SupplyRange>.Value(amplifier.SupplyRange?.Highest, nameof(SupplyRange.Highest)),
        OnBoardFuseAmps = Stated<Amplifier>.Value(amplifier.Fuse, nameof(amplifier.Fuse)),
        Class = amplifier.AmplifierClass,
        Efficiency = Stated<Amplifier>.Value(amplifier.Efficiency, nameof(amplifier.Efficiency)),
        PowerSupply = amplifier.PowerSupply,
        Programme = amplifier.Programme,
        CrestFactorDecibels = Stated<Amplifier>.Value(amplifier.CrestFactor, nameof(amplifier.CrestFactor)),
        LargestConductor = StatedSize.Of(amplifier.LargestConductor),
        Terminals = amplifier.Terminals,
    };

    private static Engine.Builds.Junction JunctionOf(Junction junction) =>
        new() { Id = junction.Id, LargestConductor = StatedSize.Of(junction.LargestConductor) };

    private static Engine.Builds.Limits LimitsOf(Limits limits)
    {
        QuantityReading drop = limits.MaxDrop is null ? default : Stated<Limits>.Read(limits.MaxDrop, nameof(limits.MaxDrop));
        return new Engine.Builds.Limits
        {
            MaxDropVolts = limits.MaxDrop is not null && drop.Kind == QuantityKind.Voltage ? drop.Value : null,
            MaxDropFraction = limits.MaxDrop is not null && drop.Kind == QuantityKind.Ratio ? drop.Value : null,
            EngineOffMinutes = Stated<Limits>.Value(limits.EngineOffTime, nameof(limits.EngineOffTime)) / SecondsPerMinute,
            EngineBayCelsius = Stated<Limits>.Value(limits.EngineBayTemperature, nameof(limits.EngineBayTemperature)),
            CabinCelsius = Stated<Limits>.Value(limits.CabinTemperature, nameof(limits.CabinTemperature)),
            UnderbodyCelsius = Stated<Limits>.Value(limits.UnderbodyTemperature, nameof(limits.UnderbodyTemperature)),
        };
    }

    private static Engine.Builds.SizingWishes SizingOf(Sizing sizing) => new()
    {
        Materials = [.. (sizing.Materials ?? []).Select(material => material)],
        Sizes = [.. (sizing.Sizes ?? []).Select(size => StatedSize.Of(size)!)],
        MaxParallel = sizing.MaxParallel,
        FuseFamilies = [.. (sizing.FuseFamilies ?? []).Distinct().Order()],
        GroundSize = sizing.GroundSize ?? default,
        Prefer = (sizing.Prefer ?? default),
        Prices = [.. (sizing.Prices ?? []).Select(PriceOf)],
        FusePrices = [.. (sizing.FusePrices ?? []).Select(price => new Engine.Builds.FusePrice(price.Family, price.Price))],
        TerminalPrices =
            [.. (sizing.TerminalPrices ?? [])
                .Select(price => new Engine.Builds.TerminalPrice(StatedSize.Of(price.Size)!, price.Price))],
        BlockPrice = sizing.DistributionBlockPrice,
        Currency = sizing.Currency,
    };

    private static Engine.Builds.ConductorPrice PriceOf(ConductorPrice price) => new(
        StatedSize.Of(price.Size)!,
        (price.Material ?? default),
        price.Price / Stated<ConductorPrice>.Read(price.Per, nameof(price.Per)).Value);

    private static Engine.Builds.Tolerances TolerancesOf(Tolerances tolerances) => new()
    {
        EfficiencyShare = Stated<Tolerances>.Value(tolerances.Efficiency, nameof(tolerances.Efficiency)),
        ChargingVolts = Stated<Tolerances>.Value(tolerances.ChargingVoltage, nameof(tolerances.ChargingVoltage)),
        LengthShare = Stated<Tolerances>.Value(tolerances.Length, nameof(tolerances.Length)),
        SurroundingsKelvin = Stated<Tolerances>.Value(tolerances.Surroundings, nameof(tolerances.Surroundings)),
    };
}
