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
            "amplifier.drop-over-limit", "stated limit; the golden case drops 0.3976 V",
            OneAmplifier() with { Limits = OneAmplifier().Limits with { MaxDropVolts = 0.3974 } },
            OneAmplifier() with { Limits = OneAmplifier().Limits with { MaxDropVolts = 0.3978 } });
        yield return new FindingPair(
            "amplifier.drop-over-limit",
            "5 % of 14 V: u = 13.3 V, I = 93.98 A, R = 7.448 mohm; "
            + "the golden case's 4.327 mohm and 8.56 m more of 0.3644 mohm/m: 13.43 m",
            MainOf(13.6), MainOf(13.25));
        yield return new FindingPair(
            "amplifier.drop-over-target",
            "3 % of 14 V: u = 13.58 V, I = 92.05 A, R = 4.563 mohm; "
            + "the golden case's 4.327 mohm and 0.65 m more of 0.364 mohm/m: 5.53 m",
            MainOf(5.60), MainOf(5.45));
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
            "above 6 x 80 = 480 A an 80 A type E blade may take 1 s; "
            + "10 AWG at 40 C withstands 135.90 x 5.2612 = 715.0 A for that: 12 V/715.0 A = 16.783 mohm; "
            + "less battery 5, joints 2 x 0.2, fuse 0.1/80 = 1.25: 10.133 mohm of 4.4593 mohm/m there and back: 2 x 1.1362 m; "
            + "a shorter path gives a larger current",
            ShortCircuited(1.13, "10 AWG", Blade(80)), ShortCircuited(1.14, "10 AWG", Blade(80)));
        yield return new FindingPair(
            "fuse.band-from-memory", "an ANL, or a type E blade, whose band is read in a public copy",
            ConstantCurrent(40), ConstantCurrent(40).WithRun("main", run => run with { Fuse = Blade(80) }));
        yield return new FindingPair(
            "fuse.interrupting-rating-unknown", "12.6 V over 4.6667 mohm give the 2700 A that the family interrupts",
            Behind(0.004665), Behind(0.004668));
        yield return new FindingPair(
            "fuse.interrupting-rating-too-low", "12.6 V over 5 mohm give 2520 A", Interrupting(2519), Interrupting(2521));
        yield return new FindingPair(
            "fuse.not-selective",
            "a 20 A blade may take 0.15 s; an ANL holds that long up to 3.5 x (6/3.5)^(ln 2/ln 3) = 4.9178 times its 130 A, "
            + "639.3 A: 12 V/639.3 A = 18.770 mohm; less battery 5, the amplifier's own return 2.8045 + 0.2, main 0.4387 + 0.2 + "
            + "0.7692, joints 0.2 and fuse 6.5 of the feed: 2.658 mohm of 8 AWG at 2.8045 mohm/m: 0.948 m",
            TwoInSeries(0.94), TwoInSeries(0.955));
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

    private static Build MainOf(double metres) => OneAmplifier().WithRun("main", run => run with { LengthMetres = metres });

    private static Build Dynamic() => OneAmplifier().WithAmplifier(amplifier => amplifier with { Programme = Programme.Dynamic });

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
            Run("main", "starter", "block", 1, "1/0 AWG") with { Fuse = Anl(130) },
            Run("feed", "block", "bass", metres, "8 AWG") with { Fuse = BladeC(20) },
            Run("return", "bass", "starter", 1, "8 AWG"),
        ],
    };

    private static Build Behind(double ohms) => ConstantCurrent(40) with
    {
        Vehicle = ConstantCurrent(40).Vehicle with { Batteries = [new Battery { Id = "starter", InternalOhms = ohms }] },
    };

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
