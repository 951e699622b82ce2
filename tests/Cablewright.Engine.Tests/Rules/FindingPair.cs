using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Rules;

/// <summary>
/// For one finding a build that must produce it and a close neighbour that must not, either side of a limit found by hand.
/// </summary>
/// <param name="Code">The finding.</param>
/// <param name="Limit">How the limit was found.</param>
/// <param name="Must">The build that has it.</param>
/// <param name="MustNot">Its neighbour.</param>
internal sealed record FindingPair(string Code, string Limit, Build Must, Build MustNot)
{
    public static IReadOnlyList<FindingPair> All { get; } =
        [.. Circuit(), .. Heat(), .. Fuses(), .. ShortCircuits(), .. Overloads(), .. Places(), .. Supply(), .. SupplyPairs.All];

    private static IEnumerable<FindingPair> Circuit()
    {
        yield return new FindingPair(
            "circuit.voltage-collapse",
            "60 m of 18 AWG at 40 C: 60 x 21.367 mohm x 1.0786 = 1.383 ohm; "
            + "at 12 V P = V^2/4R = 26.0 W, less up to 2 % for its own heat",
            ThinWire(27), ThinWire(25));
        yield return new FindingPair(
            "amplifier.drop-over-limit",
            "stated limit; the golden case loses 91.8955 A x 0.328867 x (4.8768 + 0.6) x 1.106955 mohm in its conductors: "
            + "0.18322 V",
            Losing(0.1831), Losing(0.1833));
        yield return new FindingPair(
            "amplifier.drop-over-limit",
            "10 % of 14 V in the conductors, with 2.3335 mohm besides: u = 12.3641 V, I = 101.099 A, R = 13.8478 mohm "
            + "of 0.365851 mohm/m at 48.615 C: 37.851 m with 0.6 m of return",
            MainOf(37.30), MainOf(37.20));
        yield return new FindingPair(
            "amplifier.drop-high",
            "5 % of 14 V in the conductors, with 2.3331 mohm besides: u = 13.0770 V, I = 95.5878 A, R = 7.32311 mohm "
            + "of 0.364750 mohm/m at 47.763 C: 20.077 m with 0.6 m of return",
            MainOf(19.53), MainOf(19.43));
        yield return new FindingPair(
            "amplifier.drop-high", "above the limit of 10 % it is another finding", MainOf(37.20), MainOf(37.30));
        yield return new FindingPair(
            "amplifier.drop-over-target",
            "3 % of 14 V in the conductors, with 2.3329 mohm besides: u = 13.3618 V, I = 93.5506 A, R = 4.48955 mohm "
            + "of 0.364356 mohm/m at 47.458 C: 12.322 m with 0.6 m of return",
            MainOf(11.77), MainOf(11.67));
        yield return new FindingPair(
            "amplifier.drop-over-target", "above 5 % it is another finding", MainOf(19.43), MainOf(19.53));
        yield return new FindingPair(
            "amplifier.outside-supply-range", "the golden case is charged at 14 V",
            WorkingIn(9, 13.99), WorkingIn(9, 14));
        yield return new FindingPair(
            "amplifier.outside-supply-range", "the golden case has 13.6024 V at its terminals",
            WorkingIn(13.603, 16), WorkingIn(13.602, 16));
        yield return new FindingPair(
            "amplifier.outside-supply-range", "at most 16 V where nothing is stated, whatever the vehicle",
            ChargedAt(16.1), ChargedAt(16));
        yield return new FindingPair(
            "amplifier.return-below-supply", "a return of 2 AWG under a supply of 1/0",
            OneAmplifier().WithRun("return", run => run.Sized("2 AWG")), OneAmplifier());
    }

    private static IEnumerable<FindingPair> Heat()
    {
        yield return new FindingPair(
            "run.over-ampacity", "6 AWG at 40 C: 120 A x sqrt(65/75) = 111.71 A", ConstantCurrent(111.8), ConstantCurrent(111.6));
        yield return new FindingPair(
            "run.surroundings-above-insulation", "insulation of 80 C in an engine bay of 80 C, or of 79 C",
            StrapRated80In(80), StrapRated80In(79));
    }

