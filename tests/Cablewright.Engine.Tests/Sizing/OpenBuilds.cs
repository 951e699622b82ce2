using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Contract.Assessments;
using Cablewright.Vocabulary;
using CsCheck;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>Random builds in which conductors and fuses are left open, and what was chosen put back as given.</summary>
internal static class OpenBuilds
{
    private static readonly ConductorWish Open = new() { Material = Material.Copper, InsulationCelsius = 105, Count = 1 };

    private static readonly Gen<Amplifier> AnyAmplifier =
        Gen.Select(
            Gen.Double[100, 1200],
            Gen.Double[0.55, 0.85],
            Gen.OneOfConst(AmplifierClass.AB, AmplifierClass.D),
            Gen.Enum<Programme>(),
            (watts, efficiency, kind, programme) =>
                new Amplifier
                {
                    Id = "",
                    RatedOutputWatts = watts,
                    Efficiency = efficiency,
                    Class = kind,
                    Programme = programme,
                    PowerSupply = PowerSupply.Regulated,
                });

    /// <summary>A main run, a block, and one to three amplifiers with a return each, all open.</summary>
    public static Gen<Build> Trees { get; } = Gen.Select(
        Gen.Double[13.2, 14.6],
        Gen.Double[0.0001, 0.0006],
        Gen.Double[0.5, 6],
        Gen.Select(AnyAmplifier, Gen.Double[0.3, 3], Gen.Double[0.3, 2]).Array[1, 3],
        (volts, body, metres, branches) => Tree(volts, body, metres, branches));

    /// <summary>One amplifier, one open run there and one open run back.</summary>
    public static Gen<Build> ThereAndBack { get; } = Gen.Select(
        AnyAmplifier, Gen.Double[13.2, 14.6], Gen.Double[0.5, 8], Gen.Double[0.3, 8], (amplifier, volts, there, back) =>
            OneAmplifier() with
            {
                Vehicle = OneAmplifier().Vehicle with { ChargingVolts = volts },
                Amplifiers = [amplifier with { Id = "bass" }],
                Runs = [OpenRun("main", "starter", "bass", there), OpenRun("return", "bass", "starter", back)],
            });

    /// <summary>Many amplifiers of different power and distance on one main run, all open.</summary>
    public static Build Star(int amplifiers) => Tree(14.4, 0.0002, 2, [.. Enumerable.Range(1, amplifiers).Select(i =>
        (OneAmplifier().Amplifiers[0] with { RatedOutputWatts = 15 * i }, 0.3 + 0.1 * i, 0.3 + 0.05 * i))]);

    /// <summary>The build with every choice of an answer stated.</summary>
    public static Build Restated(Build build, Assessment answer) => build with
    {
        Runs = [.. build.Runs.Zip(answer.Runs, (run, chosen) => run with
        {
            Conductor = run.Conductor with
            {
                Size = ConductorSize.Of(chosen.Conductor.Size),
                Material = chosen.Conductor.Material,
                Count = chosen.Conductor.Count,
            },
            Fuse = Restated(chosen.Fuse) ?? run.Fuse,
            FarFuse = Restated(chosen.FarFuse) ?? run.FarFuse,
        })],
    };

    public static Build WithSize(this Build build, string run, ConductorSize size) =>
        build.WithRun(run, changed => changed with { Conductor = changed.Conductor with { Size = size } });

    private static FuseWish? Restated(FuseResult? fuse) => fuse is null ? null : new FuseWish
    {
        RatingAmps = fuse.RatingAmps,
        Family = fuse.Family,
        DistanceMetres = fuse.DistanceMetres,
        PerConductor = fuse.PerConductor,
    };

    private static Build Tree(
        double volts, double body, double metres, (Amplifier Amplifier, double There, double Back)[] branches) =>
        new()
        {
            Vehicle = new Vehicle
            {
                ChargingVolts = volts,
                BodyReturnOhms = body,
                Batteries = [new Battery { Id = "starter", InternalOhms = 0.005 }],
            },
            Amplifiers = [.. branches.Select((branch, i) => branch.Amplifier with { Id = $"a{i}" })],
            Runs =
            [
                OpenRun("main", "starter", "block", metres),
                Run("strap", "body", "starter", 0.3, "4/0 AWG"),
                .. branches.Select((branch, i) => OpenRun($"feed{i}", "block", $"a{i}", branch.There)),
                .. branches.Select((branch, i) => OpenRun($"return{i}", $"a{i}", "body", branch.Back)),
            ],
            Limits = new Limits { CabinCelsius = 40, EngineBayCelsius = 80, UnderbodyCelsius = 60 },
        };

    private static Run OpenRun(string id, string from, string to, double metres) =>
        Run(id, from, to, metres, "4 AWG") with { Conductor = Open };
}
