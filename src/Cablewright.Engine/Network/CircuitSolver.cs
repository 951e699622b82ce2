using Cablewright.Engine.Numerics;
using Link = Cablewright.Engine.Network.NodeEquations.Link;

namespace Cablewright.Engine.Network;

/// <summary>
/// Finds the node voltages of a circuit with resistances, sources and loads of constant power, current or resistance.
/// </summary>
/// <remarks>
/// <para>Method: Newton's method on the node equations, F(v) = G v + i(v) − s = 0, from the voltages with nothing drawn.
/// A constant-power load's current P/u is convex in its voltage u, so from that start the steps go down to the highest
/// solution and never past it; where there is none they reach a voltage at which the Jacobian stops being positive definite,
/// and that is how collapse is known. For one source V behind one resistance R the most that has a solution is P = V²/4R.</para>
/// <para>Steps: (1) solve with nothing drawn, but with what alternators put in; (2) at v form J = G + di/dv and the residual; (3)
/// J d = −F; (4) v += d; (5) end when no node moves by more than 1e-9 of the highest voltage: the step after that would be some
/// 1e-18.</para>
/// <para>Where the voltages of a circuit that differs little are known, it starts from those; where a step from there finds J not
/// positive definite, it starts over at (1). Without loads of constant power the equations are linear, and one step after (1) is
/// the last.</para>
/// <list type="table">
/// <item><term>v</term><description>Node potentials, V.</description></item>
/// <item><term>u</term><description>Voltage across a load, V.</description></item>
/// <item><term>G</term><description>Conductances of branches and sources, S.</description></item>
/// <item><term>i, s</term><description>Currents of loads and sources, A.</description></item>
/// <item><term>d</term><description>Newton step, V.</description></item>
/// </list>
/// </remarks>
public sealed class CircuitSolver
{
    private const int MostSteps = 60;
    private const double Tolerance = 1e-9;

    private readonly ElectricalNetwork network;
    private readonly WorkMeter? meter;
    private readonly double costOfStep;
    private readonly NodeEquations equations;
    private readonly Link[] branches;
    private readonly double[] falls;
    private readonly Link[] sources;
    private readonly Link[] loads;
    private readonly double[] step;
    private readonly double[] volts;

    /// <summary>Prepares the solution of circuits of one shape.</summary>
    /// <param name="network">The shape.</param>
    /// <param name="meter">Counts the work; <c>null</c>: nobody does.</param>
    public CircuitSolver(ElectricalNetwork network, WorkMeter? meter = null)
    {
        this.network = network;
        this.meter = meter;
        IEnumerable<(int, int)> joined = network.Branches.Select(branch => (branch.From, branch.To))
            .Concat(network.Sources.Select(source => (source.Positive, source.Negative)))
            .Concat(network.Loads.Select(load => (load.Positive, load.Negative)));
        equations = new NodeEquations(network.NodeCount, joined, network.FixedPotentialNodes);
        branches = [.. network.Branches.Select(branch => equations.LinkOf(branch.From, branch.To))];
        falls = [.. network.Branches.Select(branch => branch.FallVolts)];
        sources = [.. network.Sources.Select(source => equations.LinkOf(source.Positive, source.Negative))];
        loads = [.. network.Loads.Select(load => equations.LinkOf(load.Positive, load.Negative))];
        step = new double[equations.Count];
        volts = new double[network.NodeCount];
        costOfStep = equations.CostOf(branches.Length + sources.Length + loads.Length);
        meter?.Count(costOfStep);
    }

    /// <summary>The node potentials of the last circuit that was solved, in volts.</summary>
    public ReadOnlySpan<double> NodeVolts => volts;

    /// <summary>Solves one circuit.</summary>
    /// <param name="branchOhms">Resistance of each branch, more than 0.</param>
    /// <param name="sourceStates">State of each source.</param>
    /// <param name="draws">Draw of each load.</param>
    /// <param name="heldVolts">Potential of each fixed-potential node.</param>
    /// <param name="nearVolts">The node potentials of a circuit that differs little from it; empty where none is known.</param>
    /// <returns><c>false</c> where the loads ask for more than the circuit can carry: the voltage collapses.</returns>
    public bool Solve(
        ReadOnlySpan<double> branchOhms,
        ReadOnlySpan<SourceState> sourceStates,
        ReadOnlySpan<LoadDraw> draws,
        ReadOnlySpan<double> heldVolts,
        ReadOnlySpan<double> nearVolts = default)
    {
        if (nearVolts.Length > 0)
        {
            nearVolts.CopyTo(volts);
            if (Descend(branchOhms, sourceStates, draws, Hold(heldVolts, sourceStates))) return true;
        }

        Array.Clear(volts);
        double scale = Hold(heldVolts, sourceStates);
        if (Step(branchOhms, sourceStates, draws, idle: true) is not { } moved) return false;
        return Descend(branchOhms, sourceStates, draws, Math.Max(scale, moved));
    }

