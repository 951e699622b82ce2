using Cablewright.Engine.Sizing;

namespace Cablewright.Engine.Protection;

/// <summary>Which fuses guard which run.</summary>
/// <remarks>
/// <para>Method: take the nodes of the supply side and the bodies of its runs, and join each body to the node at its end
/// unless a fuse stands between them. What is joined is a zone. A zone with a battery in it is not guarded; a fuse at a zone's
/// edge guards it if a battery can be reached beyond it without coming back through the zone.</para>
/// <para>What can pass into a run at one of its ends is the sum of the guards from which that end can be reached without
/// crossing the run; a fused run beside others between the same two places is one of several parallel conductors, and what comes
/// back over the others does not count. What the run must bear is the larger of its two ends: two fuses at the two ends of a run between two
/// batteries do not add up, two feeds into one block do for what leaves the block.</para>
/// </remarks>
internal sealed class GuardMap
{
    private readonly SupplyShape shape;
    private readonly Decision decision;
    private readonly DisjointSets zones;
    private readonly HashSet<int> batteryZones;
    private readonly Dictionary<int, List<Edge>> edgesOf = [];
    private readonly Dictionary<int, List<Edge>> guardsOf = [];

    public GuardMap(SupplyShape shape, Decision decision)
    {
        this.shape = shape;
        this.decision = decision;
        zones = JoinUnfused(without: -1);
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
    }

    /// <summary>Whether some battery can feed the run with no fuse between.</summary>
    public bool IsUnguarded(int run) => batteryZones.Contains(zones.SetOf(Body(run)));

    /// <summary>The runs whose fuses guard a run, in order.</summary>
    public IEnumerable<int> GuardsOf(int run) => Guards(run).Select(edge => edge.Run).Distinct().Order();

    /// <summary>The fuses that guard a run.</summary>
    public IEnumerable<Guard> For(int run) => Guards(run).Select(edge => new Guard(edge.Run, edge.IsFar, edge.Fuse, edge.PassingAmps));

    /// <summary>The current that can pass into a run before its guards open; 0 where it has none.</summary>
    public double PassingAmps(int run)
    {
        List<Edge> guards = Guards(run);
        if (guards.Count <= 1) return guards.Count == 0 ? 0 : guards[0].PassingAmps;
        DisjointSets without = JoinUnfused(run);
        return Math.Max(Entering(run, far: false, guards, without), Entering(run, far: true, guards, without));
    }

    /// <summary>Whether every guard of a run stands on the run itself, one for each of its parallel conductors.</summary>
    public bool IsGuardedPerConductor(int run) =>
        Guards(run) is { Count: > 0 } guards && guards.TrueForAll(edge => edge.Run == run && edge.Fuse.PerConductor);

    private double Entering(int run, bool far, List<Edge> guards, DisjointSets without)
    {
        FittedFuse? own = far ? decision.Far[run] : decision.Near[run];
        if (own is not null) return guards.Where(edge => edge.Run == run && edge.IsFar == far).Sum(edge => edge.PassingAmps);
        int set = without.SetOf(shape.NodeAt(run, far));
        bool isFused = decision.Near[run] is not null || decision.Far[run] is not null;
        return guards
            .Where(edge => edge.Run != run && !(isFused && shape.AreParallel(edge.Run, run)) && (without.SetOf(Body(edge.Run)) == set || without.SetOf(shape.NodeAt(edge.Run, edge.IsFar)) == set))
            .Sum(edge => edge.PassingAmps);
    }

    private List<Edge> Guards(int run) => guardsOf.GetValueOrDefault(zones.SetOf(Body(run))) ?? [];

    private int Body(int run) => shape.NodeCount + run;

    private DisjointSets JoinUnfused(int without)
    {
        var sets = new DisjointSets(shape.NodeCount + decision.Conductors.Length);
        foreach (int run in shape.Outwards)
        {
            if (run == without) continue;
            if (decision.Near[run] is null) sets.Join(Body(run), shape.NodeAt(run, far: false));
            if (decision.Far[run] is null) sets.Join(Body(run), shape.NodeAt(run, far: true));
        }

        return sets;
    }

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
