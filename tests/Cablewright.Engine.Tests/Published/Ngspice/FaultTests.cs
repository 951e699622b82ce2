using System.Globalization;
using System.Text;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Tests.Network;

namespace Cablewright.Engine.Tests.Published.Ngspice;

/// <summary>
/// Source: ngspice (Debian), run here on the same circuits with a source of 0 V as the short circuit, whose current it prints.
/// Two batteries, a return over the body, loops in half of them, an alternator in a third.
/// </summary>
public class FaultTests
{
    private const int CircuitsOfEachShape = 36;
    private const int Ground = 0, Charging = 1, Body = 2;

    public static TheoryData<CircuitShape, int> Circuits()
    {
        var circuits = new TheoryData<CircuitShape, int>();
        foreach (CircuitShape shape in new[] { CircuitShape.TwoBatteries, CircuitShape.LoopsAndTwoBatteries })
        {
            for (int number = 0; number < CircuitsOfEachShape; number++) circuits.Add(shape, number);
        }

        return circuits;
    }

    [Fact]
    public void At_least_50_circuits_are_compared() => Assert.True(Circuits().Count >= 50);

    [Theory]
    [MemberData(nameof(Circuits))]
    public void Fault_currents_are_those_of_the_simulator(CircuitShape shape, int number)
    {
        Circuit any = RandomCircuit.Make(shape, 2000 + number);
        var random = new Random(number);
        SourcePort[] sources = [new SourcePort(Charging, Ground), .. any.Network.Sources];
        SourceState[] states = [new SourceState(any.HeldVolts[1], 0.003 + 0.012 * random.NextDouble()), .. any.Sources];
        double[] injections = [number % 3 == 0 ? 150 * random.NextDouble() : 0, 0];
        double faultOhms = number % 2 == 0 ? 0 : 0.002 * random.NextDouble();
        LoadPort port = any.Network.Loads[random.Next(any.Network.Loads.Count)];
        int node = number % 4 == 0 ? Charging : port.Positive;

        var circuit = new FaultCircuit(
            new FaultNetwork(any.Network.NodeCount, any.Network.Branches, sources, [Ground],
                new WorkMeter(double.PositiveInfinity)), any.BranchOhms, states, injections);
        FaultCircuit.Fault fault = circuit.Between(node, Body, faultOhms);

        string netlist = Netlist(any, sources, states, injections, node, faultOhms);
        Dictionary<string, double> simulator = Simulator.Printed(netlist);
        Near.Relative(simulator["i(vfault)"], fault.Amps, 1e-6, "fault, A");
        for (int i = 0; i < any.BranchOhms.Length; i++)
            Near.Absolute(simulator[Name(i)], fault.BranchAmps(i), 1e-6 * fault.Amps, $"branch {i}, A of {netlist}");
    }

    private static string Netlist(
        Circuit any, SourcePort[] sources, SourceState[] states, double[] injections, int node, double faultOhms)
    {
        var text = new StringBuilder("* a short circuit from a place of the supply to the body\n");
        for (int i = 0; i < any.BranchOhms.Length; i++)
            Line(text, $"R{i} {any.Network.Branches[i].From} {any.Network.Branches[i].To} {any.BranchOhms[i]:R}");
        for (int i = 0; i < sources.Length; i++)
        {
            Line(text, $"VS{i} s{i} {sources[i].Negative} {states[i].Volts:R}");
            Line(text, $"RS{i} s{i} {sources[i].Positive} {states[i].Ohms:R}");
            Line(text, $"IS{i} {sources[i].Negative} {sources[i].Positive} {injections[i]:R}");
        }

        Line(text, $"Vfault {node} f 0");
        if (faultOhms > 0) Line(text, $"Rfault f {Body} {faultOhms:R}");
        else Line(text, $"Vjoin f {Body} 0");
        text.Append(".options reltol=1e-10 abstol=1e-14 vntol=1e-12 gmin=1e-15\n.control\nset numdgt=15\nop\nprint i(vfault)\n");
        for (int i = 0; i < any.BranchOhms.Length; i++)
        {
            Branch branch = any.Network.Branches[i];
            Line(text, $"let {Name(i)} = ({Volts(branch.From)}-{Volts(branch.To)})/{any.BranchOhms[i]:R}");
            Line(text, $"print {Name(i)}");
        }

        return text.Append("quit 0\n.endc\n.end\n").ToString();
    }

    private static string Name(int branch) => "amps_" + branch.ToString(CultureInfo.InvariantCulture);

    private static string Volts(int node) => node == Ground ? "0" : $"v({node.ToString(CultureInfo.InvariantCulture)})";

    private static void Line(StringBuilder text, FormattableString line) =>
        text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
