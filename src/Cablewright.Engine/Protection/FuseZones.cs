using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Protection;

/// <summary>What of the supply side is joined without a fuse between, and which fuses stand around it.</summary>
/// <remarks>
/// Method: take the nodes of the supply side and the bodies of its runs, and join each body to the node at its end unless a
/// fuse stands between them. What is joined is a zone. A zone with a battery in it is not protected; a fuse at a zone's edge
/// protects it if a battery can be reached beyond it without coming back through the zone.
/// </remarks>
internal sealed class FuseZones
{
    /// <summary>Looking beyond a fuse, in runs solved.</summary>
    private const double CostOfEdge = 0.1;

    private readonly SupplyTopology topology;
    private readonly DisjointSets zones;
    private readonly bool[] hasBattery;
    private readonly List<Edge>?[] edges;
    private readonly ProtectiveDevice[]?[] devices;

    public FuseZones(SupplyTopology topology, Design design)
    {
        this.topology = topology;
        int count = topology.NodeCount + design.Conductors.Length;
        zones = new DisjointSets(count);
        hasBattery = new bool[count];
        edges = new List<Edge>?[count];
        devices = new ProtectiveDevice[]?[count];
        foreach (int run in topology.Outwards)
        {
            foreach (RunEnd end in RunEnd.Of(run))
            {
                if (design.FuseAt(end) is null) zones.Join(Body(run), topology.NodeAt(end));
            }
        }

        foreach (int battery in topology.BatteryNodes) hasBattery[zones.SetOf(battery)] = true;
        foreach (RunEnd end in topology.Outwards.SelectMany(RunEnd.Of)) AddEdge(end, design);
    }

    /// <summary>Whether a battery stands in a run's zone.</summary>
    public bool HasBattery(int run) => hasBattery[zones.SetOf(Body(run))];

    /// <summary>The fuses that protect a run's zone.</summary>
    public IReadOnlyList<ProtectiveDevice> DevicesOf(int run)
    {
        int zone = zones.SetOf(Body(run));
        return devices[zone] ??= edges[zone] is { } around
            ? [.. around.Where(edge => ReachesBattery(edge.Beyond(zone), zone)).Select(edge => edge.Device)]
            : [];
    }

    private int Body(int run) => topology.NodeCount + run;

    private void AddEdge(RunEnd end, Design design)
    {
        if (design.FuseAt(end) is not { } fuse) return;
        int body = zones.SetOf(Body(end.Run)), node = zones.SetOf(topology.NodeAt(end));
        if (body == node) return;
        var edge = new Edge(new ProtectiveDevice(end, fuse, design.TotalRatingAmpsAt(end)), body, node);
        (edges[body] ??= []).Add(edge);
        (edges[node] ??= []).Add(edge);
    }

    private bool ReachesBattery(int start, int closed)
    {
        if (hasBattery[start]) return true;
        if (edges[start]!.Count == 1) return false;
        var seen = new HashSet<int> { closed };
        var waiting = new Stack<int>([start]);
        while (waiting.TryPop(out int zone))
        {
            if (!seen.Add(zone)) continue;
            if (hasBattery[zone]) return true;
            topology.Meter.Count(CostOfEdge * edges[zone]!.Count);
            foreach (Edge edge in edges[zone]!) waiting.Push(edge.Beyond(zone));
        }

        return false;
    }

    private readonly record struct Edge(ProtectiveDevice Device, int BodyZone, int NodeZone)
    {
        public int Beyond(int zone) => zone == BodyZone ? NodeZone : BodyZone;
    }
}
