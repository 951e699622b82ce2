using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using CsCheck;

namespace Cablewright.Engine.Tests.Heat;

public class HeatBalanceTests
{
    private static readonly Gen<Conductor> AnyConductor =
        Gen.Select(Gen.OneOfConst([.. ConductorSize.All]), Gen.Enum<Material>(), Conductor.Of);

    [Fact]
    public void Temperature_and_current_are_each_other_inverse() =>
        Gen.Select(AnyConductor, Gen.Double[-20, 80], Gen.Double[1, 100]).Sample((conductor, air, rise) =>
        {
            var balance = HeatBalance.Of(conductor);
            double amps = balance.CurrentAt(air + rise, air);
            Near.Absolute(
                air + rise, balance.TemperatureAt(amps, air), 1e-3, $"{conductor.Size} {conductor.Material} at {amps} A, C");
        }, iter: 2000);

    [Fact]
    public void More_current_is_hotter() =>
        Gen.Select(AnyConductor, Gen.Double[-20, 80], Gen.Double[1, 400], Gen.Double[1, 100])
            .Sample((conductor, air, amps, more) =>
            {
                var balance = HeatBalance.Of(conductor);
                return balance.TemperatureAt(amps + more, air) >= balance.TemperatureAt(amps, air);
            }, iter: 2000);

    [Fact]
    public void The_temperature_does_not_depend_on_where_the_search_begins() =>
        Gen.Select(AnyConductor, Gen.Double[-20, 80], Gen.Double[0, 600], Gen.Double[-40, 1000])
            .Sample((conductor, air, amps, start) =>
            {
                var balance = HeatBalance.Of(conductor);
                Near.Absolute(
                    balance.TemperatureAt(amps, air),
                    balance.TemperatureAt(amps, air, start),
                    1e-4,
                    $"{conductor.Size} {conductor.Material} at {amps} A from {start} C");
            }, iter: 5000);

    [Fact]
    public void Without_current_it_is_as_warm_as_the_air() =>
        Assert.All(
            ConductorSize.All,
            size => Assert.Equal(40, HeatBalance.Of(Conductor.Of(size, Material.Copper)).TemperatureAt(0, 40)));

    [Fact]
    public void Air_as_hot_as_the_conductor_may_be_leaves_no_current() =>
        Assert.All(
            ConductorSize.All, size => Assert.Equal(0, HeatBalance.Of(Conductor.Of(size, Material.Copper)).CurrentAt(80, 80)));

    /// <summary>No finite current makes an answer that is not a number.</summary>
    [Fact]
    public void An_absurd_current_gives_the_highest_reported_temperature() =>
        Assert.All(
            ConductorSize.All,
            size => Assert.Equal(1000, HeatBalance.Of(Conductor.Of(size, Material.Copper)).TemperatureAt(1e6, 40)));

    /// <summary>
    /// By hand, 4 AWG copper at 105 °C in air at 30 °C, with the figures of the data files:
    /// d = √(4 · 21.1506/(π · 0.76)) = 5.9526 mm, wall 1.2 mm, D = 8.3526 mm, Ri = ln(D/d)/(2π · 0.2) = 0.26956 K m/W,
    /// R(105) = 0.0172414 · 1.02/21.1506 · (1 + 0.00393 · 85) = 1.10923 mΩ/m. Try Ts = 96.37 °C: ΔT = 66.37 K, film 336.34 K,
    /// μ = 2.0130e-5 Pa s, ρ = 1.04970 kg/m³, ν = 1.9177e-5 m²/s, λ = 0.028524 W/(m K), Ra = 9.80665/336.34 · 66.37 · D³ ·
    /// 0.71/ν² = 2177.2, (1 + (0.559/0.71)^(9/16))^(8/27) = 1.20457, Nu = (0.60 + 0.387/1.20457 · Ra^(1/6))² = 3.0858, h = 10.538
    /// W/(m² K). Convection π D h ΔT = 18.353, radiation π D · 0.9 σ (369.52⁴ − 303.15⁴) = 13.658, together 32.011 W/m; through
    /// the insulation (105 − 96.37)/Ri = 32.01 W/m. So I = √(32.011/1.10923e-3) = 169.88 A.
    /// </summary>
    [Fact]
    public void A_worked_balance_of_4_AWG_copper()
    {
        var balance = HeatBalance.Of(Conductor.Of(ConductorSize.Of("4 AWG"), Material.Copper));
        Near.Relative(169.88, balance.CurrentAt(105, 30), 1e-4, "4 AWG at 105 C in 30 C, A");
    }
}
