namespace Cablewright.Engine.Network;

/// <summary>Short circuits in a circuit of resistances and sources.</summary>
/// <remarks>
/// <para>Method: superposition. With v the node voltages before the fault and w those that one ampere makes which is drawn from
/// the faulty node and put back at the other, the fault current is I = (v_a − v_b) / (w_b − w_a), and the voltages during the
/// fault are v + I w. The matrix is factored once for all faults, and w found only where it is asked for.</para>
/// </remarks>
internal sealed class FaultCircuit
{
    private readonly FaultNetwork network;
    private readonly NodeEquations equations;
    private readonly double[] branchOhms;
    private readonly double[] before;
    private readonly UnitResponse responses;

    /// <summary>Factors the circuit.</summary>
    /// <param name="network">Its shape.</param>
    /// <param name="branchOhms">The resistances, more than 0.</param>
    /// <param name="states">What the sources give; an infinite resistance: nothing.</param>
    /// <param name="injections">Currents that are put in at a source's positive terminal, as an alternator does.</param>
    public FaultCircuit(FaultNetwork network, double[] branchOhms, SourceState[] states, double[] injections)
    {
        this.network = network;
        this.branchOhms = branchOhms;
        equations = network.Equations();
        before = new double[equations.Count];
        for (int i = 0; i < branchOhms.Length; i++) equations.Stamp(network.Branches[i], 1 / branchOhms[i]);
        for (int i = 0; i < states.Length; i++)
        {
            equations.Stamp(network.Sources[i], 1 / states[i].Ohms);
            NodeEquations.Draw(network.Sources[i], -states[i].Volts / states[i].Ohms - injections[i], before);
        }

        if (!equations.Factor()) throw new InvalidOperationException("A node reaches no held node.");
        equations.Solve(before);
        responses = network.Responses(equations);
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
        (int from, int to) = (network.Branches[branch].From, network.Branches[branch].To);
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
