using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Supply;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Reports.Assessments;
using Cablewright.Vocabulary;
using CsCheck;

namespace Cablewright.Engine.Tests.Supply;

/// <summary>What must hold of any supply.</summary>
public class SupplyPropertyTests
{
    private const int Builds = 300;
    private const double Rounding = 1e-9;

    private static readonly Gen<(Tie Tie, int Number)> Any = Gen.Select(Gen.Enum<Tie>(), Gen.Int[0, 1_000_000]);

    [Fact]
    public void A_larger_battery_never_shortens_the_time_with_the_engine_off() =>
        Gen.Select(Any, Gen.Int[0, 2], Gen.Double[1.001, 4]).Sample((any, pick, factor) =>
        {
            Build build = Make(any);
            int chosen = pick % build.Vehicle.Batteries.Count;
            NeverShorter(build, WithBatteries(build, [.. build.Vehicle.Batteries.Select((battery, i) =>
                i == chosen ? battery with { CapacityAmpHours = factor * battery.CapacityAmpHours } : battery)]));
        }, iter: Builds);

    /// <summary>Of any chemistry, at any state of charge, and however small.</summary>
    [Fact]
    public void A_further_battery_side_by_side_never_shortens_the_time_with_the_engine_off() =>
        Gen.Select(Any, Gen.Int[0, 2], Gen.Double[0.01, 100], Gen.Double[0, 1]).Sample((any, pick, ampHours, state) =>
        {
            Build build = Make(any);
            Battery beside = build.Vehicle.Batteries[pick % build.Vehicle.Batteries.Count];
            Battery drawn = SupplyBuilds.AnyBattery(new Random(any.Number), "further");
            Battery further = drawn with { CapacityAmpHours = ampHours, StateOfCharge = state };
            Build more = WithBatteries(build, [.. build.Vehicle.Batteries, further]).With(
                SampleBuilds.Run("further-tie", beside.Id, "further", 0.5, "2/0 AWG") with
                {
                    Side = Side.Supply,
                    Fuse = SampleBuilds.Anl(300),
                },
                SampleBuilds.Run("further-strap", "further", "body", 0.5, "2/0 AWG") with { Side = Side.Return });
            NeverShorter(build, more);
        }, iter: Builds);

    [Fact]
    public void More_load_never_lengthens_the_time_with_the_engine_off() =>
        Gen.Select(Any, Gen.Int[0, 2], Gen.Double[1.001, 4]).Sample((any, pick, factor) =>
        {
            Build build = Make(any);
            int chosen = pick % build.Amplifiers.Count;
            NeverShorter(
                build with
                {
                    Amplifiers = [.. build.Amplifiers.Select((amplifier, i) =>
                        i == chosen ? amplifier with { RatedOutputWatts = factor * amplifier.RatedOutputWatts } : amplifier)],
                },
                build);
        }, iter: Builds);

    [Fact]
    public void A_larger_alternator_never_lowers_the_voltage_at_speed_nor_shortens_the_time() =>
        Gen.Select(Any, Gen.Double[1.001, 3]).Sample((any, factor) =>
        {
            Build build = Make(any);
            SupplyCaseResult less = At(build, SupplyCaseName.AtSpeed);
            SupplyCaseResult more = At(
                WithAlternator(build, alternator => alternator with { RatedAmps = factor * alternator.RatedAmps }),
                SupplyCaseName.AtSpeed);
            Assert.True(Volts(more) >= Volts(less) * (1 - Rounding), $"{any}: {more.LowestVolts} V against {less.LowestVolts} V");
            Assert.True(Minutes(more) >= Minutes(less) * (1 - Rounding),
                $"{any}: {more.MinutesToLimit} min against {less.MinutesToLimit} min");
        }, iter: Builds);

    /// <summary>
    /// Each charger asks for what all behind it need: fifteen rows of six would ask 6^15 times if each asked anew.
    /// </summary>
    [Fact]
    public void Chargers_side_by_side_one_behind_another_are_balanced_at_once()
    {
        Build build = SlowShapes.Isolated(16, IsolatorKind.DcDcCharger, beside: 6);
        Assert.Contains(
            Assessor.Assess(build, RulesetLibrary.Newest, advises: false).Supply.Cases, result =>
                result.Case is SupplyCaseName.AtSpeed);
    }

    /// <summary>
    /// A rear battery beside the amplifier at the end of a long run: as the alternator grows until it holds the charging voltage,
    /// the battery still gives what the run would lose.
    /// </summary>
    [Fact]
    public void A_battery_beside_the_amplifier_still_helps_where_the_alternator_holds_the_charging_voltage()
    {
        double[] volts =
            [.. new double[] { 150, 250, 280, 300, 500 }.Select(rated => Volts(At(LongTie(rated), SupplyCaseName.AtSpeed)))];
        Assert.Equal(volts.Order(), volts);
        Assert.True(volts[0] > 11.6);
    }

