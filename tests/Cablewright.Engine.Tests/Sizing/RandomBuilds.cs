using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>Random builds with open runs, the same for the same seed.</summary>
internal sealed class RandomBuilds(int seed)
{
    public static readonly ConductorSize[] TwelveSizes =
        [.. new[] { "18", "16", "14", "12", "10", "8", "6", "4", "2", "1/0", "2/0", "4/0" }.Select(
            size => ConductorSize.Of(size + " AWG"))];

    public static readonly ConductorSize[] EightSizes =
        [.. new[] { "16", "12", "10", "8", "6", "4", "2", "1/0" }.Select(size => ConductorSize.Of(size + " AWG"))];

    private readonly Random random = new(seed);

    /// <summary>One amplifier behind a block, or two on a main run, returns over the body; 3 open runs of 12 sizes.</summary>
    public Build ThreeOpen()
    {
        Build build = random.Next(2) == 0 ? OneBehindABlock() : TwoOnAMainRun();
        return build with { Sizing = new SizingWishes { Sizes = TwelveSizes, Prefer = Draw(Prefer.Cost, Prefer.Mass) } };
    }

    private Build OneBehindABlock() => Wired(
        [Any("a0", 900)],
        Open("main", "starter", "block", 4),
        Open("feed", "block", "a0", 2),
        Open("return", "a0", "starter", 4));

    private Build TwoOnAMainRun() => Wired(
        [Any("a0", 700), Any("a1", 500)],
        Open("main", "starter", "block", 4),
        Open("feed0", "block", "a0", 2),
        Open("feed1", "block", "a1", 2),
        Run("return0", "a0", "body", 0.5, "1/0 AWG"),
        Run("return1", "a1", "body", 0.5, "1/0 AWG"));

    /// <summary>Two amplifiers on a given main run, a feed and a return each; 4 open runs of 8 sizes.</summary>
    public Build FourOpen() => Wired(
        [Any("a0", 500), Any("a1", 300)],
        Run("main", "starter", "block", Metres(3), "2/0 AWG"),
        Open("feed0", "block", "a0", 2), Open("feed1", "block", "a1", 2), Open("return0", "a0", "body", 2),
        Open("return1", "a1", "body", 2))
        with
    { Sizing = new SizingWishes { Sizes = EightSizes } };

    /// <summary>Three open runs of two metals and six sizes, with prices.</summary>
    public Build Priced()
    {
        ConductorSize[] six = [.. TwelveSizes.Where((_, index) => index % 2 == 1)];
        Material[] metals = [Material.Copper, Material.CopperCladAluminium];
        Build build = ThreeOpen();
        return build with
        {
            Runs = [.. build.Runs.Select(
                run => run.Conductor.Size is null ? run with { Conductor = new ConductorWish { Count = 1 } } : run)],
            Sizing = new SizingWishes
            {
                Sizes = six,
                Materials = metals,
                FusePrices =
                    [.. Enum.GetValues<FuseFamilyName>().Select(family => new FusePrice(family, Math.Round(Uniform(0.2, 4), 2)))],
                TerminalPrices = [.. six.Select(size => new TerminalPrice(size, Math.Round(Uniform(0.05, 1), 2)))],
                Currency = "EUR",
                Prices = [.. from size in six from metal in metals select new ConductorPrice(size, metal, PriceOf(size, metal))],
            },
        };
    }

    private double PriceOf(ConductorSize size, Material metal) =>
        Math.Round(0.1 * size.MetalAreaMm2 * Uniform(0.6, 1.4) * (metal is Material.Copper ? 1 : 0.5), 2) + 0.01;

    /// <summary>Two ways to one block, so that nothing on them is certain; 3 open runs of 8 sizes.</summary>
    public Build Looped() => Wired(
        [Any("a0", 900)],
        Open("one-way", "starter", "block", 3), Open("other-way", "starter", "block", 5), Open("feed", "block", "a0", 2),
        Run("return", "a0", "starter", 2, "2/0 AWG")) with
    { Sizing = new SizingWishes { Sizes = EightSizes } };

