using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Network;

namespace Cablewright.Engine.Wiring;

/// <summary>
/// Finds the operating point of a build: currents heat the conductors, heat changes their resistance, that the currents.
/// </summary>
/// <remarks>
/// <para>Method: fixed point. A hot copper conductor has at most some 1.4 times its cold resistance and the drop is a small
/// part of the voltage, so each round brings the temperatures closer by a factor of ten or more.</para>
/// <para>Steps: (1) resistances at the present temperatures, to begin with those of the last operating point; (2) the circuit at
/// full output: peak currents; (3) the circuit with each load drawing its root-mean-square current: thermal currents; (4)
/// temperatures by the heat balance; (5) again until no temperature moves by more than 0.001 K.</para>
/// </remarks>
internal sealed class OperatingPointSolver
{
    private const double TemperatureTolerance = 0.001;
    private const int MostRounds = 40;

    /// <summary>The heat balance of a run, in runs solved.</summary>
    private const double CostOfHeat = 0.7;

    private readonly CompleteBuild build;
    private readonly CircuitModel circuit;
    private readonly double[] branchOhms;
    private readonly LoadDraw[] full;
    private readonly LoadDraw[] thermal;
    private readonly bool thermalIsPeak;
    private readonly double[] lastChange;
    private readonly double[] surroundings;
    private readonly double[] fullVolts;
    private readonly double[] thermalVolts;
    private double[] lastCelsius;

    public OperatingPointSolver(BuildModel model)
    {
        build = model.Build;
        circuit = model.Circuit;
        branchOhms = new double[circuit.Network.Branches.Count];
        for (int i = 0; i < circuit.FixedOhms.Count; i++) branchOhms[build.Runs.Count + i] = circuit.FixedOhms[i];
        full = new LoadDraw[circuit.Network.Loads.Count];
        thermal = new LoadDraw[full.Length];
        lastChange = new double[build.Runs.Count];
        surroundings = [.. build.Runs.Select(run => run.MeanAirCelsius)];
        lastCelsius = surroundings;
        fullVolts = new double[circuit.Network.NodeCount];
        thermalVolts = new double[fullVolts.Length];
        thermalIsPeak = build.Draws.All(draw => draw.ThermalShare >= 1);
    }

    /// <summary>Forgets the temperatures of what was solved before, so that what comes depends on nothing else.</summary>
    public void StartCold() => lastCelsius = surroundings;

    /// <summary>The operating point in one case.</summary>
    /// <param name="design">What the runs are made of.</param>
    /// <param name="operatingCase">The case.</param>
    /// <param name="outputShare">Every draw over its full draw; at 0 there is always a solution.</param>
    /// <returns>The operating point, or <c>null</c> where the voltage collapses.</returns>
    public OperatingPoint? Find(Design design, OperatingCase operatingCase, double outputShare)
    {
        for (int load = 0; load < full.Length; load++) full[load] = Scaled(FullDraw(load, operatingCase), outputShare);
        return Find(design, operatingCase) is { } point
            && (outputShare == 0 || point.LoadVolts.All(volts => volts > 0)) ? point : null;
    }

    /// <summary>
    /// The currents with every load drawing, at any voltage, what it draws where so much is lost of its source's voltage. They
    /// always exist, and they say where to begin.
    /// </summary>
    /// <param name="design">What the runs are made of.</param>
    /// <param name="lostVolts">What is lost on the way to each amplifier and back.</param>
    public OperatingEnvelope Estimate(Design design, double[] lostVolts)
    {
        for (int load = 0; load < full.Length; load++)
            full[load] = new LoadDraw(LoadKind.ConstantCurrent, CircuitSolver.Amps(
                FullDraw(load, OperatingCase.Running), SourceVoltsOf(load) - (load < lostVolts.Length ? lostVolts[load] : 0)));
        return new OperatingEnvelope([Find(design, OperatingCase.Running)!], lastsAtLowest: false);
    }

