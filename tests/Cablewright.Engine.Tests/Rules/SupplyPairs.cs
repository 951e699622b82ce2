using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.PartedBuilds;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Rules;

/// <summary>Either side of the limits of what charges, stores and parts the supply.</summary>
internal static class SupplyPairs
{
    public static IReadOnlyList<FindingPair> All { get; } = [.. Charging(), .. Batteries(), .. Isolators(), .. Returns()];

    private static IEnumerable<FindingPair> Charging()
    {
        yield return new FindingPair(
            "supply.average-above-charger", "30 A at all times behind a charger of 29.9 A or 30.1 A",
            PartedBuilds.Behind(Charger(29.9), 30), PartedBuilds.Behind(Charger(30.1), 30));
        yield return new FindingPair(
            "supply.peak-above-converter",
            "91.9 A at full output and 45 A of base load: 136.9 A; the music averages 0.145 of that 91.9 A",
            WithConverter(136.7), WithConverter(137.1));
        yield return new FindingPair(
            "alternator.cable-drop-large",
            "100 A warm 4 AWG in 40 C to 66.762 C by the heat balance of an independent program: 0.98428 mohm/m; "
            + "0.3 V/100 A = 3 mohm, less joints 0.2 and fuse 0.1/150 = 0.6667: 2.1333 mohm: 2.167 m",
            WithAlternatorCable(100, 2.18), WithAlternatorCable(100, 2.15));
        yield return new FindingPair(
            "fuse.missing-at-alternator-cable", "no fuse at the battery's end of the alternator's cable, or one",
            WithAlternatorCable(100, 2).WithRun("charge", run => run with { FarFuse = NoFuse }), WithAlternatorCable(100, 2));
    }

    private static IEnumerable<FindingPair> Batteries()
    {
        yield return new FindingPair(
            "supply.full-output-not-held",
            "an alternator that gives just the base load: the battery's 12.6 V alone, P = V^2/4R: 12.6^2/(4 x 1250) = 31.752 "
            + "mohm; less the golden case's 4.327: a battery of 27.43 mohm",
            OnBatteryOf(0.0276), OnBatteryOf(0.0272));
        yield return new FindingPair(
            "supply.voltage-low-at-full-output",
            "1250 W at 10.5 V are 119.05 A; (12.6 - 10.5)/119.05 = 17.640 mohm; less the golden case's 4.327: a battery of 13.31 "
            + "mohm",
            OnBatteryOf(0.0134), OnBatteryOf(0.0132));
        yield return new FindingPair(
            "supply.engine-off-too-short",
            "40 A and 5 A of standby from 70 Ah in 20 h, half of it usable: 0.5 x 20 (70/(45 x 20))^1.25 = 0.41074 h = 24.64 min",
            Playing(24.7), Playing(24.6));
        yield return new FindingPair(
            "supply.mixed-chemistries", "a lithium battery behind a relay, or behind a charger",
            LithiumBehind(Relay()), LithiumBehind(Charger(30)));
        yield return new FindingPair(
            "supply.mixed-chemistries", "a lithium battery behind a diode, or both lithium",
            LithiumBehind(Diode()),
            LithiumBehind(Diode()).WithBattery("starter", battery => battery with { Chemistry = Chemistry.LiFePo4 }));
        yield return new FindingPair(
            "supply.capacitor-holds-briefly", "40 A for 0.5 s over 1 V less 40 A x 2 mohm: 0.5 x 40/0.92 = 21.74 F",
            Stiffened(21.7), Stiffened(21.8));
    }

