using Cablewright.Engine.Sizing;

namespace Cablewright.Engine.Protection;

/// <summary>Which fuses guard which run, and what they let into it.</summary>
/// <remarks>
/// <para>Method: take the nodes of the supply side and the bodies of its runs, and join each body to the node at its end
/// unless a fuse stands between them. What is joined is a zone. A zone with a battery in it is not guarded; a fuse at a zone's
/// edge guards it if a battery can be reached beyond it without coming back through the zone.</para>
/// <para>What can pass into a run at one of its ends is the most that can flow there from the batteries through fuses of limited
/// capacity, the run itself taken away: on a tree the smallest rating on the way, with several feeds the smallest sum that cuts
/// them all (maximum flow, minimum cut). A fused run beside others between the same two places is one of several parallel
/// conductors, and what comes back over the others does not count.</para>
/// </remarks>
internal sealed class GuardMap
{
    private readonly SupplyShape shape;
    private readonly Decision decision;
    private readonly DisjointSets zones;
    private readonly HashSet<int> batteryZones;
    private readonly Dictionary<int, List<Edge>> edgesOf = [];
    private readonly Dictionary<int, List<Edge>> guardsOf = [];
    private readonly Dictionary<(int Run, bool Far), double> entering;
    private long visits;

    public GuardMap(SupplyShape shape, Decision decision)
    {
        this.shape = shape;
        this.decision = decision;
        zones = new DisjointSets(shape.NodeCount + decision.Conductors.Length);
        foreach (int run in shape.Outwards)
        {
            if (decision.Near[run] is null) zones.Join(Body(run), shape.NodeAt(run, far: false));
            if (decision.Far[run] is null) zones.Join(Body(run), shape.NodeAt(run, far: true));
        }

        batteryZones = [.. shape.BatteryNodes.Select(zones.SetOf)];
        foreach (int run in shape.Outwards)
        {
            AddEdge(run, decision.Near[run], far: false);
            AddEdge(run, decision.Far[run], far: true);
        }

        foreach ((int zone, List<Edge> edges) in edgesOf)
        {
            List<Edge> guards = edges.FindAll(edge => ReachesBattery(edge.Beyond(zone), zone));
            if (guards.Count > 0) guardsOf.Add(zone, guards);
        }

        entering = shape.IsRadial ? ReadOffOutwards() : [];
    }

    /// <summary>How many runs were looked at to find what enters where.</summary>
    public long Visits => visits;

    /// <summary>Whether some battery can feed the run with no fuse between.</summary>
    public bool IsUnguarded(int run) => batteryZones.Contains(zones.SetOf(Body(run)));

    /// <summary>The runs whose fuses guard a run, in order.</summary>
    public IEnumerable<int> GuardsOf(int run) => Guards(run).Select(edge => edge.Run).Distinct().Order();

    /// <summary>The fuses that guard a run.</summary>
    public IEnumerable<Guard> For(int run) =>
        Guards(run).Select(edge => new Guard(edge.Run, edge.IsFar, edge.Fuse, edge.PassingAmps));

    /// <summary>
    /// The current that can pass into a run at one of its ends before fuses open; 0 where nothing feeds it there, infinite where
    /// no fuse stands before it.
    /// </summary>
    public double EnteringAmps(int run, bool far)
    {
        if (!entering.TryGetValue((run, far), out double amps))
        {
            double before = SupplyFlow.Into(shape, decision, run, shape.NodeAt(run, far), ref visits);
            amps = Math.Min(before, Passing(run, far));
            entering.Add((run, far), amps);
        }

        return amps;
    }

    /// <summary>Whether what enters a run at an end passes a fuse there for each of its parallel conductors.</summary>
    public bool IsGuardedPerConductor(int run, bool far) => Own(run, far) is { PerConductor: true };

    /// <summary>On a tree the flow is the smallest rating on the one way there is, read off on the way outwards.</summary>
    private Dictionary<(int Run, bool Far), double> ReadOffOutwards()
    {
        var amps = new Dictionary<(int, bool), double>(2 * shape.Outwards.Count);
        var atNode = new double[shape.NodeCount];
        foreach (int battery in shape.BatteryNodes) atNode[battery] = double.PositiveInfinity;
        foreach (int run in shape.Outwards)
        {
            bool fed = shape.IsFedAtFarEnd(run);
            double enters = Math.Min(atNode[shape.NodeAt(run, fed)], Passing(run, fed));
            amps[(run, fed)] = enters;
            amps[(run, !fed)] = 0;
            atNode[shape.NodeAt(run, !fed)] = Math.Min(enters, Passing(run, !fed));
        }

        return amps;
    }

    private double Passing(int run, bool far) =>
        Own(run, far)?.PassingAmps(decision.Conductors[run].Count) ?? double.PositiveInfinity;

    private FittedFuse? Own(int run, bool far) => far ? decision.Far[run] : decision.Near[run];

    private List<Edge> Guards(int run) => guardsOf.GetValueOrDefault(zones.SetOf(Body(run))) ?? [];

    private int Body(int run) => shape.NodeCount + run;

    private void AddEdge(int run, FittedFuse? fuse, bool far)
    {
        if (fuse is null) return;
        int body = zones.SetOf(Body(run)), node = zones.SetOf(shape.NodeAt(run, far));
        if (body == node) return;
        var edge = new Edge(run, far, fuse, fuse.PassingAmps(decision.Conductors[run].Count), body, node);
        EdgesOf(body).Add(edge);
        EdgesOf(node).Add(edge);
    }

    private List<Edge> EdgesOf(int zone)
    {
        if (!edgesOf.TryGetValue(zone, out List<Edge>? edges)) edgesOf.Add(zone, edges = []);
        return edges;
    }

    private bool ReachesBattery(int start, int closed)
    {
        if (batteryZones.Contains(start)) return true;
        if (edgesOf[start].Count == 1) return false;
        var seen = new HashSet<int> { closed };
        var waiting = new Stack<int>([start]);
        while (waiting.TryPop(out int zone))
        {
            if (!seen.Add(zone)) continue;
            if (batteryZones.Contains(zone)) return true;
            foreach (Edge edge in edgesOf[zone]) waiting.Push(edge.Beyond(zone));
        }

        return false;
    }

    private sealed record Edge(int Run, bool IsFar, FittedFuse Fuse, double PassingAmps, int BodyZone, int NodeZone)
    {
        public int Beyond(int zone) => zone == BodyZone ? NodeZone : BodyZone;
    }
}
