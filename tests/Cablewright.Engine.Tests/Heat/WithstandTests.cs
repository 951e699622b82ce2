using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using CsCheck;

namespace Cablewright.Engine.Tests.Heat;

/// <summary>
/// How long a conductor withstands a current: below 5 s by the adiabatic equation, above by storage and loss of heat, here put
/// beside small steps of time through the same balance, C dθ/dt = I² R(θ) − W(θ), with C worked out here.
/// </summary>
public class WithstandTests
{
    private static readonly ShortCircuitConstants Constants = RulesetLibrary.Newest.ShortCircuit;

    private static readonly Gen<Conductor> AnyConductor = Gen.Select(
        Gen.OneOfConst([.. ConductorSize.All]), Gen.Enum<Material>(), Conductor.Of);

    private static readonly Gen<(double Start, double Limit)> AnyInsulation = Gen.OneOf(
        Gen.Double[40, 105].Select(start => (start, 160.0)), Gen.Double[40, 125].Select(start => (start, 250.0)));

    [Fact]
    public void Above_5_s_it_is_what_small_steps_of_time_give() =>
        Gen.Select(AnyConductor, AnyInsulation, Gen.Double[20, 80], Gen.Double[0, 0.98])
            .Sample((conductor, insulation, air, along) =>
            {
                (double start, double limit) = insulation;
                start = Math.Max(start, air);
                double least = 1.05 * HeatBalance.Of(conductor).CurrentAt(limit, air), most = AmpsFor(conductor, start, limit, 5);
                if (least >= most) return;
                double amps = least * Math.Pow(most / least, along);
                double engine = ShortCircuit.WithstandSeconds(conductor, amps, start, limit, air, Constants);
                double stepped = Stepped(conductor, amps, start, limit, air);
                Near.Relative(
                    Math.Max(5, stepped), engine, 0.01, $"{conductor} at {amps} A from {start} to {limit} C in {air} C, s");
            }, iter: 150);

    /// <summary>
    /// The current that holds exactly the limit does so for ever; a little more reaches it, a little less never does. The
    /// smallest conductors in cold air are left out: for them that current is within the 5 s for which IEC 60364-4-43 lets no
    /// heat leave.
    /// </summary>
    [Fact]
    public void At_the_current_that_holds_the_limit_it_lasts_for_ever() =>
        Gen.Select(AnyConductor, AnyInsulation, Gen.Double[-20, 80]).Sample((conductor, insulation, air) =>
        {
            double holds = HeatBalance.Of(conductor).CurrentAt(insulation.Limit, air);
            if (AmpsFor(conductor, insulation.Start, insulation.Limit, 5) <= 1.001 * holds) return;
            Assert.Equal(double.PositiveInfinity, Seconds(0.999 * holds));
            Assert.Equal(double.PositiveInfinity, Seconds(holds));
            Assert.True(double.IsFinite(Seconds(1.001 * holds)), $"{conductor} at {1.001 * holds} A");

            double Seconds(double amps) =>
                ShortCircuit.WithstandSeconds(conductor, amps, insulation.Start, insulation.Limit, air, Constants);
        }, iter: 2000);

    [Fact]
    public void It_is_never_below_the_adiabatic_time() => Sampled((conductor, insulation, air, amps) =>
    {
        double root =
            ShortCircuit.Factor(conductor.Properties, insulation.Start, insulation.Limit, Constants)
                * conductor.Size.MetalAreaMm2 / amps;
        return Withstand(conductor, insulation, air, amps) >= root * root * (1 - 1e-12);
    });

    [Fact]
    public void More_current_is_never_withstood_longer() => Sampled((conductor, insulation, air, amps) =>
        Withstand(conductor, insulation, air, 1.03 * amps) <= Withstand(conductor, insulation, air, amps));

    [Fact]
    public void A_smaller_limit_never_lengthens_it() => Sampled((conductor, insulation, air, amps) =>
        Withstand(conductor, insulation with { Limit = insulation.Limit - 10 }, air, amps)
            <= Withstand(conductor, insulation, air, amps));

    [Fact]
    public void A_hotter_start_never_lengthens_it() => Sampled((conductor, insulation, air, amps) =>
        Withstand(conductor, insulation with { Start = insulation.Start + 10 }, air, amps)
            <= Withstand(conductor, insulation, air, amps));