    private static IEnumerable<FindingPair> Isolators()
    {
        yield return new FindingPair(
            "isolator.over-rating",
            "link 0.7120 + 0.2, contacts 1, fuses 2 x 1, straps 0.3204 + 0.4 and body 2 x 1: 6.632 mohm; the rear battery takes "
            + "(14 - 12.2 - 30 x 6.632 m)/(1 + 6.632 m) = 1.59 A besides the 30 A: 31.59 A",
            PartedBuilds.Behind(Relay(31.5), 30), PartedBuilds.Behind(Relay(31.7), 30));
        yield return new FindingPair(
            "isolator.rating-unknown", "a relay without a rating, or with one",
            PartedBuilds.Behind(Relay(null), 30), PartedBuilds.Behind(Relay(), 30));
        yield return new FindingPair(
            "fuse.below-load-when-hot",
            "a type E blade of 100 A carries 75 A without end; by its sheet 0.75 of its rating at 85 C and 0.625 at 110 C, "
            + "so 68.75 A at 97.5 C",
            HotBlade(68.8), HotBlade(68.7));
        yield return new FindingPair(
            "fuse.below-load-when-hot", "the same sheet's 75 A at 85 C are what it carries without end anywhere",
            HotBlade(74.9), HotBlade(74.9, engineBay: 85));
    }

    private static IEnumerable<FindingPair> Returns()
    {
        yield return new FindingPair(
            "return.shared-below-supply",
            "two feeds of 4 AWG, 2 x 21.15 = 42.30 mm2, over a common return of 2 AWG, 33.63, or 1 AWG, 42.41",
            SharedReturn("1/0 AWG", "2 AWG"), SharedReturn("1/0 AWG", "1 AWG"));
        yield return new FindingPair(
            "return.shared-below-supply",
            "the same feeds behind a main run of 2 AWG, over a common return of 3 AWG, 26.67 mm2, or 2 AWG",
            SharedReturn("2 AWG", "3 AWG"), SharedReturn("2 AWG", "2 AWG"));
    }

    private static Build HotBlade(double amps, double engineBay = 97.5)
    {
        Build build = ConstantCurrent(amps) with { Limits = ConstantCurrent(amps).Limits with { EngineBayCelsius = engineBay } };
        return build.WithRun("main", run => run with
        {
            Route = Route.EngineBay,
            Conductor = run.Conductor with { InsulationCelsius = 125 },
            Fuse = Blade(100),
        });
    }

    private static Build WithConverter(double amps)
    {
        Build build = OneAmplifier().WithAmplifier(amplifier => amplifier with { Programme = Programme.Dynamic });
        return build with
        {
            Vehicle = build.Vehicle with { Converter = new Converter { RatedAmps = amps }, BaseLoadAmps = 45 },
        };
    }

    /// <summary>The golden case with an alternator that gives hot, at 0.8 of its rating, just the base load of 45 A.</summary>
    private static Build OnBatteryOf(double ohms) =>
        OneAmplifier().WithAlternator(45 / 0.8).WithBattery("starter", battery => battery with { InternalOhms = ohms });

    private static Build Playing(double minutes) =>
        ConstantCurrent(40) with { Limits = ConstantCurrent(40).Limits with { EngineOffMinutes = minutes } };

    private static Build LithiumBehind(Isolator isolator) => PartedBuilds.Behind(isolator, 30)
        .WithBattery("rear", battery => battery with { Chemistry = Chemistry.LiFePo4 });

    private static Build Stiffened(double farads) => ConstantCurrent(40) with
    {
        Vehicle = ConstantCurrent(40).Vehicle with
        {
            Capacitors = [new Capacitor { At = "bass", Farads = farads, SeriesOhms = 0.002 }],
        },
    };

    private static Build SharedReturn(string main, string common) => OneAmplifier() with
    {
        Amplifiers = [new Amplifier { Id = "bass", OnBoardFuseAmps = 30 }, new Amplifier { Id = "front", OnBoardFuseAmps = 30 }],
        Runs =
        [
            Run("main", "starter", "block", 1, main) with { Fuse = Anl(130) },
            Run("bass-feed", "block", "bass", 1, "4 AWG"),
            Run("front-feed", "block", "front", 1, "4 AWG"),
            Run("bass-return", "bass", "bar", 1, "4 AWG"),
            Run("front-return", "front", "bar", 1, "4 AWG"),
            Run("common", "bar", "starter", 1, common) with { Side = Side.Return },
        ],
    };
}
