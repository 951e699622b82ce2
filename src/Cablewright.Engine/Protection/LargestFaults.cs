using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Network;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Protection;

/// <summary>The largest current of a short circuit at every place of the supply side.</summary>
/// <remarks>
/// Every battery full, with the least resistance it may have, and the alternator's rated current besides, through cold conductors
/// without joints and fuses, straight to the negative terminals.
/// </remarks>
internal sealed class LargestFaults
{
    private const double ColdCelsius = 20;

    /// <summary>A conductor that is not chosen yet: far less than a battery has, so that none lets more through.</summary>
    private const double OpenOhms = 1e-6;

    private readonly CircuitModel circuit;
    private readonly int back;
    private readonly FaultCircuit faults;

    private LargestFaults(BuildModel model, Func<int, double> ofRun)
    {
        CompleteBuild build = model.Build;
        circuit = model.Circuit;
        back = circuit.Batteries[build.ChargingBattery].Negative;
        double[] ohms = [.. Enumerable.Range(0, build.Runs.Count).Select(ofRun), .. circuit.FixedOhmsInFault];
        SourceState[] states = [.. build.Batteries.Select(battery => new SourceState(battery.FullVolts, battery.LeastOhms))];
        var injections = new double[states.Length];
        injections[build.ChargingBattery] = build.Supply.RatedAmps ?? build.Supply.HotAmps ?? 0;
        faults = new FaultCircuit(circuit.SupplyInFault, ohms, states, injections);
    }

    /// <summary>Of a design.</summary>
    public static LargestFaults Of(BuildModel model, Design design) =>
        new(model, run => Ohms(model.Build.Runs[run], design.Conductors[run].Conductor, design.Conductors[run].Count));

    /// <summary>Of a build whatever is chosen: as though what is open had no resistance.</summary>
    public static LargestFaults OfAny(BuildModel model) => new(model, run => model.Build.Runs[run] is { Given: { } given } stated
        ? Ohms(stated, given, stated.GivenCount ?? 1)
        : OpenOhms);

    /// <summary>The current at a node, in amperes.</summary>
    public double At(int node) => faults.Between(node, back, 0).Amps;

    private static double Ohms(CompleteRun run, Conductor conductor, int count) =>
        conductor.OhmsPerMetre(ColdCelsius) * run.LengthMetres / count;
}
