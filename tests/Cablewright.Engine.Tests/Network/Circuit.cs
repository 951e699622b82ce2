using Cablewright.Engine.Network;
using Cablewright.Engine.Tests.Wiring;

namespace Cablewright.Engine.Tests.Network;

/// <summary>A network with its values, which can be solved in one go.</summary>
internal sealed record Circuit(
    ElectricalNetwork Network, double[] BranchOhms, SourceState[] Sources, LoadDraw[] Draws, double[] HeldVolts)
{
    /// <summary>
    /// The node potentials, with Kirchhoff's law and the power balance asserted; <c>null</c> where the voltage collapses.
    /// </summary>
    public double[]? Solve()
    {
        var solver = new CircuitSolver(Network);
        if (!solver.Solve(BranchOhms, Sources, Draws, HeldVolts)) return null;
        double[] volts = solver.NodeVolts.ToArray();
        Balance.Holds(this, volts);
        return volts;
    }

    /// <summary>The same circuit with every load drawing a factor more.</summary>
    public Circuit Times(double factor) => this with
    {
        Draws = [.. Draws.Select(draw => draw with
        {
            Magnitude = draw.Kind is LoadKind.ConstantResistance ? draw.Magnitude / factor : draw.Magnitude * factor,
        })],
    };

    /// <summary>The largest factor on every load at which the circuit still has a solution, by bisection.</summary>
    public double LargestFactor()
    {
        double works = 0, fails = 1;
        while (Times(fails).Solve() is not null) (works, fails) = (fails, 2 * fails);
        while (fails - works > 1e-12 * fails)
        {
            double middle = (works + fails) / 2;
            if (Times(middle).Solve() is null) fails = middle;
            else works = middle;
        }

        return works;
    }

    public double VoltsAcross(int load, double[] volts) =>
        volts[Network.Loads[load].Positive] - volts[Network.Loads[load].Negative];
}
