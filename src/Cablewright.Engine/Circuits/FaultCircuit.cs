using Link = Cablewright.Engine.Circuits.NodeEquations.Link;

namespace Cablewright.Engine.Circuits;

/// <summary>Short circuits in a circuit of resistances and sources.</summary>
/// <remarks>
/// <para>Method: superposition. With v the node voltages before the fault and w those that one ampere makes which is drawn from
/// the faulty node and put back at the other, the fault current is I = (v_a − v_b) / (w_b − w_a), and the voltages during the
/// fault are v + I w. The matrix is factored once for all faults.</para>
/// </remarks>
internal sealed class FaultCircuit
{
    private readonly NodeEquations equations;
    private readonly Link[] branches;
    private readonly double[] branchOhms;
    private readonly double[] before;

    /// <summary>Factors the circuit.</summary>
    /// <param name="nodeCount">How many nodes there are.</param>
    /// <param name="branches">The resistances.</param>
    /// <param name="branchOhms">Their values, more than 0.</param>
    /// <param name="sources">Where the sources stand.</param>
    /// <param name="states">What they give; an infinite resistance: nothing.</param>
    /// <param name="injections">Currents that are put in at a source's positive terminal, as an alternator does.</param>
    /// <param name="held">Nodes held at 0 V; every node reaches one over branches or sources that give something.</param>
    public FaultCircuit(
        int nodeCount, IReadOnlyList<Branch> branches, double[] branchOhms, IReadOnlyList<SourcePort> sources,
        SourceState[] states, double[] injections, IReadOnlyList<int> held)
    {
        IEnumerable<(int, int)> joined = branches.Select(branch => (branch.From, branch.To))
            .Concat(sources.Select(source => (source.Positive, source.Negative)));
        equations = new NodeEquations(nodeCount, joined, held);
        this.branches = [.. branches.Select(branch => equations.LinkOf(branch.From, branch.To))];
        this.branchOhms = branchOhms;
        equations.Clear();
        before = new double[equations.Count];
        for (int i = 0; i < this.branches.Length; i++) equations.Stamp(this.branches[i], 1 / branchOhms[i]);
        for (int i = 0; i < states.Length; i++)
        {
            Link link = equations.LinkOf(sources[i].Positive, sources[i].Negative);
            equations.Stamp(link, 1 / states[i].Ohms);
            NodeEquations.Draw(link, -states[i].Volts / states[i].Ohms - injections[i], before);
        }

        if (!equations.Factor()) throw new InvalidOperationException("A node reaches no held node.");
        equations.Solve(before);
    }

    /// <summary>A short circuit between two nodes.</summary>
    /// <param name="a">The node at the higher potential.</param>
    /// <param name="b">The other.</param>
    /// <param name="faultOhms">What lies between them in the fault.</param>
    /// <returns>Its current, and that of each branch while it lasts, in amperes.</returns>
    public (double Amps, double[] BranchAmps) Between(int a, int b, double faultOhms)
    {
        var unit = new double[equations.Count];
        if (equations.UnknownOf(a) is >= 0 and int first) unit[first] -= 1;
        if (equations.UnknownOf(b) is >= 0 and int second) unit[second] += 1;
        equations.Solve(unit);
        double amps = (Volts(before, a) - Volts(before, b)) / (Volts(unit, b) - Volts(unit, a) + faultOhms);
        var branchAmps = new double[branches.Length];
        for (int i = 0; i < branches.Length; i++)
        {
            (int from, int to) = (branches[i].From, branches[i].To);
            branchAmps[i] =
                (Volts(before, from) - Volts(before, to) + amps * (Volts(unit, from) - Volts(unit, to))) / branchOhms[i];
        }

        return (amps, branchAmps);
    }

    private double Volts(double[] solution, int node) =>
        equations.UnknownOf(node) is >= 0 and int unknown ? solution[unknown] : 0;
}
