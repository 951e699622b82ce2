using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;
using CsCheck;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Properties;

/// <summary>Random builds in which everything is given.</summary>
internal static class GivenBuilds
{
    public static readonly string[] Gauges = ["12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0"];

    private static readonly Gen<string> AnyGauge = Gen.OneOfConst(Gauges).Select(gauge => gauge + " AWG");
    private static readonly Gen<string> LargeGauge = Gen.OneOfConst(Gauges[4..]).Select(gauge => gauge + " AWG");

    private static readonly Gen<FuseWish> AnyFuse = Gen.OneOfConst(60.0, 100, 150, 200, 300, 500).Select(Anl);

    private static readonly Gen<Amplifier> RegulatedAmplifier =
        Gen.Select(
            Gen.Double[50, 1500],
            Gen.Double[0.5, 0.9],
            Gen.Enum<AmplifierClass>(),
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

    private static readonly Gen<Amplifier> AnyAmplifier = Gen.Select(
        RegulatedAmplifier, Gen.Enum<PowerSupply>(), (amplifier, supply) => amplifier with { PowerSupply = supply });

    /// <summary>A main run to a block, one to four amplifiers from it, returns over the body: a tree.</summary>
    public static Gen<Build> Trees { get; } = BuildsOf(RegulatedAmplifier);

    /// <summary>The same, with any converter and a second way to the block.</summary>
    public static Gen<Build> Loops { get; } = Gen.Select(
        BuildsOf(AnyAmplifier), RunOf("second-way", "starter", "block", LargeGauge, 8), Gen.Int[0, 3], (build, second, cross) =>
        {
            Build looped = build.With(second);
            return build.Amplifiers.Count < 2 || cross == 0
                ? looped
                : looped.With(Run("cross", "a0", "a1", 0.5 * cross, "4 AWG") with { Side = Side.Supply, Fuse = Anl(100) });
        });

    private static Gen<Build> BuildsOf(Gen<Amplifier> amplifier) => Gen.Select(
        Gen.Double[12.8, 14.8],
        Gen.Double[0.0002, 0.002],
        RunOf("main", "starter", "block", LargeGauge, 8),
        Gen.Select(amplifier, RunOf("feed", "block", "", AnyGauge, 3), RunOf("return", "", "body", AnyGauge, 3)).Array[1, 4],
        (volts, body, main, branches) => new Build
        {
            Vehicle = new Vehicle
            {
                ChargingVolts = volts,
                BodyReturnOhms = body,
                Batteries = [new Battery { Id = "starter", InternalOhms = 0.005 }],
            },
            Amplifiers = [.. branches.Select((branch, i) => branch.Item1 with { Id = $"a{i}" })],
            Runs =
            [
                main,
                Run("strap", "body", "starter", 0.4, "4/0 AWG"),
                .. branches.Select((branch, i) => branch.Item2 with { Id = $"feed{i}", To = $"a{i}" }),
                .. branches.Select((branch, i) => branch.Item3 with { Id = $"return{i}", From = $"a{i}", Fuse = null }),
            ],
            Limits = new Limits { CabinCelsius = 40, EngineBayCelsius = 80, UnderbodyCelsius = 60 },
        });

    private static Gen<Run> RunOf(string id, string from, string to, Gen<string> gauge, double longest) =>
        Gen.Select(
            gauge,
            Gen.Enum<Material>(),
            Gen.Double[0.2, longest],
            Gen.Int[1, 3],
            Gen.Enum<Route>(),
            AnyFuse,
            (size, material, metres, count, route, fuse) =>
            {
                Run run = Run(id, from, to, metres, size, material);
                return run with { Route = route, Fuse = fuse, Conductor = run.Conductor with { Count = count } };
            });
}
