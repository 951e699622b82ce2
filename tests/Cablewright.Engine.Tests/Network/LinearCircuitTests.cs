using Cablewright.Engine.Network;
using Cablewright.Engine.Tests.Published;

namespace Cablewright.Engine.Tests.Network;

/// <summary>Circuits whose answer is simple arithmetic.</summary>
public class LinearCircuitTests
{
    /// <summary>100 A through 2 mΩ and back through 1 mΩ: 0.2 V and 0.1 V.</summary>
    [Fact]
    public void A_constant_current_drops_current_times_resistance()
    {
        double[] volts = OneLoad(new LoadDraw(LoadKind.ConstantCurrent, 100)).Solve()!;
        Assert.Equal(13.6, volts[1], 12);
        Assert.Equal(0.1, volts[2], 12);
    }

    /// <summary>0.097 Ω behind 3 mΩ is a divider: 13.8 V × 0.097/0.1 = 13.386 V across the load.</summary>
    [Fact]
    public void A_constant_resistance_divides_the_voltage()
    {
        double[] volts = OneLoad(new LoadDraw(LoadKind.ConstantResistance, 0.097)).Solve()!;
        Assert.Equal(13.386, volts[1] - volts[2], 12);
    }

    [Fact]
    public void A_load_that_draws_nothing_sees_the_whole_voltage()
    {
        Assert.All([LoadKind.ConstantPower, LoadKind.ConstantCurrent], kind =>
        {
            double[] volts = OneLoad(new LoadDraw(kind, 0)).Solve()!;
            Assert.Equal(13.8, volts[1] - volts[2], 12);
        });
    }

    /// <summary>2, 3 and 6 mΩ in parallel are 1 mΩ: 150 A drop 0.15 V, and split 75, 50 and 25 A.</summary>
    [Fact]
    public void Parallel_branches_split_the_current_by_their_conductance()
    {
        var network =
            new ElectricalNetwork(3, [new Branch(0, 1), new Branch(0, 1), new Branch(1, 0)], [], [new LoadPort(1, 2)], [0, 2]);
        var circuit = new Circuit(network, [2e-3, 3e-3, 6e-3], [], [new LoadDraw(LoadKind.ConstantCurrent, 150)], [13.8, 0]);
        double[] volts = circuit.Solve()!;
        Near.Relative(13.65, volts[1], 1e-12, "load voltage");
        var solver = new CircuitSolver(network);
        Assert.True(solver.Solve(circuit.BranchOhms, circuit.Sources, circuit.Draws, circuit.HeldVolts));
        Near.Relative(75, solver.BranchAmps(0, 2e-3), 1e-9, "first branch, A");
        Near.Relative(50, solver.BranchAmps(1, 3e-3), 1e-9, "second branch, A");
        Near.Relative(-25, solver.BranchAmps(2, 6e-3), 1e-9, "third branch, written the other way round, A");
        Near.Relative(13.65, solver.LoadVolts(0), 1e-12, "load voltage by the solver");
    }

    /// <summary>Equal arms of 1 mΩ with 5 mΩ across: no current in the bridge; 200 A split into two halves drop 0.2 V.</summary>
    [Fact]
    public void A_balanced_bridge_carries_nothing_across()
    {
        var network = new ElectricalNetwork(
            5, [new Branch(0, 1), new Branch(0, 2), new Branch(1, 3), new Branch(2, 3), new Branch(1, 2)], [],
            [new LoadPort(3, 4)], [0, 4]);
        var circuit = new Circuit(
            network, [1e-3, 1e-3, 1e-3, 1e-3, 5e-3], [], [new LoadDraw(LoadKind.ConstantCurrent, 200)], [13.8, 0]);
        double[] volts = circuit.Solve()!;
        Assert.Equal(volts[1], volts[2], 12);
        Near.Relative(13.6, volts[3], 1e-12, "load voltage");
    }

    /// <summary>14 V through 8 mΩ into a battery of 12.8 V behind 4 mΩ: 1.2 V / 12 mΩ = 100 A of recharging.</summary>
    [Fact]
    public void A_second_battery_recharges_by_the_difference_of_the_voltages()
    {
        var network = new ElectricalNetwork(3, [new Branch(0, 1)], [new SourcePort(1, 2)], [], [0, 2]);
        var circuit = new Circuit(network, [8e-3], [new SourceState(12.8, 4e-3)], [], [14, 0]);
        double[] volts = circuit.Solve()!;
        Near.Relative(13.2, volts[1], 1e-12, "terminal voltage of the second battery");
    }

    private static Circuit OneLoad(LoadDraw draw)
    {
        var network = new ElectricalNetwork(4, [new Branch(0, 1), new Branch(2, 3)], [], [new LoadPort(1, 2)], [0, 3]);
        return new Circuit(network, [2e-3, 1e-3], [], [draw], [13.8, 0]);
    }
}