    /// <summary>
    /// A large load over thin conductors, of which several may lie in parallel; 2 open runs of two or three sizes, one of them
    /// now and then of a stated count.
    /// </summary>
    public Build Parallel()
    {
        Amplifier[] loads = [Any("a0", 2500)];
        Build build = random.Next(3) switch
        {
            0 => Wired(
                loads, Free("main", "starter", "block", 5), Free("feed", "block", "a0", 2),
                Run("return", "a0", "body", 0.5, "4/0 AWG")),
            1 => Wired(
                loads, Run("main", "starter", "block", Metres(2), "4/0 AWG"), Free("feed", "block", "a0", 4),
                Free("return", "a0", "body", 3)),
            _ => Wired(
                [Any("a0", 1500), Any("a1", 1500)], Run("main", "starter", "block", Metres(2), "4/0 AWG"),
                Free("feed0", "block", "a0", 4),
                Free("feed1", "block", "a1", 4), Run("return0", "a0", "body", 0.5, "4/0 AWG"),
                Run("return1", "a1", "body", 0.5, "4/0 AWG")),
        };
        int first = random.Next(2, 7);
        return build with
        {
            Sizing = new SizingWishes
            {
                Sizes = TwelveSizes[first..(first + random.Next(2, 4))],
                Prefer = Draw(Prefer.Cost, Prefer.Mass),
            },
        };
    }

    /// <summary>A rear battery that recharges at the end of the main run; 3 open runs of 8 sizes.</summary>
    public Build TwoBatteries()
    {
        Build build = Wired(
            [Any("a0", 500)],
            Open("tie", "starter", "rear", 2), Open("feed", "rear", "a0", 1), Open("return", "a0", "body", 1),
            Run("rear-strap", "rear", "body", 0.4, "1/0 AWG") with { Side = Side.Return });
        return build with
        {
            Vehicle = build.Vehicle with
            {
                Batteries =
                    [.. build.Vehicle.Batteries, new Battery { Id = "rear", Chemistry = Chemistry.Agm, InternalOhms = 0.004 }],
            },
            Sizing = new SizingWishes { Sizes = [.. TwelveSizes[4..]] },
        };
    }

    /// <summary>A main run, sometimes a second block behind it, and many amplifiers with a feed and a return each.</summary>
    /// <param name="amplifiers">How many.</param>
    public Build Tree(int amplifiers)
    {
        bool isDeep = amplifiers > 4 && random.Next(2) == 0;
        Run[] runs = [.. Enumerable.Range(0, amplifiers).SelectMany(i => new[]
        {
            Open($"feed{i}", isDeep && i % 2 == 1 ? "rear-block" : "block", $"a{i}", 2), Open($"return{i}", $"a{i}", "body", 2),
        })];
        return Wired(
            [.. Enumerable.Range(0, amplifiers).Select(i => Any($"a{i}", 900 / Math.Sqrt(amplifiers)))],
            [Open("main", "starter", "block", 2), .. isDeep ? new[] { Open("link", "block", "rear-block", 2) } : [], .. runs]);
    }

    private Build Wired(Amplifier[] amplifiers, params Run[] runs) => new()
    {
        Vehicle = new Vehicle
        {
            ChargingVolts = Uniform(13.4, 14.6),
            BodyReturnOhms = Uniform(0.0001, 0.0004),
            Batteries = [new Battery { Id = "starter", InternalOhms = 0.005 }],
        },
        Amplifiers = amplifiers,
        Runs = runs.Any(run => run.To == "body")
            ? [.. runs, Run("strap", "body", "starter", 0.3, "4/0 AWG")]
            : runs,
        Limits = new Limits { CabinCelsius = 40, EngineBayCelsius = 80, UnderbodyCelsius = 60 },
    };

    private Amplifier Any(string id, double mostWatts) => new()
    {
        Id = id,
        RatedOutputWatts = Uniform(mostWatts / 8, mostWatts),
        Efficiency = Uniform(0.55, 0.85),
        Class = Draw(AmplifierClass.AB, AmplifierClass.D),
        PowerSupply = random.Next(4) == 0 ? PowerSupply.Unregulated : PowerSupply.Regulated,
        Programme = Draw(Programme.Sine, Programme.Compressed, Programme.Dynamic),
    };

    private Run Open(string id, string from, string to, double mostMetres) => Run(id, from, to, Metres(mostMetres), "4 AWG") with
    {
        Conductor = new ConductorWish { Material = Material.Copper, InsulationCelsius = 105, Count = 1 },
        Route = Draw(Route.Cabin, Route.Cabin, Route.Underbody, Route.Loom),
    };

    private Run Free(string id, string from, string to, double mostMetres)
    {
        Run open = Open(id, from, to, mostMetres);
        int? count = random.Next(4) == 0 ? random.Next(2, 5) : null;
        return open with { Conductor = open.Conductor with { Size = null, Count = count } };
    }

    private double Metres(double most) => Uniform(0.3, most);

    private double Uniform(double least, double most) => least + (most - least) * random.NextDouble();

    private T Draw<T>(params T[] among) => among[random.Next(among.Length)];
}
