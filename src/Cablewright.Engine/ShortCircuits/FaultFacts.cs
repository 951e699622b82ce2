using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Network;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>All that the rules about short circuits and overloads look at.</summary>
internal sealed class FaultFacts
{
    private readonly FaultCurrents faults;
    private readonly Dictionary<int, double> largest = [];

    public FaultFacts(BuildModel model, DesignEvaluation evaluation)
    {
        Model = model;
        Evaluation = evaluation;
        faults = new FaultCurrents(model, evaluation.Design);
        Overload = new Overload(model.Build, evaluation);
        Fuses = [.. model.Topology.Outwards.SelectMany(RunEnd.Of).Where(end => evaluation.Design.FuseAt(end) is not null)
            .Select(DeviceAt)];
        Clearings = new Clearings(model, evaluation, faults).Worst();
    }

    /// <summary>The build and its model.</summary>
    public BuildModel Model { get; }

    /// <summary>The build.</summary>
    public CompleteBuild Build => Model.Build;

    /// <summary>The design, worked out.</summary>
    public DesignEvaluation Evaluation { get; }

    /// <summary>What overloads do.</summary>
    public Overload Overload { get; }

    /// <summary>Every fuse of the supply side, from the batteries outwards.</summary>
    public IReadOnlyList<ProtectiveDevice> Fuses { get; }

    /// <summary>The worst clearing of each protected supply run.</summary>
    public IReadOnlyList<Clearing> Clearings { get; }

    /// <summary>The largest fault current at each node that was asked for.</summary>
    public IReadOnlyDictionary<int, double> LargestAmps => largest;

    /// <summary>The largest fault current behind a fuse.</summary>
    public double LargestAmpsAt(RunEnd end)
    {
        int node = Model.Topology.NodeAt(end);
        return largest.TryGetValue(node, out double known) ? known : largest[node] = faults.LargestAt(node);
    }

    /// <summary>The smallest fault at an end of a run, fed by one battery alone.</summary>
    public FaultCircuit.Fault SmallestAt(RunEnd end, int battery) => faults.SmallestAt(Model.Topology.NodeAt(end), battery);

    private ProtectiveDevice DeviceAt(RunEnd end) =>
        new(end, Evaluation.Design.FuseAt(end)!, Evaluation.Design.TotalRatingAmpsAt(end));
}