    private static Build LongTie(double ratedAmps) => SampleBuilds.OneAmplifier() with
    {
        Vehicle = new Vehicle
        {
            ChargingVolts = 14.2,
            BodyReturnOhms = 0.0005,
            BaseLoadAmps = 20,
            Alternator = new Alternator { RatedAmps = ratedAmps },
            Batteries =
            [
                new Battery { Id = "starter", InternalOhms = 0.005 },
                new Battery { Id = "rear", Chemistry = Chemistry.LiFePo4, InternalOhms = 0.003 },
            ],
        },
        Amplifiers = [SampleBuilds.OneAmplifier().Amplifiers[0] with { RatedOutputWatts = 2400 }],
        Runs =
        [
            SampleBuilds.Run("tie", "starter", "rear", 6, "4 AWG") with { Side = Side.Supply, Fuse = SampleBuilds.Anl(300) },
            SampleBuilds.Run("feed", "rear", "bass", 0.5, "2/0 AWG") with { Side = Side.Supply, Fuse = SampleBuilds.Anl(300) },
            SampleBuilds.Run("return", "bass", "body", 0.5, "2/0 AWG"),
            SampleBuilds.Run("front-strap", "starter", "body", 0.5, "2/0 AWG") with { Side = Side.Return },
            SampleBuilds.Run("rear-strap", "rear", "body", 0.5, "2/0 AWG") with { Side = Side.Return },
        ],
    };

    /// <summary>
    /// Behind its diode stands a battery that is full, with nothing to feed: the diode's current is none, of no sign.
    /// </summary>
    [Fact]
    public void A_diode_that_carries_nothing_leaves_a_burst_to_be_worked_out()
    {
        var rig = new SupplyRig(SupplyBuilds.Make(451_094, Tie.Diode));
        Assert.NotNull(Burst.Of(rig.Complete, rig.Circuit, 120, isHeld: true).LowestVolts);
    }

    [Fact]
    public void A_higher_current_at_idle_never_shortens_the_time_at_idle() =>
        Gen.Select(Any, Gen.Double[0, 100], Gen.Double[0, 100]).Sample((any, idle, extra) =>
        {
            Build build = Make(any);
            SupplyCaseResult less =
                At(WithAlternator(build, alternator => alternator with { IdleAmps = idle }), SupplyCaseName.Idle);
            SupplyCaseResult more =
                At(WithAlternator(build, alternator => alternator with { IdleAmps = idle + extra }), SupplyCaseName.Idle);
            Assert.True(Minutes(more) >= Minutes(less) * (1 - Rounding),
                $"{any}: {more.MinutesToLimit} min against {less.MinutesToLimit} min");
        }, iter: Builds);

    [Fact]
    public void A_capacitor_never_lowers_the_voltage_in_a_burst() =>
        Gen.Select(Any, Gen.Double[0, 200]).Sample((any, given) =>
        {
            var rig = new SupplyRig(Make(any));
            BurstResult burst = Burst.Of(rig.Complete, rig.Circuit, given, SupplyCases.IsHeld(rig.Balance, given));
            if (burst.LowestVoltsWithoutCapacitors is not { } without) return;
            Assert.True(burst.LowestVolts >= without * (1 - 1e-6), $"{any}: {burst.LowestVolts} V against {without} V");
        }, iter: Builds);

    private static Build Make((Tie Tie, int Number) any) => SupplyBuilds.Make(any.Number, any.Tie);

    private static SupplyCaseResult At(Build build, SupplyCaseName name)
    {
        var rig = new SupplyRig(build);
        return new SupplyCases(rig.Complete, rig.Circuit, rig.Balance).All().Single(each => each.Name == name);
    }

    private static double Volts(SupplyCaseResult result) => result.LowestVolts ?? 0;

    private static double Minutes(SupplyCaseResult result) => result.MinutesToLimit ?? double.PositiveInfinity;

    private static void NeverShorter(Build lesser, Build greater)
    {
        double less = Minutes(At(lesser, SupplyCaseName.EngineOff)), more = Minutes(At(greater, SupplyCaseName.EngineOff));
        Assert.True(more >= less * (1 - Rounding), $"{more} min against {less} min");
    }

    private static Build WithBatteries(Build build, IReadOnlyList<Battery> batteries) =>
        build with { Vehicle = build.Vehicle with { Batteries = batteries } };

    private static Build WithAlternator(Build build, Func<Alternator, Alternator> change) =>
        build with { Vehicle = build.Vehicle with { Alternator = change(build.Vehicle.Alternator!) } };
}
