using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Protection;

/// <summary>What of the supply side is joined without a fuse between, and which fuses stand around it.</summary>
/// <remarks>
/// Method: take the nodes of the supply side and the bodies of its runs, and join each body to the node at its end unless a
/// fuse stands between them. What is joined is a zone. A zone with a battery in it is not guarded; a fuse at a zone's edge
/// guards it if a battery can be reached beyond it without coming back through the zone.
/// </remarks>
internal sealed class FuseZones
{
    /// <summary>Looking beyond a fuse, in runs solved.</summary>
    private const double CostOfEdge = 0.1;

    private readonly SupplyShape shape;
    private readonly DisjointSets zones;
    private readonly bool[] hasBattery;
    private readonly List<Edge>?[] edges;
    private readonly Guard[]?[] guards;

    public FuseZones(SupplyShape shape, Decision decision)
    {
        this.shape = shape;
        int count = shape.NodeCount + decision.Conductors.Length;
        zones = new DisjointSets(count);
        hasBattery = new bool[count];
        edges = new List<Edge>?[count];
        guards = new Guard[]?[count];
        foreach (int run in shape.Outwards)
        {
            foreach (RunEnd end in RunEnd.Of(run).Where(end => decision.FuseAt(end) is null)) zones.Join(Body(run), shape.NodeAt(end));
        }

        foreach (int battery in shape.BatteryNodes) hasBattery[zones.SetOf(battery)] = true;
        foreach (RunEnd end in shape.Outwards.SelectMany(RunEnd.Of)) AddEdge(end, decision);
    }

    /// <summary>Whether a battery stands in a run's zone.</summary>
    public bool HasBattery(int run) => hasBattery[zones.SetOf(Body(run))];

    /// <summary>The fuses that guard a run's zone.</summary>
    public IReadOnlyList<Guard> GuardsOf(int run)
    {
        int zone = zones.SetOf(Body(run));
        return guards[zone] ??= edges[zone] is { } around
            ? [.. around.Where(edge => ReachesBattery(edge.Beyond(zone), zone)).Select(edge => edge.Guard)]
            : [];
    }

    private int Body(int run) => shape.NodeCount + run;

    private void AddEdge(RunEnd end, Decision decision)
    {
        if (decision.FuseAt(end) is not { } fuse) return;
        int body = zones.SetOf(Body(end.Run)), node = zones.SetOf(shape.NodeAt(end));
        if (body == node) return;
        var edge = new Edge(new Guard(end, fuse, fuse.PassingAmps(decision.Conductors[end.Run].Count)), body, node);
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
            shape.Meter.Count(CostOfEdge * edges[zone]!.Count);
            foreach (Edge edge in edges[zone]!) waiting.Push(edge.Beyond(zone));
        }

        return false;
    }

    private readonly record struct Edge(Guard Guard, int BodyZone, int NodeZone)
    {
        public int Beyond(int zone) => zone == BodyZone ? NodeZone : BodyZone;
    }
}