    /// <summary>
    /// How a current drawn by one amplifier alone divides among the runs: amperes for each ampere, from start to end.
    /// </summary>
    /// <param name="amplifier">The amplifier.</param>
    /// <param name="point">The operating point whose resistances count.</param>
    public double[] Division(int amplifier, OperatingPoint point)
    {
        point.Ohms.CopyTo(branchOhms, 0);
        SourceState[] silent = [.. circuit.SourcesIn(point.Case).Select(source => source with { Volts = 0 })];
        var amps = new double[build.Runs.Count];
        SolveUnit(amplifier, silent, amps);
        if (!circuit.Network.Branches.Any(branch => branch.FallVolts != 0)) return amps;
        var falls = new double[amps.Length];
        SolveUnit(-1, silent, falls);
        for (int run = 0; run < amps.Length; run++) amps[run] -= falls[run];
        return amps;
    }

    /// <summary>
    /// What an amplifier loses in the conductors of supply and return alone, in volts: fuses, joints, the body and the vehicle's
    /// own straps left out.
    /// </summary>
    /// <remarks>
    /// By Tellegen's theorem the whole loss is the sum over the branches of the voltage on each times the current that an ampere
    /// drawn by the amplifier alone sends through it; of that sum the conductors' part.
    /// </remarks>
    /// <param name="amplifier">The amplifier.</param>
    /// <param name="design">What the runs are made of.</param>
    /// <param name="point">The operating point.</param>
    /// <param name="isGivenAlone">Whether only what is given counts, and nothing that is chosen.</param>
    public double ConductorVolts(int amplifier, Design design, OperatingPoint point, bool isGivenAlone = false)
    {
        double[] division = Division(amplifier, point);
        double volts = 0;
        for (int run = 0; run < division.Length; run++)
        {
            if (circuit.IsStrap(run) || (isGivenAlone && build.Runs[run].Given is null)) continue;
            double ohms = point.Ohms[run] - build.Runs[run].SeriesOhms - design.FuseOhms(run);
            volts += division[run] * point.PeakAmps[run] * ohms;
        }

        return Math.Max(0, volts);
    }

    private void SolveUnit(int amplifier, SourceState[] silent, double[] amps)
    {
        for (int load = 0; load < thermal.Length; load++)
            thermal[load] = new LoadDraw(LoadKind.ConstantCurrent, load == amplifier ? 1 : 0);
        circuit.Solver.Solve(branchOhms, silent, thermal, new double[circuit.Network.FixedPotentialNodes.Count]);
        ReadRuns(amps);
    }

    /// <summary>What a load draws at full output; those after the amplifiers always draw that.</summary>
    private LoadDraw FullDraw(int load, OperatingCase operatingCase) =>
        load < build.Draws.Count ? build.Draws[load].Full : circuit.OthersIn(operatingCase)[load - build.Draws.Count];

    private double SourceVoltsOf(int load) => load < build.Draws.Count ? circuit.SourceVoltsOf(load) : build.ChargingVolts;

    private double ThermalShare(int load) => load < build.Draws.Count ? build.Draws[load].ThermalShare : 1;