    private static IEnumerable<FindingPair> Fuses()
    {
        yield return new FindingPair(
            "fuse.opens-at-full-output",
            "an ANL holds 2 s up to 1.35 x (2/1.35)^(ln 40/ln 80) = 1.87944 times its 40 A: 75.178 A",
            FusedAt(75.2, 40), FusedAt(75.1, 40));
        yield return new FindingPair(
            "fuse.missing-at-battery", "no fuse, or one",
            OneAmplifier().WithRun("main", run => run with { Fuse = NoFuse }), OneAmplifier());
        yield return new FindingPair(
            "fuse.missing-at-reduction", "8 AWG at 40 C: 80 A x sqrt(65/75) = 74.5 A, behind a fuse of 80 A or 60 A",
            Reduction(80), Reduction(60));
        yield return new FindingPair(
            "fuse.above-conductor-rating", "6 AWG at 40 C: 111.7 A, with a fuse of 130 A or 100 A",
            FusedAt(40, 130), FusedAt(40, 100));
        yield return new FindingPair(
            "run.no-fuse-fits",
            "81 A ask for 81/0.8 = 101 A, the next rating is 130 A, and 6 AWG bears 111.7 A; 80 A are served by 100 A",
            FuseLeftOpen(81), FuseLeftOpen(80));
        yield return new FindingPair(
            "run.parallel-unguarded", "two 6 AWG bear 111.7 A each; one fuse of 150 A or 100 A for both",
            TwoConductors(150), TwoConductors(100));
        yield return new FindingPair(
            "run.parallel-unguarded", "one fuse of 100 A for each of two 6 AWG, or one of 150 A for both", TwoConductors(150),
            TwoConductors(100).WithRun("main", run => run with { Fuse = Anl(100) with { PerConductor = true } }));
        yield return new FindingPair(
            "fuse.below-load", "a fuse of 100 A carries 80 A without end", ConstantCurrent(80.1), ConstantCurrent(80));
        yield return new FindingPair(
            "fuse.not-standard-rating", "ANL is made in 100 A and not in 110 A", FusedAt(40, 110), FusedAt(40, 100));
        yield return new FindingPair(
            "fuse.voltage-rating-too-low", "16 V is the highest voltage of a 12 V system (ISO 16750-2)",
            FuseRated(15.9), FuseRated(16));
        yield return new FindingPair(
            "fuse.too-far-from-source", "18 in = 0.4572 m (NEC 552.10(E)(4))", FuseAt(0.4580), FuseAt(0.4572));
        yield return new FindingPair(
            "fuse.not-near-source", "7 in = 0.1778 m (33 CFR 183.455)", FuseAt(0.1780), FuseAt(0.1778));
        yield return new FindingPair(
            "fuse.must-be-fitted", "a fuse left out at the battery, or stated",
            OneAmplifier().WithRun("main", run => run with { Fuse = null }), OneAmplifier());
        yield return new FindingPair(
            "fuse.in-return", "a fuse stated in the return, or none",
            OneAmplifier().WithRun("return", run => run with { Fuse = Anl(150) }), OneAmplifier());
    }

