using Cablewright.Engine.Builds;
using Cablewright.Engine.Network;
using Cablewright.Engine.Tests.Supply;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: the maximum power transfer theorem of circuit theory. What a voltage V behind a resistance R can give at most is
/// P = V²/4R, at half the voltage.
/// </summary>
public class LargestPowerTests
{
    [Theory]
    [InlineData(0.004, 1)]
    [InlineData(0.009, 1)]
    [InlineData(0.02, 0.5)]
    [InlineData(0.05, 0.25)]
    public void A_battery_at_its_own_voltage_carries_just_less_than_a_quarter_of_V_squared_over_R(double ohms, double state)
    {
        var rig = new SupplyRig(OneBattery(ohms, state));
        double volts = state switch { 1 => 12.6, 0.5 => 12.2, _ => 12.0 };
        double largest = volts * volts / 4 / (ohms + rig.Envelope.Ohms.Sum());
        double across = Solve(rig, (1 - 1e-7) * largest)![0];
        Assert.InRange(across, volts / 2, volts / 2 * 1.001);
        Assert.Null(Solve(rig, (1 + 1e-7) * largest));
    }

    /// <summary>An alternator that puts in I raises the voltage behind the battery's resistance to V + I R.</summary>
    [Theory]
    [InlineData(20)]
    [InlineData(90)]
    public void What_an_alternator_puts_in_counts_as_a_higher_voltage(double amps)
    {
        const double Ohms = 0.012;
        var rig = new SupplyRig(OneBattery(Ohms, 1));
        double volts = 12.6 + (amps - 15) * Ohms;
        double largest = volts * volts / 4 / (Ohms + rig.Envelope.Ohms.Sum());
        Assert.NotNull(Solve(rig, (1 - 1e-7) * largest, amps, 15));
        Assert.Null(Solve(rig, (1 + 1e-7) * largest, amps, 15));
    }

    private static double[]? Solve(SupplyRig rig, double watts, double? amps = null, double vehicle = 0)
    {
        SupplyCircuit circuit = rig.With(_ => new LoadDraw(LoadKind.ConstantPower, watts));
        return circuit.Solve(circuit.Resting(), amps, vehicle);
    }

    private static Build OneBattery(double ohms, double state) => ConstantCurrent(50) with
    {
        Vehicle = new Vehicle
        {
            ChargingVolts = 14.4,
            Batteries = [new Battery { Id = "starter", Chemistry = Chemistry.Flooded, InternalOhms = ohms,
                StateOfCharge = state }],
        },
    };
}
