using Cablewright.Engine.Numerics;
using Link = Cablewright.Engine.Network.NodeEquations.Link;

namespace Cablewright.Engine.Network;

/// <summary>The shape of a circuit in which short circuits are looked for, prepared once for whatever values it gets.</summary>
internal sealed class FaultNetwork
{
    private readonly NodeEquations shape;
    private readonly WorkMeter meter;

    /// <summary>Fixes the shape.</summary>
    /// <param name="nodeCount">How many nodes there are.</param>
    /// <param name="branches">The resistances.</param>
    /// <param name="sources">Where the sources stand.</param>
    /// <param name="held">Nodes held at 0 V; every node reaches one over branches or sources that give something.</param>
    /// <param name="meter">Counts the work.</param>
    public FaultNetwork(
        int nodeCount, IReadOnlyList<Branch> branches, IReadOnlyList<SourcePort> sources, IReadOnlyList<int> held,
        WorkMeter meter)
    {
        this.meter = meter;
        IEnumerable<(int, int)> joined = branches.Select(branch => (branch.From, branch.To))
            .Concat(sources.Select(source => (source.Positive, source.Negative)));
        shape = new NodeEquations(nodeCount, joined, held);
        Branches = [.. branches.Select(branch => shape.LinkOf(branch.From, branch.To))];
        Sources = [.. sources.Select(source => shape.LinkOf(source.Positive, source.Negative))];
    }

    /// <summary>Where each resistance stands in the equations.</summary>
    public IReadOnlyList<Link> Branches { get; }

    /// <summary>Where each source stands in them.</summary>
    public IReadOnlyList<Link> Sources { get; }

    /// <summary>Empty equations of this shape, whose elimination is counted.</summary>
    public NodeEquations Equations()
    {
        meter.Count(shape.CostOf(Branches.Count + Sources.Count));
        return shape.Another();
    }

    /// <summary>The responses to single currents in factored equations of this shape.</summary>
    public UnitResponse Responses(NodeEquations factored) => factored.Responses(meter);
}
