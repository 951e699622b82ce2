using Cablewright.Engine.Sizing;

namespace Cablewright.Engine.Protection;

/// <summary>The most current that fuses let through from the batteries to a node.</summary>
/// <remarks>
/// Method: maximum flow by augmenting along shortest ways (Edmonds and Karp) from the node to the batteries. A run lets through
/// the smallest of its own fuses, without limit where it has none. Currents have no direction to keep to, so a run's capacity
/// serves both ways. Since every augmentation fills a fuse, there are no more of them than fuses on the ways.
/// </remarks>
internal static class SupplyFlow
{
    /// <summary>Room that is left by rounding only.</summary>
    private const double Smallest = 1e-6;

    /// <summary>
    /// The flow into a node with one run taken away, in amperes; infinite where some way has no fuse, 0 where there is none.
    /// </summary>
    /// <param name="shape">The supply side.</param>
    /// <param name="decision">Where the fuses stand.</param>
    /// <param name="without">The run that is taken away, and the fused ones parallel to it.</param>
    /// <param name="node">The node.</param>
    /// <param name="visits">Counts the runs that were looked at.</param>
    public static double Into(SupplyShape shape, Decision decision, int without, int node, ref long visits)
    {
        var used = new Dictionary<int, double>();
        bool isFused = decision.Near[without] is not null || decision.Far[without] is not null;
        if (shape.BatteryNodes.Contains(node)) return double.PositiveInfinity;
        double flow = 0;
        while (WayToBattery(shape, node, Left, ref visits) is { } way)
        {
            double most = way.Min(step => Left(step.Run, step.From));
            if (double.IsInfinity(most)) return most;
            foreach ((int run, int from) in way)
                used[run] = used.GetValueOrDefault(run) + (from == shape.EndsOf(run).From ? most : -most);
            flow += most;
        }

        return flow;

        double Left(int run, int from)
        {
            if (run == without || (isFused && shape.AreParallel(run, without))) return 0;
            double capacity = Math.Min(Passing(decision.Near[run], run), Passing(decision.Far[run], run));
            double forward = used.GetValueOrDefault(run);
            return from == shape.EndsOf(run).From ? capacity - forward : capacity + forward;
        }

        double Passing(FittedFuse? fuse, int run) => fuse?.PassingAmps(decision.Conductors[run].Count) ?? double.PositiveInfinity;
    }

    /// <summary>
    /// The shortest way with room left from a node to a battery, as runs with the node at which each is entered.
    /// </summary>
    private static List<(int Run, int From)>? WayToBattery(
        SupplyShape shape, int start, Func<int, int, double> left, ref long visits)
    {
        var cameBy = new Dictionary<int, (int Run, int From)> { [start] = (-1, -1) };
        var waiting = new Queue<int>([start]);
        while (waiting.TryDequeue(out int node))
        {
            foreach (int run in shape.RunsAt(node))
            {
                visits++;
                int next = shape.EndsOf(run).From == node ? shape.EndsOf(run).To : shape.EndsOf(run).From;
                if (cameBy.ContainsKey(next) || !(left(run, node) > Smallest)) continue;
                cameBy.Add(next, (run, node));
                if (shape.BatteryNodes.Contains(next)) return Back(next, cameBy);
                waiting.Enqueue(next);
            }
        }

        return null;
    }

    private static List<(int Run, int From)> Back(int node, Dictionary<int, (int Run, int From)> cameBy)
    {
        var way = new List<(int Run, int From)>();
        while (cameBy[node].Run >= 0)
        {
            way.Add(cameBy[node]);
            node = cameBy[node].From;
        }

        return way;
    }
}
