using Cablewright.Engine.Builds;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Protection;

/// <summary>Which fuses guard which run, and what they let into it.</summary>
/// <remarks>
/// What can pass into a run at one of its ends is the most that can flow there from the batteries through fuses of limited
/// capacity, the run itself taken away: on a tree the smallest rating on the way, with several feeds the smallest sum that cuts
/// them all (maximum flow, minimum cut). A fused run beside others between the same two places is one of several parallel
/// conductors, and what comes back over the others does not count.
/// </remarks>
internal sealed class GuardMap
{
    private readonly SupplyShape shape;
    private readonly Decision decision;
    private readonly double[] entering;
    private FuseZones? zones;
    private SupplyFlow? flow;

    public GuardMap(SupplyShape shape, Decision decision)
    {
        this.shape = shape;
        this.decision = decision;
        entering = new double[2 * decision.Conductors.Length];
        Array.Fill(entering, double.NaN);
        if (shape.IsRadial) ReadOffOutwards();
    }

    private FuseZones Zones => zones ??= new FuseZones(shape, decision);

    /// <summary>Whether some battery can feed the run with no fuse between.</summary>
    public bool IsUnguarded(int run) => Zones.HasBattery(run);

    /// <summary>The runs whose fuses guard a run, in order.</summary>
    public IReadOnlyList<int> GuardsOf(int run) => Zones.GuardsOf(run) is [var only]
        ? [only.Run]
        : [.. Zones.GuardsOf(run).Select(guard => guard.Run).Distinct().Order()];

    /// <summary>The fuses that guard a run.</summary>
    public IReadOnlyList<Guard> For(int run) => Zones.GuardsOf(run);

    /// <summary>
    /// The current that can pass into a run at one of its ends before fuses open; 0 where nothing feeds it there, infinite where
    /// no fuse stands before it.
    /// </summary>
    public double EnteringAmps(RunEnd end)
    {
        if (double.IsNaN(entering[end.Index])) EnterAt(shape.NodeAt(end));
        return entering[end.Index];
    }

    /// <summary>Finds what can pass into every run at one of its nodes.</summary>
    private void EnterAt(int node)
    {
        double[] into = (flow ??= new SupplyFlow(shape, decision)).IntoWithoutEach(node);
        ReadOnlySpan<int> runs = shape.RunsAt(node);
        for (int i = 0; i < runs.Length; i++)
        {
            var end = new RunEnd(runs[i], shape.NodeAt(RunEnd.Far(runs[i])) == node);
            entering[end.Index] = Math.Min(into[i], Passing(end));
        }
    }

    /// <summary>Whether what enters a run at an end passes a fuse there for each of its parallel conductors.</summary>
    public bool IsGuardedPerConductor(RunEnd end) => decision.FuseAt(end) is { PerConductor: true };

    /// <summary>On a tree the flow is the smallest rating on the one way there is, read off on the way outwards.</summary>
    private void ReadOffOutwards()
    {
        var atNode = new double[shape.NodeCount];
        foreach (int battery in shape.BatteryNodes) atNode[battery] = double.PositiveInfinity;
        foreach (int run in shape.Outwards)
        {
            RunEnd fed = shape.FedEndOf(run);
            double enters = Math.Min(atNode[shape.NodeAt(fed)], Passing(fed));
            entering[fed.Index] = enters;
            entering[fed.Other.Index] = 0;
            atNode[shape.NodeAt(fed.Other)] = Math.Min(enters, Passing(fed.Other));
        }
    }

    private double Passing(RunEnd end) =>
        decision.FuseAt(end)?.PassingAmps(decision.Conductors[end.Run].Count) ?? double.PositiveInfinity;
}
