using Cablewright.Engine.Network;
using Cablewright.Engine.Tests.Network;

namespace Cablewright.Engine.Tests.Wiring;

/// <summary>
/// What must hold of any solution, computed here from the node potentials alone: the currents at a node sum to nothing, and
/// what the sources give is what the resistances and the loads take.
/// </summary>
internal static class Balance
{
    private const double Tolerance = 1e-7;

    public static void Holds(Circuit circuit, double[] volts)
    {
        ElectricalNetwork network = circuit.Network;
        var leaving = new double[network.NodeCount];
        double given = 0, taken = 0, largest = 0;

        void Element(int from, int to, double amps)
        {
            leaving[from] += amps;
            leaving[to] -= amps;
            largest = Math.Max(largest, Math.Abs(amps));
        }

        for (int i = 0; i < network.Branches.Count; i++)
        {
            (int from, int to, double fall) = network.Branches[i];
            double amps = (volts[from] - volts[to] - fall) / circuit.BranchOhms[i];
            Element(from, to, amps);
            taken += amps * amps * circuit.BranchOhms[i] + amps * fall;
        }

        for (int i = 0; i < network.Sources.Count; i++)
        {
            (int positive, int negative) = network.Sources[i];
            SourceState source = circuit.Sources[i];
            if (double.IsInfinity(source.Ohms)) continue;
            double amps = (volts[positive] - volts[negative] - source.Volts) / source.Ohms;
            Element(positive, negative, amps);
            given -= source.Volts * amps;
            taken += amps * amps * source.Ohms;
        }

        for (int i = 0; i < network.Loads.Count; i++)
        {
            double across = circuit.VoltsAcross(i, volts);
            double amps = LoadAmps(circuit.Draws[i], across);
            Element(network.Loads[i].Positive, network.Loads[i].Negative, amps);
            if (circuit.Draws[i].PutsIn) given -= amps * across;
            else taken += amps * across;
        }

        for (int i = 0; i < network.FixedPotentialNodes.Count; i++)
        {
            Assert.Equal(circuit.HeldVolts[i], volts[network.FixedPotentialNodes[i]]);
            given += circuit.HeldVolts[i] * leaving[network.FixedPotentialNodes[i]];
            leaving[network.FixedPotentialNodes[i]] = 0;
        }

        Assert.All(
            leaving,
            amps => Assert.True(
                Math.Abs(amps) <= Tolerance * largest, $"{amps} A are left over at a node; the largest current is {largest} A"));
        Assert.True(
            Math.Abs(given - taken) <= Tolerance * Math.Max(given, taken),
            $"the sources give {given} W, the circuit takes {taken} W");
    }

    private static double LoadAmps(LoadDraw draw, double volts) => draw.Kind switch
    {
        LoadKind.ConstantPower => draw.Magnitude == 0 ? 0 : draw.Magnitude / volts,
        LoadKind.ConstantCurrent => draw.Magnitude,
        _ => volts / draw.Magnitude,
    };
}
