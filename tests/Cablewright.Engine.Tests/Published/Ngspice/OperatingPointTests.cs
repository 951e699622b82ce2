using Cablewright.Engine.Tests.Network;


namespace Cablewright.Engine.Tests.Published.Ngspice;

/// <summary>
/// Source: ngspice (Debian), a general-purpose circuit simulator, run here on the same circuits. Constant-power loads are
/// behavioural current sources I = P/V there. Node voltages agree to 1e-6 of the source voltage.
/// </summary>
public class OperatingPointTests
{
    private const int CircuitsOfEachShape = 48;
    private const int NearCollapseOfEachShape = 6;
    private const int BeyondCollapseOfEachShape = 4;

    private static readonly double[] SharesOfCollapse = [0.02, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

    public static TheoryData<CircuitShape, int, double> Circuits()
    {
        var circuits = new TheoryData<CircuitShape, int, double>();
        foreach (CircuitShape shape in Enum.GetValues<CircuitShape>())
        {
            for (int number = 0; number < CircuitsOfEachShape; number++)
                circuits.Add(shape, number, SharesOfCollapse[number % SharesOfCollapse.Length]);
            for (int number = 0; number < NearCollapseOfEachShape; number++)
                circuits.Add(shape, CircuitsOfEachShape + number, number % 2 == 0 ? 0.99 : 0.9999);
        }

        return circuits;
    }

    public static TheoryData<CircuitShape, int> Overloaded()
    {
        var circuits = new TheoryData<CircuitShape, int>();
        foreach (CircuitShape shape in Enum.GetValues<CircuitShape>())
        {
            for (int number = 0; number < BeyondCollapseOfEachShape; number++) circuits.Add(shape, 1000 + number);
        }

        return circuits;
    }

    [Fact]
    public void At_least_200_circuits_are_compared() => Assert.True(Circuits().Count >= 200);

    [Theory]
    [MemberData(nameof(Circuits))]
    public void Node_voltages_are_those_of_the_simulator(CircuitShape shape, int number, double shareOfCollapse)
    {
        Circuit any = RandomCircuit.Make(shape, number);
        Circuit circuit = any.Times(shareOfCollapse * any.LargestFactor());
        double[] engine = circuit.Solve() ?? throw new InvalidOperationException("The engine finds no solution.");
        string netlist = CircuitNetlist.Of(circuit);
        double[]? simulator = CircuitNetlist.OperatingPoint(circuit, netlist);
        Assert.True(simulator is not null, $"{shape} {number}: the simulator finds no operating point of\n{netlist}");
        double allowed = 1e-6 * circuit.HeldVolts.Max();
        for (int node = 0; node < engine.Length; node++)
        {
            Assert.True(
                Math.Abs(engine[node] - simulator[node]) <= allowed,
                $"{shape} {number}, node {node}: engine {engine[node]:R}, simulator {simulator[node]:R} V of\n{netlist}");
        }
    }

    /// <summary>
    /// Beyond collapse the simulator either gives up or ends its stepping at potentials that no source could give.
    /// </summary>
    [Theory]
    [MemberData(nameof(Overloaded))]
    public void Where_the_engine_says_collapse_the_simulator_finds_no_operating_point_either(CircuitShape shape, int number)
    {
        Circuit any = RandomCircuit.Make(shape, number);
        Circuit circuit = any.Times(1.001 * any.LargestFactor());
        Assert.Null(circuit.Solve());
        string netlist = CircuitNetlist.Of(circuit);
        double[]? simulator = CircuitNetlist.OperatingPoint(circuit, netlist);
        double highest = circuit.HeldVolts.Max();
        Assert.True(
            simulator is null || simulator.Any(volts => volts < -1e-6 || volts > highest + 1e-6),
            $"{shape} {number}: the simulator finds an operating point of\n{netlist}");
    }
}
