using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Tests.Published;

namespace Cablewright.Engine.Tests.Network;

/// <summary>Short circuits worked out by hand.</summary>
public class FaultCircuitTests
{
    private const int Ground = 0, Positive = 1, Far = 2;

    /// <summary>
    /// 12 V behind 5 mΩ through 10 mΩ: 12/0.015 = 800 A; with 5 mΩ in the fault 600 A; at the terminals 2400 A, none of it in the
    /// path.
    /// </summary>
    [Fact]
    public void One_battery_gives_its_voltage_over_all_resistance()
    {
        FaultCircuit circuit = OneBattery(0);
        Near.Relative(800, circuit.Between(Far, Ground, 0).Amps, 1e-12, "at the end, A");
        Near.Relative(800, circuit.Between(Far, Ground, 0).BranchAmps(0), 1e-12, "in the path, A");
        Near.Relative(600, circuit.Between(Far, Ground, 0.005).Amps, 1e-12, "with a resistance in the fault, A");
        Near.Relative(2400, circuit.Between(Positive, Ground, 0).Amps, 1e-12, "at the terminals, A");
        Near.Absolute(0, circuit.Between(Positive, Ground, 0).BranchAmps(0), 1e-9, "in the path then, A");
    }

    /// <summary>An alternator's 90 A beside the battery raise its voltage by 90 · 5 mΩ: (12 + 0.45)/0.015 = 830 A.</summary>
    [Fact]
    public void An_alternator_adds_its_current_by_the_divider() =>
        Near.Relative(830, OneBattery(90).Between(Far, Ground, 0).Amps, 1e-12, "at the end, A");

    /// <summary>
    /// Two equal batteries of 12.6 V behind 6 mΩ, each over 4 mΩ to the fault: 2 · 12.6/0.01 = 2520 A, half of it over each way.
    /// </summary>
    [Fact]
    public void Two_batteries_add_up()
    {
        var circuit = new FaultCircuit(
            new FaultNetwork(4, [new Branch(1, 2), new Branch(3, 2)], [new SourcePort(1, 0), new SourcePort(3, 0)], [Ground],
                new WorkMeter(double.PositiveInfinity)),
            [0.004, 0.004], [new SourceState(12.6, 0.006), new SourceState(12.6, 0.006)], [0, 0]);
        FaultCircuit.Fault fault = circuit.Between(2, Ground, 0);
        Near.Relative(2520, fault.Amps, 1e-12, "both, A");
        Near.Relative(1260, fault.BranchAmps(0), 1e-12, "one, A");
        Near.Relative(1260, fault.BranchAmps(1), 1e-12, "the other, A");
    }

    private static FaultCircuit OneBattery(double alternatorAmps) =>
        new(
            new FaultNetwork(3, [new Branch(Positive, Far)], [new SourcePort(Positive, Ground)], [Ground],
                new WorkMeter(double.PositiveInfinity)),
            [0.010], [new SourceState(12, 0.005)], [alternatorAmps]);
}
