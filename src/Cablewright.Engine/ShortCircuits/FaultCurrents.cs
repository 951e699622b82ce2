using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>The largest and the smallest current of a short circuit at every place of the supply side.</summary>
/// <remarks>
/// <para>Largest: <see cref="LargestFaults"/>.</para>
/// <para>Smallest: one battery alone at its lowest working voltage with the most resistance it may have, no alternator, through
/// conductors as hot as their insulation allows, with joints and fuses, and back over the body, at its most too, and the
/// battery's strap, or, inside an amplifier, over its own return where that lets less through.</para>
/// </remarks>
internal sealed class FaultCurrents
{
    /// <summary>
    /// A battery that gives nothing: far more than any resistance of the circuit, so that no node is left without a path.
    /// </summary>
    private const double SilentOhms = 1e9;

    private readonly CompleteBuild build;
    private readonly CircuitModel circuit;
    private readonly Design design;
    private readonly LargestFaults largest;
    private readonly FaultCircuit[] smallest;
    private readonly double returnOhms;
    private readonly Dictionary<int, int> ownReturn;

    public FaultCurrents(BuildModel model, Design design)
    {
        build = model.Build;
        circuit = model.Circuit;
        this.design = design;
        returnOhms = circuit.BodyNode >= 0 ? 0 : build.MostBodyOhms + build.Ruleset.Supply.StrapResistance.Value;
        ownReturn = circuit.Network.Loads.Take(build.Draws.Count).DistinctBy(load => load.Positive)
            .ToDictionary(load => load.Positive, load => load.Negative);
        largest = LargestFaults.Of(model, design);
        smallest = [.. Enumerable.Range(0, build.Batteries.Count).Select(Alone)];
    }

    /// <summary>The largest fault current at a node of the supply side, in amperes.</summary>
    public double LargestAt(int node) => largest.At(node);

    /// <summary>The fault at a node fed by one battery alone.</summary>
    public FaultCircuit.Fault SmallestAt(int node, int battery)
    {
        int back = circuit.BodyNode >= 0 ? circuit.BodyNode : circuit.Batteries[battery].Negative;
        FaultCircuit.Fault overBody = smallest[battery].Between(node, back, returnOhms);
        if (!ownReturn.TryGetValue(node, out int own) || own == back) return overBody;
        FaultCircuit.Fault inside = smallest[battery].Between(node, own, 0);
        return inside.Amps < overBody.Amps ? inside : overBody;
    }

    private FaultCircuit Alone(int battery)
    {
        double[] ohms = BranchOhms(
            run => Conductors(run, build.Runs[run].InsulationCelsius)
                + build.Runs[run].JointOhms + (build.Runs[run].Isolator?.FaultOhms ?? 0)
                + design.FuseOhms(run));
        SourceState[] states = [.. build.Batteries.Select((each, index) => index == battery
            ? new SourceState(build.LowestSupplyVolts, each.MostOhms)
            : new SourceState(0, SilentOhms))];
        return new FaultCircuit(circuit.WholeInFault, ohms, states, new double[states.Length]);
    }

    private double Conductors(int run, double celsius) =>
        design.Conductors[run].Conductor.OhmsPerMetre(celsius) * build.Runs[run].LengthMetres / design.Conductors[run].Count;

    private double[] BranchOhms(Func<int, double> ofRun) =>
        [.. Enumerable.Range(0, build.Runs.Count).Select(ofRun), .. circuit.FixedOhmsInFault];
}