    private static IEnumerable<FindingPair> ShortCircuits()
    {
        yield return new FindingPair(
            "fuse.may-not-open",
            "a 40 A blade is certain from 1.35 x 40 = 54 A: 12 V/54 A = 222.22 mohm; "
            + "less battery 5, joints 2 x 0.2, fuse 0.13/40 = 3.25: "
            + "213.57 mohm of 12 AWG at 105 C (5.3150 x 1.33405 = 7.0905 mohm/m) there and back: 2 x 15.060 m",
            ShortCircuited(15.07, "12 AWG", BladeC(40)), ShortCircuited(15.05, "12 AWG", BladeC(40)));
        yield return new FindingPair(
            "fuse.opens-too-late",
            "between 3.5 and 6 times its rating an 80 A type E blade may take (480 A/I)^(ln 7/ln(6/3.5)) = (480 A/I)^3.61025 s; "
            + "11 AWG at 40 C withstands (135.90 x 4.17229 A/I)^2 s: both 2.1108 s at 390.28 A, 12 V/390.28 A = 30.747 mohm; "
            + "less battery 5, joints 2 x 0.2, fuse 0.1/80 = 1.25: 24.097 mohm of 11 AWG at 105 C (4.21500 x 1.33405 = "
            + "5.62303 mohm/m) there and back: 2 x 2.14274 m; a shorter path gives a larger current",
            ShortCircuited(2.15, "11 AWG", Blade(80)), ShortCircuited(2.135, "11 AWG", Blade(80)));
        yield return new FindingPair(
            "fuse.band-from-memory",
            "between 3.5 and 6 times its rating a 130 A ANL may take (780 A/I)^(ln 5/ln(6/3.5)) = (780 A/I)^2.98599 s, three "
            + "times that where it is misremembered; 7 AWG at 40 C withstands (135.90 x 10.5488 A/I)^2 s: both 4.2973 s at "
            + "691.55 A, 12 V/691.55 A = 17.352 mohm; less battery 5, joints 2 x 0.2, fuse 0.1/130 = 0.7692: 11.183 mohm of 7 "
            + "AWG at 105 C (1.66713 x 1.33405 = 2.22404 mohm/m) there and back: 2 x 2.51413 m",
            ShortCircuited(2.525, "7 AWG", Anl(130)), ShortCircuited(2.505, "7 AWG", Anl(130)));
        yield return new FindingPair(
            "fuse.band-from-memory", "the same band recalled, or stated as the part's own",
            ShortCircuited(2.525, "7 AWG", Anl(130)),
            ShortCircuited(2.525, "7 AWG", Anl(130) with { OpeningTimes = BandOfAnl }));
        yield return new FindingPair(
            "fuse.interrupting-rating-unknown",
            "ABYC E-11 asks for 3000 A from 700 A cold cranking, but no more than flows: 12.6 V over 4.6667 mohm give the 2700 A "
            + "that the family interrupts",
            Behind(0.004665, 700), Behind(0.004668, 700));
        yield return new FindingPair(
            "fuse.interrupting-rating-unknown",
            "12.6 V over 4 mohm give 3150 A; ABYC E-11 asks for 1500 A up to 650 A cold cranking and for 3000 A above",
            Behind(0.004, 651), Behind(0.004, 650));
        yield return new FindingPair(
            "fuse.interrupting-rating-too-low", "ABYC E-11 asks for 1500 A up to 650 A cold cranking; 9 x 70 Ah count as 630 A",
            Interrupting(1499), Interrupting(1500));
        yield return new FindingPair(
            "fuse.not-selective",
            "an 80 A type E blade may take (480 A/I)^3.61025 s between 3.5 and 6 times its rating; between 1.35 and 2 times "
            + "its own a 200 A ANL holds (400 A/I)^(ln 80/ln(2/1.35)) = (400 A/I)^11.1490 s: both 2.6470 s at "
            + "366.56 A, 12 V/366.56 A = 32.737 mohm; less battery 5, the amplifier's own return 2.80446 + 0.2, main "
            + "0.43873 + 0.2 + 0.5, joints 0.2 and fuse 1.25 of the feed: 22.1439 mohm of 8 AWG at 2.80446 mohm/m: "
            + "7.8960 m; a shorter path gives a larger current",
            TwoInSeries(7.86), TwoInSeries(7.93));
    }

    private static IEnumerable<FindingPair> Overloads()
    {
        yield return new FindingPair(
            "fuse.overload-hurts-conductor",
            "105 C + 50 K = 155 C: by the heat balance of an independent program 153.87 A hold 6 AWG there in 40 C; "
            + "an ANL may carry 1.35 times its rating for 1800 s: 113.97 A",
            FusedAt(40, 114.2), FusedAt(40, 113.8));
        yield return new FindingPair(
            "return.body-drop-large",
            "I (13.8 - 3.060 mohm x I) = 1250 W: 92.476 A; 0.2 V of that is 2.1627 mohm, of which the strap has 0.2661: "
            + "a body of 1.8966 mohm",
            OverBody(0.001902), OverBody(0.001891));
    }

