using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Shapes;

/// <summary>Amplifiers behind one block at the end of a main run, each fed over any number of runs in line.</summary>
internal static class StarBuild
{
    /// <summary>Four amplifiers of 300 W and nine runs, everything stated.</summary>
    public static Build Small { get; } = Given(4, 9, 300);

    /// <summary>A build in which everything is stated.</summary>
    /// <param name="amplifiers">How many amplifiers; each has a feed and a return.</param>
    /// <param name="runs">How many runs: the main run, feeds and returns; what is more lies in line with the feeds.</param>
    /// <param name="watts">Rated output of each amplifier.</param>
    public static Build Given(int amplifiers, int runs, double watts)
    {
        var inLine = new int[amplifiers];
        for (int i = 0; i < runs - 1 - amplifiers; i++) inLine[i % amplifiers]++;
        return new Build
        {
            Vehicle = new Vehicle
            {
                ChargingVolts = 13.8,
                BodyReturnOhms = 0.0005,
                Alternator = new Alternator { RatedAmps = 160, IdleAmps = 80, HotFactor = 0.8 },
                BaseLoadAmps = 45,
                Batteries = [new Battery { Id = "starter", Chemistry = Chemistry.Agm, InternalOhms = 0.005 }],
            },
            Amplifiers = [.. Enumerable.Range(0, amplifiers).Select(i => Amplifier(i, watts))],
            Runs =
            [
                Run("main", "starter", "block", 2, "2/0 AWG") with { Fuse = Fuse(FuseFamilyName.Anl, 200) },
                .. Enumerable.Range(0, amplifiers).SelectMany(i => Feed(i, inLine[i])),
                .. Enumerable.Range(0, amplifiers).Select(i => Run($"return{i}", $"a{i}", "body", 0.5, "8 AWG")),
            ],
            Limits = new Limits { MaxDropFraction = 0.05, CabinCelsius = 40, EngineBayCelsius = 80, UnderbodyCelsius = 60 },
        };
    }

    /// <summary>The same build with all conductors, all fuses and all that may be asked for left out.</summary>
    public static Build Open(Build given) => given with
    {
        Vehicle = new Vehicle { Batteries = given.Vehicle.Batteries },
        Amplifiers = [.. given.Amplifiers.Select(amplifier => new Amplifier
        {
            Id = amplifier.Id,
            RatedOutputWatts = amplifier.RatedOutputWatts,
        })],
        Runs = [.. given.Runs.Select(run => new Run
        {
            Id = run.Id,
            From = run.From,
            To = run.To,
            LengthMetres = run.LengthMetres,
        })],
        Limits = new Limits(),
    };

    /// <summary>The same build with a main run that is too thin.</summary>
    public static Build WithThinMain(Build build) => build with
    {
        Runs = [.. build.Runs.Select((run, index) =>
            index == 0 ? run with { Conductor = run.Conductor with { Size = ConductorSize.Of("8 AWG") } } : run)],
    };

    private static Amplifier Amplifier(int index, double watts) => new()
    {
        Id = $"a{index}",
        RatedOutputWatts = watts,
        Efficiency = 0.8,
        Class = AmplifierClass.D,
        PowerSupply = PowerSupply.Regulated,
        Programme = Programme.Compressed,
    };

    private static IEnumerable<Run> Feed(int amplifier, int runs) => Enumerable.Range(0, runs).Select(part =>
    {
        string from = part == 0 ? "block" : $"joint{amplifier}-{part}", to = $"joint{amplifier}-{part + 1}";
        Run run = Run($"feed{amplifier}-{part}", from, part == runs - 1 ? $"a{amplifier}" : to, 1.5 / runs, "8 AWG");
        return part == 0 ? run with { Fuse = Fuse(FuseFamilyName.BladeC, 40) } : run;
    });

    private static Run Run(string id, string from, string to, double metres, string size) => new()
    {
        Id = id,
        From = from,
        To = to,
        LengthMetres = metres,
        Route = Route.Cabin,
        JointOhms = 0.0001,
        Conductor = new ConductorWish
        {
            Size = ConductorSize.Of(size),
            Material = Material.Copper,
            Count = 1,
            InsulationCelsius = 105,
        },
    };

    private static FuseWish Fuse(FuseFamilyName family, double amps) => new()
    {
        RatingAmps = amps,
        Family = family,
        DistanceMetres = 0.15,
        InterruptingRatingAmps = 20_000,
    };
}