    [Fact]
    public void What_is_as_hot_as_it_may_be_withstands_nothing() =>
        Assert.Equal(
            0,
            ShortCircuit.WithstandSeconds(
                Conductor.Of(ConductorSize.Of("4 AWG"), Material.Copper), 500, 160, 160, 40, Constants));

    /// <summary>
    /// After the time that it withstands it is at the limit: the two go by the same balance, in steps of their own, which are
    /// good for half a kelvin.
    /// </summary>
    [Fact]
    public void After_the_withstand_it_is_at_the_limit() => Sampled((conductor, insulation, air, amps) =>
    {
        double seconds = Withstand(conductor, insulation, air, amps);
        if (seconds <= 5.001 || double.IsInfinity(seconds)) return true;
        double continuous = HeatBalance.Of(conductor).TemperatureAt(amps, air);
        return Math.Abs(
            new Warming(conductor, amps, air, Constants).CelsiusAfter(seconds, insulation.Start, continuous)
                - insulation.Limit) < 0.5;
    });

    /// <summary>
    /// Two starts come together on the way to the same lasting temperature, which none of them passes. At first they may part by
    /// a few hundredths of their difference: hotter metal resists more, and near the air's temperature little heat leaves.
    /// </summary>
    [Fact]
    public void Different_starts_come_together_below_the_lasting_temperature() =>
        Gen.Select(AnyConductor, Gen.Double[-20, 80], Gen.Double[0, 20], Gen.Double[0, 2], Gen.Double[120, 360],
            Gen.Double[1, 7200]).Sample((conductor, air, warmer, more, hottest, seconds) =>
        {
            double amps = HeatBalance.Of(conductor).CurrentAt(hottest, air), continuous = HeatBalance.Of(conductor)
                .TemperatureAt(amps, air);
            double cool = After(air + warmer), warm = After(air + warmer + more);
            Assert.True(cool <= continuous && warm <= continuous, $"{cool} and {warm} C against {continuous} C");
            Assert.InRange(warm - cool, -0.01, 1.05 * more + 0.01);

            double After(double start) => new Warming(conductor, amps, air, Constants).CelsiusAfter(seconds, start, continuous);
        }, iter: 1000);

    /// <summary>
    /// The golden case "long-thin-feed" writes one out: 12 AWG, 78.069 A from 40.357 to 160 °C in 40 °C; 33.1 s without loss of
    /// heat, 77.92 s by steps of 10 ms in an independent program.
    /// </summary>
    [Fact]
    public void A_worked_withstand_of_12_AWG_copper() => Near.Relative(
        77.92,
        ShortCircuit.WithstandSeconds(
            Conductor.Of(ConductorSize.Of("12 AWG"), Material.Copper), 78.06893, 40.3568, 160, 40, Constants),
        0.002, "12 AWG, s");

    private static void Sampled(Func<Conductor, (double Start, double Limit), double, double, bool> holds) =>
        Gen.Select(AnyConductor, AnyInsulation, Gen.Double[-20, 40], Gen.Double[0.9, 20])
            .Sample((conductor, insulation, air, times) =>
                holds(conductor, insulation, air, times * HeatBalance.Of(conductor).CurrentAt(insulation.Limit, air)),
                iter: 1000);

    private static double Withstand(Conductor conductor, (double Start, double Limit) insulation, double air, double amps) =>
        ShortCircuit.WithstandSeconds(conductor, amps, insulation.Start, insulation.Limit, air, Constants);

    private static double AmpsFor(Conductor conductor, double start, double limit, double seconds) =>
        ShortCircuit.Factor(conductor.Properties, start, limit, Constants) * conductor.Size.MetalAreaMm2 / Math.Sqrt(seconds);

    private static double Stepped(Conductor conductor, double amps, double start, double limit, double air)
    {
        var balance = HeatBalance.Of(conductor);
        double stored = WarmingTests.Stored(conductor, balance.OuterMetres), celsius = start, seconds = 0;
        while (celsius < limit)
        {
            double perSecond = (amps * amps * conductor.OhmsPerMetre(celsius) - balance.LeavingWatts(celsius, air)) / stored;
            double step = Math.Min(0.02, 0.05 / perSecond);
            celsius += perSecond * step;
            seconds += step;
        }

        return seconds;
    }
}
