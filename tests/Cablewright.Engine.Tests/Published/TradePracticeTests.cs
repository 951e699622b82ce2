using Cablewright.Engine.Conductors;
using Cablewright.Engine.Network;
using Cablewright.Engine.Tests.Network;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>Source: common practice, no source. Figures that every installer knows.</summary>
public class TradePracticeTests
{
    private const double MetresPerFoot = 0.3048;

    /// <summary>1500 W / 0.75 / 13.8 V = 144.9 A.</summary>
    [Fact]
    public void A_1500_watt_amplifier_at_75_percent_and_13_8_volts_draws_just_under_150_amperes() =>
        Assert.InRange(CircuitSolver.Amps(new LoadDraw(LoadKind.ConstantPower, 1500 / 0.75), 13.8), 144, 150);

    /// <summary>
    /// 3000 W / 0.80 / 14 V = 267.9 A over 0.0983 mΩ of solid copper; stranding adds 2 %, so the figure is 0.0268 V.
    /// </summary>
    [Fact]
    public void A_foot_of_1_0_copper_drops_26_millivolts_one_way_under_3000_watts()
    {
        var copper = Conductor.Of(ConductorSize.Of("1/0 AWG"), Material.Copper);
        double drop = 3000 / 0.80 / 14 * copper.OhmsPerMetre(20) * MetresPerFoot;
        Near.Absolute(0.026, drop / Stranding.LayFactor, 0.0005, "solid, V");
        Near.Relative(0.026, drop, 0.04, "stranded, V");
    }

    [Fact]
    public void Copper_clad_aluminium_loses_1_55_times_what_copper_does() =>
        Assert.All(ConductorSize.All.Where(size => !size.IsMetric), size =>
            Near.Relative(
                1.55,
                Conductor.Of(size, Material.CopperCladAluminium).OhmsPerMetreAt20
                    / Conductor.Of(size, Material.Copper).OhmsPerMetreAt20,
                0.005,
                size.Label));

    [Fact]
    public void Gauge_4_loses_2_5_times_what_1_0_does() =>
        Assert.All(Enum.GetValues<Material>(), material =>
            Near.Relative(
                2.5,
                Conductor.Of(ConductorSize.Of("4 AWG"), material).OhmsPerMetreAt20
                    / Conductor.Of(ConductorSize.Of("1/0 AWG"), material).OhmsPerMetreAt20,
                0.02,
                material.Word()));

    /// <summary>
    /// 500 W / 0.75 = 667 W over 10 ft one way, 3 % of 14 V = 0.42 V. 8 AWG copper, stranded: 0.31 V at 20 °C and still within at
    /// 105 °C (0.4197 V), its load's rising current included. Copper-clad: 0.49 V, beyond 3 % even at 20 °C.
    /// </summary>
    [Fact]
    public void A_500_watt_amplifier_10_feet_away_keeps_within_3_percent_on_8_AWG_copper_and_not_on_copper_clad()
    {
        Assert.All([20, 60, 105], celsius => Assert.InRange(OneWayShare(Material.Copper, celsius), 0.02, 0.03));
        Assert.All([20, 60, 105], celsius => Assert.InRange(OneWayShare(Material.CopperCladAluminium, celsius), 0.033, 0.05));
    }

    private static double OneWayShare(Material material, double celsius)
    {
        const double Volts = 14;
        double ohms = Conductor.Of(ConductorSize.Of("8 AWG"), material).OhmsPerMetre(celsius) * 10 * MetresPerFoot;
        var network = new ElectricalNetwork(3, [new Branch(0, 1)], [], [new LoadPort(1, 2)], [0, 2]);
        var circuit = new Circuit(network, [ohms], [], [new LoadDraw(LoadKind.ConstantPower, 500 / 0.75)], [Volts, 0]);
        return 1 - circuit.Solve()![1] / Volts;
    }
}
