namespace Cablewright.Engine.Circuits;

/// <summary>Finds the node voltages of a circuit with resistances, sources and loads of constant power, current or resistance.</summary>
/// <remarks>
/// <para>Method: Newton's method on the node equations, F(v) = G v + i(v) − s = 0, from the voltages with nothing drawn.
/// A constant-power load's current P/u is convex in its voltage u, so from that start the steps go down to the highest
/// solution and never past it; where there is none they reach a voltage at which the Jacobian stops being positive definite,
/// and that is how collapse is known. For one source V behind one resistance R the most that has a solution is P = V²/4R.</para>
/// <para>Steps: (1) solve with nothing drawn; (2) at v form J = G + di/dv and the residual; (3) J d = −F; (4) v += d;
/// (5) end when no node moves by more than 1e-9 of the highest voltage: the step after that would be some 1e-18.</para>
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

    private readonly Network network;
    private readonly int[] unknownOf;
    private readonly Elimination matrix;
    private readonly Link[] branches;
    private readonly Link[] sources;
    private readonly Link[] loads;
    private readonly double[] step;
    private readonly double[] volts;

    /// <summary>Prepares the solution of circuits of one shape.</summary>
    public CircuitSolver(Network network)
    {
        this.network = network;
        unknownOf = new int[network.NodeCount];
        foreach (int node in network.HeldNodes) unknownOf[node] = -1;
        int count = 0;
        for (int node = 0; node < network.NodeCount; node++)
        {
            if (unknownOf[node] >= 0) unknownOf[node] = count++;
        }

        IEnumerable<(int, int)> joined = network.Branches.Select(branch => (branch.From, branch.To))
            .Concat(network.Sources.Select(source => (source.Positive, source.Negative)))
            .Concat(network.Loads.Select(load => (load.Positive, load.Negative)));
        matrix = new Elimination(count, joined
            .Select(pair => (unknownOf[pair.Item1], unknownOf[pair.Item2]))
            .Where(pair => pair.Item1 >= 0 && pair.Item2 >= 0));
        branches = [.. network.Branches.Select(branch => LinkOf(branch.From, branch.To))];
        sources = [.. network.Sources.Select(source => LinkOf(source.Positive, source.Negative))];
        loads = [.. network.Loads.Select(load => LinkOf(load.Positive, load.Negative))];
        step = new double[count];
        volts = new double[network.NodeCount];
    }

    /// <summary>The node potentials of the last circuit that was solved, in volts.</summary>
    public ReadOnlySpan<double> NodeVolts => volts;

    /// <summary>How many Newton steps the last solution took.</summary>
    public int Steps { get; private set; }

    /// <summary>Solves one circuit.</summary>
    /// <param name="branchOhms">Resistance of each branch, more than 0.</param>
    /// <param name="sourceStates">State of each source.</param>
    /// <param name="draws">Draw of each load.</param>
    /// <param name="heldVolts">Potential of each held node.</param>
    /// <returns><c>false</c> where the loads ask for more than the circuit can carry: the voltage collapses.</returns>
    public bool Solve(
        ReadOnlySpan<double> branchOhms,
        ReadOnlySpan<SourceState> sourceStates,
        ReadOnlySpan<LoadDraw> draws,
        ReadOnlySpan<double> heldVolts)
    {
        double scale = Start(heldVolts, sourceStates);
        for (Steps = 0; Steps <= MostSteps; Steps++)
        {
            matrix.Clear();
            Array.Clear(step);
            AddBranches(branchOhms);
            AddSources(sourceStates);
            bool idle = Steps == 0;
            if (!idle && !AddLoads(draws)) return false;
            if (!matrix.Factor()) return false;
            matrix.Solve(step);
            double largest = Move();
            if (!idle && largest <= Tolerance * scale) return true;
            scale = Math.Max(scale, largest);
        }

        return false;
    }

    /// <summary>Current of a branch in the last solution, from its start to its end, in amperes.</summary>
    public double BranchAmps(int branch, double ohms) =>
        (volts[network.Branches[branch].From] - volts[network.Branches[branch].To]) / ohms;

    /// <summary>Voltage across a load in the last solution.</summary>
    public double LoadVolts(int load) => volts[network.Loads[load].Positive] - volts[network.Loads[load].Negative];

    /// <summary>Current of a load at a voltage, in amperes.</summary>
    public static double Amps(LoadDraw draw, double volts) => draw.Kind switch
    {
        LoadKind.ConstantPower => draw.Magnitude / volts,
        LoadKind.ConstantCurrent => draw.Magnitude,
        _ => volts / draw.Magnitude,
    };

    private double Start(ReadOnlySpan<double> heldVolts, ReadOnlySpan<SourceState> sourceStates)
    {
        Array.Clear(volts);
        double scale = 0;
        for (int i = 0; i < heldVolts.Length; i++)
        {
            volts[network.HeldNodes[i]] = heldVolts[i];
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
            Add(link, siemens, siemens * (volts[link.From] - volts[link.To]));
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

    private bool AddLoads(ReadOnlySpan<LoadDraw> draws)
    {
        for (int i = 0; i < loads.Length; i++)
        {
            Link link = loads[i];
            LoadDraw draw = draws[i];
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
        if (link.FromUnknown >= 0)
        {
            matrix.AddDiagonal(link.FromUnknown, siemens);
            step[link.FromUnknown] -= amps;
        }

        if (link.ToUnknown >= 0)
        {
            matrix.AddDiagonal(link.ToUnknown, siemens);
            step[link.ToUnknown] += amps;
        }

        if (link.Entry >= 0) matrix.AddOffDiagonal(link.Entry, -siemens);
    }

    private double Move()
    {
        double largest = 0;
        for (int node = 0; node < volts.Length; node++)
        {
            if (unknownOf[node] < 0) continue;
            double d = step[unknownOf[node]];
            volts[node] += d;
            largest = Math.Max(largest, Math.Abs(d));
        }

        return largest;
    }

    private Link LinkOf(int from, int to)
    {
        int a = unknownOf[from], b = unknownOf[to];
        return new Link(from, to, a, b, a >= 0 && b >= 0 && a != b ? matrix.EntryOf(a, b) : -1);
    }

    private readonly record struct Link(int From, int To, int FromUnknown, int ToUnknown, int Entry);
}
