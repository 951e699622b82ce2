using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests;

/// <summary>Builds with everything given, and ways to change one thing about them.</summary>
internal static class SampleBuilds
{
    /// <summary>1000 W, class D, 80 %, a full tone, over 16 ft of 1/0 from 14.0 V: the golden case "one-amplifier-one-run".
    /// Nothing is wrong with it.</summary>
    public static Build OneAmplifier() => new()
    {
        Vehicle = new Vehicle
        {
            ChargingVolts = 14,
            BodyReturnOhms = 0.001,
            StandbyLoadAmps = 5,
            Batteries = [Starter()],
        },
        Amplifiers =
        [
            new Amplifier
            {
                Id = "bass", RatedOutputWatts = 1000, Efficiency = 0.8, Class = AmplifierClass.D,
                PowerSupply = PowerSupply.Regulated, Programme = Programme.Sine,
            },
        ],
        Runs =
        [
            Run("main", "starter", "bass", 4.8768, "1/0 AWG") with { Fuse = Anl(150) },
            Run("return", "bass", "body", 0.6, "1/0 AWG"),
            Run("strap", "body", "starter", 0.4, "1/0 AWG") with { Route = Route.EngineBay, JointOhms = 0.0001 },
        ],
        Limits = new Limits { CabinCelsius = 40, EngineBayCelsius = 80, UnderbodyCelsius = 60 },
    };

    /// <summary>A flooded battery of 70 Ah behind 5 mΩ, with everything stated that its energy hangs on.</summary>
    public static Battery Starter() => new()
    {
        Id = "starter",
        InternalOhms = 0.005,
        Chemistry = Chemistry.Flooded,
        CapacityAmpHours = 70,
        RatingHours = 20,
        PeukertExponent = 1.25,
        UsableShare = 0.5,
        StateOfCharge = 1,
    };

    /// <summary>
    /// A load of exactly these amperes, 1 m of 6 AWG each way, 40 °C, a 100 A fuse: ampacity 120 A · √(65/75) = 111.7 A.
    /// </summary>
    public static Build ConstantCurrent(double amps) => OneAmplifier() with
    {
        Amplifiers = [new Amplifier { Id = "bass", OnBoardFuseAmps = amps }],
        Runs =
        [
            Run("main", "starter", "bass", 1, "6 AWG") with { Fuse = Anl(100) },
            Run("return", "bass", "starter", 1, "6 AWG"),
        ],
    };

    /// <summary>
    /// 400 W over 6 m of 4 AWG behind a blade fuse whose band is read and whose interrupting rating is stated: it passes. At 14 V
    /// it draws 36.7 A; a blade of 70 A carries 0.75 of that without end: 52.5 A.
    /// </summary>
    public static Build Proved() => OneAmplifier() with
    {
        Amplifiers = [OneAmplifier().Amplifiers[0] with { RatedOutputWatts = 400 }],
        Runs =
        [
            Run("main", "starter", "bass", 6, "4 AWG") with { Fuse = Blade(70) },
            Run("return", "bass", "body", 0.6, "4 AWG"),
            Run("strap", "body", "starter", 0.4, "4 AWG") with { Route = Route.EngineBay, JointOhms = 0.0001 },
        ],
    };

    public static Run Run(string id, string from, string to, double metres, string size, Material material = Material.Copper) =>
        new()
        {
            Id = id,
            From = from,
            To = to,
            LengthMetres = metres,
            Route = Route.Cabin,
            JointOhms = 0.0002,
            Conductor =
                new ConductorWish { Size = ConductorSize.Of(size), Material = material, Count = 1, InsulationCelsius = 105 },
        };

    public static FuseWish Anl(double amps) => new() { RatingAmps = amps, Family = FuseFamilyName.Anl, DistanceMetres = 0.15 };

    /// <summary>A type E blade with an interrupting rating above any fault of these builds.</summary>
    public static FuseWish Blade(double amps) =>
        Anl(amps) with { Family = FuseFamilyName.BladeE, InterruptingRatingAmps = 20_000 };

    public static FuseWish NoFuse { get; } = new() { Fitted = false };

    public static Build WithRun(this Build build, string id, Func<Run, Run> change) => build with
    {
        Runs = [.. build.Runs.Select(run => run.Id == id ? change(run) : run)],
    };

    public static Build WithAmplifier(this Build build, Func<Amplifier, Amplifier> change) => build with
    {
        Amplifiers = [.. build.Amplifiers.Select(change)],
    };

    public static Build With(this Build build, params Run[] more) => build with { Runs = [.. build.Runs, .. more] };

    public static Build WithAlternator(this Build build, double ratedAmps, double? idleAmps = null) => build with
    {
        Vehicle = build.Vehicle with
        {
            Alternator = new Alternator { RatedAmps = ratedAmps, IdleAmps = idleAmps ?? ratedAmps, HotFactor = 0.8 },
            BaseLoadAmps = 45,
        },
    };

    public static Run Sized(this Run run, string size) =>
        run with { Conductor = run.Conductor with { Size = ConductorSize.Of(size) } };
}