    private static IEnumerable<FindingPair> Places()
    {
        yield return new FindingPair(
            "return.strap-too-small", "a battery's strap of 16 mm2, or of 6 AWG: 13.30 mm2",
            OneAmplifier().WithRun("strap", run => run.Sized("6 AWG")),
            OneAmplifier().WithRun("strap", run => run.Sized("16 mm2")));
        yield return new FindingPair(
            "return.strap-too-small", "16 mm2 of copper-clad aluminium conduct as 16 x 0.017241/0.026718 = 10.3 mm2 of copper",
            OneAmplifier().WithRun("strap", CladStrap("16 mm2")), OneAmplifier().WithRun("strap", CladStrap("25 mm2")));
        yield return new FindingPair(
            "return.strap-below-fuse",
            "a strap of 4 AWG, 105 C, at 80 C bears about 160 A x sqrt(25/75) = 92.4 A: the next ANL is one of 100 A, then 130 A",
            StrapBehind(130), StrapBehind(100));
        yield return new FindingPair(
            "sizing.beyond-stock",
            "two of 1/0 AWG at 40 C bear 285 A x sqrt(65/75) = 265 A each: an ANL of 250 A for each carries 0.8 of that, 400 A",
            LeftOpen(401), LeftOpen(399));
        yield return new FindingPair(
            "run.copper-clad", "a return of copper-clad aluminium, or of copper",
            OneAmplifier().WithRun("return", run => run with
            {
                Conductor = run.Conductor with { Material = Material.CopperCladAluminium },
            }),
            OneAmplifier());
        yield return new FindingPair(
            "run.larger-than-terminal", "1/0 into a terminal for 1 AWG or 1/0",
            OneAmplifier().WithAmplifier(amplifier => amplifier with { LargestConductor = ConductorSize.Of("1 AWG") }),
            OneAmplifier().WithAmplifier(amplifier => amplifier with { LargestConductor = ConductorSize.Of("1/0 AWG") }));
        yield return new FindingPair(
            "amplifier.rating-above-fuse", "1250 W / 14.4 V = 86.8 A against fuses of 86 A or 87 A",
            OneAmplifier().WithAmplifier(amplifier => amplifier with { OnBoardFuseAmps = 86 }),
            OneAmplifier().WithAmplifier(amplifier => amplifier with { OnBoardFuseAmps = 87 }));
        yield return new FindingPair(
            "amplifier.supply-not-charged", "a second battery with the amplifier on it, tied to the first or not",
            OnSecondBattery(),
            OnSecondBattery().With(
                Run("tie", "starter", "second", 4, "1/0 AWG") with { Side = Side.Supply, Fuse = Anl(150), FarFuse = Anl(150) }));
    }

    private static IEnumerable<FindingPair> Supply()
    {
        yield return new FindingPair(
            "supply.average-above-alternator", "a full tone draws 91.9 A: (91.9 + 45)/0.8 = 171.1 A of rated alternator",
            OneAmplifier().WithAlternator(170.9), OneAmplifier().WithAlternator(171.4));
        yield return new FindingPair(
            "supply.peak-above-alternator", "the same peak, but the music averages 0.145 of it",
            Dynamic().WithAlternator(170.5), Dynamic().WithAlternator(171.5));
        yield return new FindingPair(
            "supply.average-above-idle", "0.145 x 91.9 A = 13.3 A on average; idle output less 45 A leaves 13 A or 14 A",
            Dynamic().WithAlternator(180, 58), Dynamic().WithAlternator(180, 59));
    }

    /// <summary>What the fuse families' file recalls of an ANL.</summary>
    private static OpeningTime[] BandOfAnl =>
    [
        new(1, 14_400, null), new(1.25, 85, null), new(1.35, 80, 1800), new(2, 1, 15), new(3.5, 0.3, 5), new(6, 0.097, 1),
    ];

    private static Build Losing(double volts) =>
        OneAmplifier() with { Limits = OneAmplifier().Limits with { MaxDropVolts = volts } };

    private static Build WorkingIn(double lowest, double highest) => OneAmplifier().WithAmplifier(
        amplifier => amplifier with { LowestSupplyVolts = lowest, HighestSupplyVolts = highest });

    private static Build ChargedAt(double volts) =>
        OneAmplifier() with { Vehicle = OneAmplifier().Vehicle with { ChargingVolts = volts } };

    private static Func<Run, Run> CladStrap(string size) => run =>
        Run("strap", "body", "starter", 0.4, size, Material.CopperCladAluminium) with { Route = Route.EngineBay };

    private static Build MainOf(double metres) => OneAmplifier().WithRun("main", run => run with { LengthMetres = metres });

    private static Build Dynamic() => OneAmplifier().WithAmplifier(amplifier => amplifier with { Programme = Programme.Dynamic });

    private static Build StrapBehind(double fuse) => OneAmplifier()
        .WithRun("main", run => run with { Fuse = Anl(fuse) })
        .WithRun("strap", run => run.Sized("4 AWG"));

