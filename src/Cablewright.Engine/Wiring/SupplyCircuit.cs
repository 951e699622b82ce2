using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Wiring;

/// <summary>
/// The circuit of a build with its batteries at their own voltage: where the alternator has reached its limit, or stands still.
/// </summary>
/// <remarks>
/// The same runs as in <see cref="CircuitModel"/>, at the resistances that they have when warm. Every battery is a voltage behind
/// a resistance, every capacitor too; what charges puts a current in at its place; the vehicle's own load hangs on the battery
/// that is charged first. With the engine off the isolators are open. A diode blocks where its current would turn round: the
/// circuit is solved with the diodes conducting, then as each solution says, and from all of them blocking where that has no end.
/// </remarks>
internal sealed class SupplyCircuit
{
    private const double OpenOhms = 1e9;
    private const double StiffOhms = 1e-6;
    private const double NoVolts = 1e-6;

    private readonly CompleteBuild build;
    private readonly CircuitModel circuit;
    private readonly double[] warmOhms;
    private readonly CircuitSolver solver;
    private readonly LoadDraw[] draws;
    private readonly double[] held;
    private readonly int[] diodes;

    public SupplyCircuit(BuildModel model, OperatingEnvelope envelope)
    {
        build = model.Build;
        circuit = model.Circuit;
        warmOhms = [.. envelope.Ohms, .. circuit.FixedOhms];
        LoadPort[] amplifiers = [.. circuit.Network.Loads.Take(build.Draws.Count)];
        LoadPort[] inputs = [.. circuit.Network.Loads.Skip(build.Draws.Count).Take(circuit.ChargerRuns.Count)];
        SourcePort charging = circuit.Batteries[build.ChargingBattery];
        SourcePort[] capacitors =
            [.. build.Capacitors.Select(capacitor => circuit.PortAt(capacitor.At))
                .Select(port => new SourcePort(port.Positive, port.Negative))];
        var network = new ElectricalNetwork(
            circuit.Network.NodeCount,
            circuit.Network.Branches,
            [.. circuit.Batteries, .. capacitors],
            [
                .. amplifiers, .. inputs, .. circuit.ChargerRuns.Select(circuit.OutputOf),
                circuit.ChargingPort, new LoadPort(charging.Positive, charging.Negative),
            ],
            circuit.FixedReturnNodes);
        solver = new CircuitSolver(network, build.Meter);
        draws = new LoadDraw[network.Loads.Count];
        held = new double[network.FixedPotentialNodes.Count];
        diodes = [.. Enumerable.Range(0, build.Runs.Count)
            .Where(run => build.Runs[run].Isolator is { Kind: IsolatorKind.Diode })];
    }

    /// <summary>The batteries at their own voltage, then the capacitors away from the circuit.</summary>
    public SourceState[] Resting() =>
        [
            .. build.Batteries.Select(battery => new SourceState(
                battery.RestVolts, battery.InternalOhms + battery.Polarisation.Sum(part => part.Ohms))),
            .. build.Capacitors.Select(_ => new SourceState(0, double.PositiveInfinity)),
        ];

    /// <summary>
    /// The same while the alternator holds the charging voltage: the battery at it gives whatever is drawn, another only where
    /// the voltage at it falls below its own. From all of them connected those that would be charged are taken away, which lowers
    /// no voltage, until none is left.
    /// </summary>
    public SourceState[] Held()
    {
        SourceState[] states = Resting();
        int[] others = [.. Enumerable.Range(0, build.Batteries.Count).Where(i => i != build.ChargingBattery && IsHeld(i))];
        states[build.ChargingBattery] = new SourceState(build.ChargingVolts, StiffOhms);
        while (others.Length > 0 && Solve(states, 0, 0) is not null)
        {
            int[] charged = [.. others.Where(i => double.IsFinite(states[i].Ohms) && VoltsAt(i) >= states[i].Volts)];
            if (charged.Length == 0) break;
            foreach (int other in charged) states[other] = states[other] with { Ohms = double.PositiveInfinity };
        }

        return states;
    }

    private double VoltsAt(int battery) =>
        solver.NodeVolts[circuit.Batteries[battery].Positive] - solver.NodeVolts[circuit.Batteries[battery].Negative];

    /// <summary>Whether a source is a battery on the supply that the alternator holds.</summary>
    public bool IsHeld(int source) => source < build.Batteries.Count && !circuit.IsParted(source);

    /// <summary>Solves with every amplifier at full output.</summary>
    /// <param name="sources">Each battery and each capacitor.</param>
    /// <param name="chargedAmps">What the alternator or converter puts in; <c>null</c>: the engine is off.</param>
    /// <param name="vehicleAmps">What the vehicle itself draws.</param>
    /// <returns>The voltage at each amplifier, or <c>null</c> where the supply cannot hold full output.</returns>
    public double[]? Solve(SourceState[] sources, double? chargedAmps, double vehicleAmps)
    {
        bool off = chargedAmps is null;
        int next = 0;
        foreach (Loads.AmplifierDraw draw in build.Draws) draws[next++] = draw.Full;
        foreach (int run in circuit.ChargerRuns)
            draws[next++] = new LoadDraw(LoadKind.ConstantPower, off ? 0 : build.Runs[run].Isolator!.InputWatts);
        foreach (int run in circuit.ChargerRuns)
            draws[next++] = new LoadDraw(LoadKind.ConstantCurrent, off ? 0 : -build.Runs[run].Isolator!.RatedAmps!.Value);
        draws[next++] = new LoadDraw(LoadKind.ConstantCurrent, -(chargedAmps ?? 0));
        draws[next] = new LoadDraw(LoadKind.ConstantCurrent, vehicleAmps);
        double[] ohms = Ohms(off);
        if (!Settle(ohms, sources, isConducting: true) && (diodes.Length == 0 || !Settle(ohms, sources, isConducting: false)))
            return null;
        double[] volts = [.. Enumerable.Range(0, build.Draws.Count).Select(solver.LoadVolts)];
        return volts.All(value => value > 0) ? volts : null;
    }

    /// <summary>What a battery or capacitor gave in the last solution, in amperes.</summary>
    public double SourceAmps(int source, SourceState state) => solver.SourceAmps(source, state);

    /// <summary>Solves, and opens and closes diodes until each conducts forwards or blocks.</summary>
    private bool Settle(double[] ohms, SourceState[] sources, bool isConducting)
    {
        if (diodes.Length == 0) return solver.Solve(ohms, sources, draws, held);
        bool[] conducts = [.. diodes.Select(_ => isConducting)];
        for (int round = 0; round <= 2 * diodes.Length; round++)
        {
            double[] states = [.. ohms];
            for (int i = 0; i < diodes.Length; i++) states[diodes[i]] = conducts[i] ? ohms[diodes[i]] : OpenOhms;
            if (!solver.Solve(states, sources, draws, held)) return false;
            bool[] next = [.. diodes.Select((branch, i) => Conducts(branch, states[branch], conducts[i]))];
            if (next.SequenceEqual(conducts)) return true;
            conducts = next;
        }

        return false;
    }

    /// <summary>A diode that carries nothing stays as it is: rounding says nothing of its direction.</summary>
    private bool Conducts(int branch, double ohms, bool didConduct) =>
        solver.BranchAmps(branch, ohms) * ohms > (didConduct ? -NoVolts : NoVolts);

    private double[] Ohms(bool isOff) => !isOff
        ? warmOhms
        : [.. warmOhms.Select((ohms, branch) =>
            branch < build.Runs.Count && build.Runs[branch].Isolator is not null ? OpenOhms : ohms)];
}
