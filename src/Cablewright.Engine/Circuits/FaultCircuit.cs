using Link = Cablewright.Engine.Circuits.NodeEquations.Link;

namespace Cablewright.Engine.Circuits;

/// <summary>Short circuits in a circuit of resistances and sources.</summary>
/// <remarks>
/// <para>Method: superposition. With v the node voltages before the fault and w those that one ampere makes which is drawn from
/// the faulty node and put back at the other, the fault current is I = (v_a − v_b) / (w_b − w_a), and the voltages during the
/// fault are v + I w. The matrix is factored once for all faults, and w found only where it is asked for.</para>
/// </remarks>
internal sealed class FaultCircuit
{
    private readonly NodeEquations equations;
    private readonly Link[] branches;
    private readonly double[] branchOhms;
    private readonly double[] before;
    private readonly UnitResponse responses;

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
        responses = equations.Responses();
    }

    /// <summary>A short circuit between two nodes.</summary>
    /// <param name="a">The node at the higher potential.</param>
    /// <param name="b">The other.</param>
    /// <param name="faultOhms">What lies between them in the fault.</param>
    public Fault Between(int a, int b, double faultOhms)
    {
        double amps = (Volts(a) - Volts(b)) / (Response(a, b, b) - Response(a, b, a) + faultOhms);
        return new Fault(this, a, b, amps);
    }

    private double BranchAmps(Fault fault, int branch)
    {
        (int from, int to) = (branches[branch].From, branches[branch].To);
        double response = Response(fault.A, fault.B, from) - Response(fault.A, fault.B, to);
        return (Volts(from) - Volts(to) + fault.Amps * response) / branchOhms[branch];
    }

    private double Volts(int node) => equations.UnknownOf(node) is >= 0 and int unknown ? before[unknown] : 0;

    private double Response(int a, int b, int node) =>
        responses.At(equations.UnknownOf(a), equations.UnknownOf(b), equations.UnknownOf(node));

    /// <summary>A short circuit between two nodes.</summary>
    /// <param name="Circuit">Where it is.</param>
    /// <param name="A">The node at the higher potential.</param>
    /// <param name="B">The other.</param>
    /// <param name="Amps">Its current.</param>
    internal readonly record struct Fault(FaultCircuit Circuit, int A, int B, double Amps)
    {
        /// <summary>The current of a branch while it lasts, from its start to its end.</summary>
        public double BranchAmps(int branch) => Circuit.BranchAmps(this, branch);
    }
}