    private OperatingPoint? Find(Design design, OperatingCase operatingCase)
    {
        int runs = build.Runs.Count;
        double[] celsius = [.. lastCelsius];
        var peak = new double[runs];
        var rms = new double[runs];
        var loadVolts = new double[full.Length];
        var loadAmps = new double[full.Length];
        SourceState[] sources = circuit.SourcesIn(operatingCase);
        double[] held = circuit.FixedVoltsIn(operatingCase);

        double bodyVolts = 0;
        Array.Clear(lastChange);
        for (int round = 0; round < MostRounds; round++)
        {
            build.Meter.Count(CostOfHeat * runs);
            for (int run = 0; run < runs; run++) branchOhms[run] = Ohms(design, run, celsius[run]);
            if (!circuit.Solver.Solve(branchOhms, sources, full, held, NearVolts(fullVolts, round))) return null;
            circuit.Solver.NodeVolts.CopyTo(fullVolts);
            ReadRuns(peak);
            ReadLoads(loadVolts, loadAmps);
            bodyVolts = circuit.BodyNode < 0 ? 0 : Math.Abs(circuit.Solver.NodeVolts[circuit.BodyNode]);
            if (thermalIsPeak) peak.CopyTo(rms, 0);
            else if (SolveThermal(loadAmps, sources, held, round)) ReadRuns(rms);
            else return null;
            if (Warm(design, rms, celsius) <= TemperatureTolerance) break;
        }

        lastCelsius = celsius;
        Range amplifiers = ..build.Draws.Count;
        return new OperatingPoint(
            operatingCase, peak, rms, InHottestPart(celsius), branchOhms[..runs], loadVolts[amplifiers], loadAmps[amplifiers],
            [.. loadAmps[amplifiers].Select((amps, load) => amps * ThermalShare(load))],
            bodyVolts,
            [.. build.Body.AssumedStraps.Select((_, strap) =>
                Math.Abs(circuit.Solver.BranchAmps(runs + strap, branchOhms[runs + strap])))]);
    }

    /// <summary>A conductor is warmer than its air by nearly the same all along.</summary>
    private double[] InHottestPart(double[] celsius) =>
        [.. celsius.Select((each, run) => each + build.Runs[run].AirCelsius - build.Runs[run].MeanAirCelsius)];

    private static LoadDraw Scaled(LoadDraw draw, double share) => draw with
    {
        Magnitude = draw.Kind is LoadKind.ConstantResistance ? draw.Magnitude / share : draw.Magnitude * share,
    };

    private double Ohms(Design design, int run, double celsius)
    {
        ConductorChoice choice = design.Conductors[run];
        double conductor = choice.Conductor.OhmsPerMetre(celsius) * build.Runs[run].LengthMetres / choice.Count;
        return conductor + build.Runs[run].SeriesOhms + design.FuseOhms(run);
    }

    private bool SolveThermal(double[] loadAmps, SourceState[] sources, double[] held, int round)
    {
        for (int load = 0; load < thermal.Length; load++)
            thermal[load] = new LoadDraw(LoadKind.ConstantCurrent, loadAmps[load] * ThermalShare(load));
        if (!circuit.Solver.Solve(branchOhms, sources, thermal, held, NearVolts(thermalVolts, round))) return false;
        circuit.Solver.NodeVolts.CopyTo(thermalVolts);
        return true;
    }

    /// <summary>After the first round little changes.</summary>
    private static ReadOnlySpan<double> NearVolts(double[] volts, int round) => round > 0 ? volts : default;

    private void ReadRuns(double[] amps)
    {
        for (int run = 0; run < amps.Length; run++) amps[run] = circuit.Solver.BranchAmps(run, branchOhms[run]);
    }

    private void ReadLoads(double[] volts, double[] amps)
    {
        for (int load = 0; load < volts.Length; load++)
        {
            volts[load] = circuit.Solver.LoadVolts(load);
            amps[load] = CircuitSolver.Amps(full[load], volts[load]);
        }
    }

    /// <summary>
    /// Moves the temperatures towards those that the currents lead to. In a loop a run that warms sheds current to the others and
    /// may swing: half a step where it turns round makes it settle.
    /// </summary>
    /// <returns>The largest difference, in kelvin.</returns>
    private double Warm(Design design, double[] rms, double[] celsius)
    {
        double largest = 0;
        for (int run = 0; run < rms.Length; run++)
        {
            ConductorChoice choice = design.Conductors[run];
            CompleteRun described = build.Runs[run];
            double amps = Math.Abs(rms[run]) / choice.Count / described.Bundling;
            double change =
                HeatBalance.Of(choice.Conductor).TemperatureAt(amps, described.MeanAirCelsius, celsius[run]) - celsius[run];
            largest = Math.Max(largest, Math.Abs(change));
            if (change * lastChange[run] < 0) change /= 2;
            lastChange[run] = change;
            celsius[run] += change;
        }

        return largest;
    }
}
