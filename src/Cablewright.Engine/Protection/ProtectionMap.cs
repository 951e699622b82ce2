using Cablewright.Engine.Builds;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Protection;

/// <summary>Which fuses protect which run, and what they let into it.</summary>
/// <remarks>
/// What can pass into a run at one of its ends is the most that can flow there from the batteries through fuses of limited
/// capacity, the run itself taken away: on a tree the smallest rating on the way, with several feeds the smallest sum that cuts
/// them all (maximum flow, minimum cut). A fused run beside others between the same two places is one of several parallel
/// conductors, and what comes back over the others does not count.
/// </remarks>
internal sealed class ProtectionMap
{
    private readonly SupplyTopology topology;
    private readonly Design design;
    private readonly double[] entering;
    private FuseZones? zones;
    private SupplyFlow? flow;

    public ProtectionMap(SupplyTopology topology, Design design)
    {
        this.topology = topology;
        this.design = design;
        entering = new double[2 * design.Conductors.Length];
        Array.Fill(entering, double.NaN);
        if (topology.IsRadial) ReadOffOutwards();
    }

    private FuseZones Zones => zones ??= new FuseZones(topology, design);

    /// <summary>Whether some battery can feed the run with no fuse between.</summary>
    public bool IsUnprotected(int run) => Zones.HasBattery(run);

    /// <summary>The runs whose fuses protect a run, in order.</summary>
    public IReadOnlyList<int> RunsProtecting(int run) => Zones.DevicesOf(run) is [var only]
        ? [only.Run]
        : [.. Zones.DevicesOf(run).Select(device => device.Run).Distinct().Order()];

    /// <summary>The fuses that protect a run.</summary>
    public IReadOnlyList<ProtectiveDevice> For(int run) => Zones.DevicesOf(run);

    /// <summary>
    /// The current that can pass into a run at one of its ends before fuses open; 0 where nothing feeds it there, infinite where
    /// no fuse stands before it.
    /// </summary>
    public double EnteringAmps(RunEnd end)
    {
        if (double.IsNaN(entering[end.Index])) EnterAt(topology.NodeAt(end));
        return entering[end.Index];
    }

    /// <summary>Finds what can pass into every run at one of its nodes.</summary>
    private void EnterAt(int node)
    {
        double[] into = (flow ??= new SupplyFlow(topology, design)).IntoWithoutEach(node);
        ReadOnlySpan<int> runs = topology.RunsAt(node);
        for (int i = 0; i < runs.Length; i++)
        {
            var end = new RunEnd(runs[i], topology.NodeAt(RunEnd.Far(runs[i])) == node);
            entering[end.Index] = Math.Min(into[i], design.TotalRatingAmpsAt(end));
        }
    }

    /// <summary>Whether what enters a run at an end passes a fuse there for each of its parallel conductors.</summary>
    public bool IsProtectedPerConductor(RunEnd end) => design.FuseAt(end) is { PerConductor: true };

    /// <summary>On a tree the flow is the smallest rating on the one way there is, read off on the way outwards.</summary>
    private void ReadOffOutwards()
    {
        var atNode = new double[topology.NodeCount];
        foreach (int battery in topology.BatteryNodes) atNode[battery] = double.PositiveInfinity;
        foreach (int run in topology.Outwards)
        {
            RunEnd fed = topology.FedEndOf(run);
            double enters = Math.Min(atNode[topology.NodeAt(fed)], design.TotalRatingAmpsAt(fed));
            entering[fed.Index] = enters;
            entering[fed.Other.Index] = 0;
            atNode[topology.NodeAt(fed.Other)] = Math.Min(enters, design.TotalRatingAmpsAt(fed.Other));
        }
    }
}
