using System.Globalization;
using System.Text;
using Cablewright.Engine.Network;
using Cablewright.Engine.Tests.Network;

namespace Cablewright.Engine.Tests.Published.Ngspice;

/// <summary>
/// Writes a circuit down for the simulator, with tolerances and printed digits set well below what is compared.
/// </summary>
internal static class CircuitNetlist
{
    public static string Of(Circuit circuit)
    {
        ElectricalNetwork network = circuit.Network;
        var text = new StringBuilder("* node 0 is the negative terminal of the battery at the alternator\n");
        for (int i = 0; i < network.FixedPotentialNodes.Count; i++)
        {
            if (network.FixedPotentialNodes[i] != 0)
                Line(text, $"V{i} {Node(network.FixedPotentialNodes[i])} 0 {circuit.HeldVolts[i]:R}");
        }

        for (int i = 0; i < network.Branches.Count; i++)
            Line(text, $"R{i} {Node(network.Branches[i].From)} {Node(network.Branches[i].To)} {circuit.BranchOhms[i]:R}");
        for (int i = 0; i < network.Sources.Count; i++)
        {
            Line(text, $"VS{i} s{i} {Node(network.Sources[i].Negative)} {circuit.Sources[i].Volts:R}");
            Line(text, $"RS{i} s{i} {Node(network.Sources[i].Positive)} {circuit.Sources[i].Ohms:R}");
        }

        for (int i = 0; i < network.Loads.Count; i++) text.Append(Load(i, network.Loads[i], circuit.Draws[i])).Append('\n');
        double start = circuit.HeldVolts.Max();
        foreach (LoadPort port in network.Loads)
            Line(text, $".nodeset v({Node(port.Positive)})={start:R} v({Node(port.Negative)})=0");
        text.Append(".options reltol=1e-10 abstol=1e-14 vntol=1e-12 gmin=1e-15\n.control\nset numdgt=15\nop\n");
        for (int node = 1; node < network.NodeCount; node++) Line(text, $"print v({Node(node)})");
        return text.Append("quit 0\n.endc\n.end\n").ToString();
    }

    /// <summary>The operating point's node potentials; <c>null</c> where the simulator finds none.</summary>
    public static double[]? OperatingPoint(Circuit circuit, string netlist)
    {
        Dictionary<string, double> printed = Simulator.Printed(netlist);
        return printed.Count == 0
            ? null
            : [.. Enumerable.Range(0, circuit.Network.NodeCount).Select(node => node == 0 ? 0 : printed[$"v({Node(node)})"])];
    }

    private static string Load(int i, LoadPort port, LoadDraw draw)
    {
        string ends = $"{Node(port.Positive)} {Node(port.Negative)}";
        string magnitude = draw.Magnitude.ToString("R", CultureInfo.InvariantCulture);
        return draw.Kind switch
        {
            LoadKind.ConstantPower => $"B{i} {ends} I={magnitude}/V({Node(port.Positive)},{Node(port.Negative)})",
            LoadKind.ConstantCurrent => $"I{i} {ends} {magnitude}",
            _ => $"RL{i} {ends} {magnitude}",
        };
    }

    private static string Node(int node) => node == 0 ? "0" : "n" + node.ToString(CultureInfo.InvariantCulture);

    private static void Line(StringBuilder text, FormattableString line) =>
        text.Append(FormattableString.Invariant(line)).Append('\n');
}