    /// <summary>A load of exactly these amperes, its cables left open.</summary>
    private static Build LeftOpen(double amps) => ConstantCurrent(amps) with
    {
        Runs = [.. ConstantCurrent(amps).Runs.Select(run => run with
        {
            Conductor = new ConductorWish { InsulationCelsius = 105 },
            Fuse = null,
        })],
    };

    private static Build StrapRated80In(double engineBay)
    {
        Build build = OneAmplifier() with { Limits = OneAmplifier().Limits with { EngineBayCelsius = engineBay } };
        return build.WithRun("strap", run => run with { Conductor = run.Conductor with { InsulationCelsius = 80 } });
    }

    private static Build ThinWire(double watts) => OneAmplifier() with
    {
        Amplifiers =
            [OneAmplifier().Amplifiers[0] with { RatedOutputWatts = watts, Efficiency = 1, Programme = Programme.Dynamic }],
        Runs =
        [
            Run("main", "starter", "bass", 30, "18 AWG") with { Fuse = Anl(35) },
            Run("return", "bass", "starter", 30, "18 AWG"),
        ],
    };

    private static Build FusedAt(double load, double fuse) =>
        ConstantCurrent(load).WithRun("main", run => run with { Fuse = Anl(fuse) });

    private static Build FuseLeftOpen(double load) => ConstantCurrent(load).WithRun("main", run => run with { Fuse = null });

    private static FuseWish BladeC(double amps) => Blade(amps) with { Family = FuseFamilyName.BladeC };

    private static Build ShortCircuited(double metres, string size, FuseWish fuse) => ConstantCurrent(1) with
    {
        Runs =
        [
            Run("main", "starter", "bass", metres, size) with { Fuse = fuse },
            Run("return", "bass", "starter", metres, size),
        ],
    };

    private static Build TwoInSeries(double metres) => ConstantCurrent(1) with
    {
        Runs =
        [
            Run("main", "starter", "block", 1, "1/0 AWG") with { Fuse = Anl(200) },
            Run("feed", "block", "bass", metres, "8 AWG") with { Fuse = Blade(80) },
            Run("return", "bass", "starter", 1, "8 AWG"),
        ],
    };

    private static Build Behind(double ohms, double crankingAmps) => ConstantCurrent(40)
        .WithBattery("starter", battery => battery with { InternalOhms = ohms, ColdCrankingAmps = crankingAmps });

    private static Build Interrupting(double amps) =>
        ConstantCurrent(40).WithRun("main", run => run with { Fuse = Anl(100) with { InterruptingRatingAmps = amps } });

    private static Build OverBody(double ohms) =>
        OneAmplifier() with { Vehicle = OneAmplifier().Vehicle with { BodyReturnOhms = ohms } };

    private static Build FuseAt(double metres) =>
        ConstantCurrent(40).WithRun("main", run => run with { Fuse = Anl(100) with { DistanceMetres = metres } });

    private static Build FuseRated(double volts) =>
        ConstantCurrent(40).WithRun("main", run => run with { Fuse = Anl(100) with { VoltageRatingVolts = volts } });

    private static Build TwoConductors(double fuse) =>
        FusedAt(60, fuse).WithRun("main", run => run with { Conductor = run.Conductor with { Count = 2 } });

    private static Build Reduction(double mainFuse) => ConstantCurrent(40) with
    {
        Runs =
        [
            Run("main", "starter", "block", 1, "1/0 AWG") with { Fuse = Anl(mainFuse) },
            Run("feed", "block", "bass", 1, "8 AWG") with { Fuse = NoFuse },
            Run("return", "bass", "starter", 1, "8 AWG"),
        ],
    };

    private static Build OnSecondBattery() => OneAmplifier() with
    {
        Vehicle = OneAmplifier().Vehicle with
        {
            Batteries =
            [
                .. OneAmplifier().Vehicle.Batteries,
                new Battery { Id = "second", InternalOhms = 0.01, Chemistry = Chemistry.Agm },
            ],
        },
        Amplifiers = [.. OneAmplifier().Amplifiers, OneAmplifier().Amplifiers[0] with { Id = "rear" }],
        Runs =
        [
            .. OneAmplifier().Runs,
            Run("rear-feed", "second", "rear", 1, "1/0 AWG") with { Fuse = Anl(150) },
            Run("rear-return", "rear", "second", 1, "1/0 AWG") with { Side = Side.Return },
            Run("second-strap", "second", "body", 0.5, "1/0 AWG") with { Side = Side.Return },
        ],
    };
}