    /// <summary>Newton steps from the present voltages until no node moves.</summary>
    private bool Descend(
        ReadOnlySpan<double> branchOhms, ReadOnlySpan<SourceState> sourceStates, ReadOnlySpan<LoadDraw> draws, double scale)
    {
        bool isLinear = IsLinear(draws);
        for (int taken = 0; taken < MostSteps; taken++)
        {
            if (Step(branchOhms, sourceStates, draws, idle: false) is not { } moved) return false;
            if (isLinear || moved <= Tolerance * scale) return true;
            scale = Math.Max(scale, moved);
        }

        return false;
    }

    /// <summary>One Newton step; how far a node moved, or <c>null</c> where there is no step.</summary>
    private double? Step(
        ReadOnlySpan<double> branchOhms, ReadOnlySpan<SourceState> sourceStates, ReadOnlySpan<LoadDraw> draws, bool idle)
    {
        meter?.Count(costOfStep);
        equations.Clear();
        Array.Clear(step);
        AddBranches(branchOhms);
        AddSources(sourceStates);
        if (!AddLoads(draws, idle) || !equations.Factor()) return null;
        equations.Solve(step);
        return Move();
    }

    /// <summary>Current of a branch in the last solution, from its start to its end, in amperes.</summary>
    public double BranchAmps(int branch, double ohms) =>
        (volts[network.Branches[branch].From] - volts[network.Branches[branch].To] - network.Branches[branch].FallVolts) / ohms;

    /// <summary>Voltage across a load in the last solution.</summary>
    public double LoadVolts(int load) => volts[network.Loads[load].Positive] - volts[network.Loads[load].Negative];

    /// <summary>Current that a source gave in the last solution, in amperes; negative: it took.</summary>
    public double SourceAmps(int source, SourceState state) =>
        (state.Volts - volts[network.Sources[source].Positive] + volts[network.Sources[source].Negative]) / state.Ohms;

    /// <summary>Current of a load at a voltage, in amperes.</summary>
    public static double Amps(LoadDraw draw, double volts) => draw.Kind switch
    {
        LoadKind.ConstantPower => draw.Magnitude / volts,
        LoadKind.ConstantCurrent => draw.Magnitude,
        _ => volts / draw.Magnitude,
    };

    private static bool IsLinear(ReadOnlySpan<LoadDraw> draws)
    {
        foreach (LoadDraw draw in draws)
        {
            if (draw.Kind is LoadKind.ConstantPower) return false;
        }

        return true;
    }

    /// <summary>Puts the fixed-potential nodes where they are held.</summary>
    /// <returns>The highest voltage.</returns>
    private double Hold(ReadOnlySpan<double> heldVolts, ReadOnlySpan<SourceState> sourceStates)
    {
        double scale = 0;
        for (int i = 0; i < heldVolts.Length; i++)
        {
            volts[network.FixedPotentialNodes[i]] = heldVolts[i];
            scale = Math.Max(scale, Math.Abs(heldVolts[i]));
        }

        foreach (SourceState source in sourceStates) scale = Math.Max(scale, Math.Abs(source.Volts));
        return scale;
    }

    private void AddBranches(ReadOnlySpan<double> ohms)
    {
        for (int i = 0; i < branches.Length; i++)
        {
            double siemens = 1 / ohms[i];
            Link link = branches[i];
            Add(link, siemens, siemens * (volts[link.From] - volts[link.To] - falls[i]));
        }
    }

    private void AddSources(ReadOnlySpan<SourceState> states)
    {
        for (int i = 0; i < sources.Length; i++)
        {
            double siemens = 1 / states[i].Ohms;
            Link link = sources[i];
            Add(link, siemens, siemens * (volts[link.From] - volts[link.To] - states[i].Volts));
        }
    }

    private bool AddLoads(ReadOnlySpan<LoadDraw> draws, bool idle)
    {
        for (int i = 0; i < loads.Length; i++)
        {
            Link link = loads[i];
            LoadDraw draw = draws[i];
            if (idle && !draw.PutsIn) continue;
            double u = volts[link.From] - volts[link.To];
            if (draw.Kind is LoadKind.ConstantPower && draw.Magnitude > 0 && !(u > 0)) return false;
            double slope = draw.Kind switch
            {
                LoadKind.ConstantPower => draw.Magnitude == 0 ? 0 : -draw.Magnitude / (u * u),
                LoadKind.ConstantCurrent => 0,
                _ => 1 / draw.Magnitude,
            };
            Add(link, slope, draw.Magnitude == 0 ? 0 : Amps(draw, u));
        }

        return true;
    }

    /// <summary>Adds a two-terminal element: its conductance to the Jacobian, its current to the residual.</summary>
    private void Add(Link link, double siemens, double amps)
    {
        equations.Stamp(link, siemens);
        NodeEquations.Draw(link, amps, step);
    }

    private double Move()
    {
        double largest = 0;
        for (int node = 0; node < volts.Length; node++)
        {
            if (equations.UnknownOf(node) < 0) continue;
            double d = step[equations.UnknownOf(node)];
            volts[node] += d;
            largest = Math.Max(largest, Math.Abs(d));
        }

        return largest;
    }
}
