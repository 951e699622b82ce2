using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Properties;
using Cablewright.Engine.Tests.Published;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using CsCheck;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Protection;

/// <summary>
/// What fuses let through to a place: on a tree the smallest rating on the way, else the smallest sum that cuts it off (Ford and
/// Fulkerson 1956).
/// </summary>
public class SupplyFlowTests
{
    private static readonly string[] Places = ["starter", "rear", "p0", "p1", "p2", "p3"];

    private static readonly Gen<FuseWish> AnyFuse =
        Gen.Select(Gen.Int[0, 3], Gen.Int[1, 20], (kind, tens) => kind == 0 ? NoFuse : Anl(10 * tens));

    private static readonly Gen<Run> AnyRun =
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 5], AnyFuse, AnyFuse, Gen.Int[1, 2], Gen.Bool, (from, to, near, far, count, each) =>
    {
        Run run = Run("", Places[from], Places[to], 1, "4 AWG");
        return run with
        {
            Side = Side.Supply,
            Fuse = near with { PerConductor = each },
            FarFuse = far with { PerConductor = each },
            Conductor = run.Conductor with { Count = count },
        };
    });

    private static readonly Gen<Build> AnyNetwork = AnyRun.Array[2, 8].Select(Of);

    /// <summary>Every cut is tried: all ways to part the places into those with the batteries and those with the node.</summary>
    [Fact]
    public void It_is_the_smallest_cut() => Gen.Select(AnyNetwork, Gen.Int[0, 5]).Sample((build, place) =>
    {
        (SupplyTopology topology, Design design, int[] nodes) = ShapeOf(build);
        int node = nodes[place];
        if (node < 0) return;
        double[] flows = new SupplyFlow(topology, design).IntoWithoutEach(node);
        for (int i = 0; i < flows.Length; i++)
        {
            int without = topology.RunsAt(node)[i];
            if (without >= build.Runs.Count - 2) continue;
            double cut = SmallestCut(build, topology, design, without, node, nodes);
            if (double.IsInfinity(cut)) Assert.Equal(cut, flows[i]);
            else Near.Absolute(cut, flows[i], 1e-4, "flow, A");
        }
    }, iter: 10_000);

    [Fact]
    public void On_a_tree_it_is_the_smallest_rating_on_the_way() =>
        Gen.Select(AnyFuse.Array[10], Gen.Int[0, 4].Array[5]).Sample((fuses, parents) =>
    {
        string[] places = ["starter", "p0", "p1", "p2", "p3", "p4"];
        int[] parent = [.. parents.Select((pick, i) => pick % (i + 1))];
        Run[] runs = [.. parent.Select((from, i) => Run("", places[from], places[i + 1], 1, "4 AWG") with { Side = Side.Supply,
            Fuse = fuses[2 * i], FarFuse = fuses[2 * i + 1] })];
        (SupplyTopology topology, Design design, _) = ShapeOf(Of(runs));
        Assert.True(topology.IsRadial);
        var protection = new ProtectionMap(topology, design);
        for (int run = 0; run < runs.Length; run++)
        {
            double before = double.PositiveInfinity;
            for (int place = parent[run]; place > 0; place = parent[place - 1])
                before = Math.Min(before, Math.Min(Rating(fuses[2 * place - 2]), Rating(fuses[2 * place - 1])));
            (int start, int end) = topology.EndsOf(run);
            Assert.Equal(before, new SupplyFlow(topology, design).IntoWithoutEach(start)[topology.RunsAt(start).IndexOf(run)]);
            Assert.Equal(0, new SupplyFlow(topology, design).IntoWithoutEach(end)[topology.RunsAt(end).IndexOf(run)]);
            Assert.Equal(Math.Min(before, Rating(fuses[2 * run])), protection.EnteringAmps(RunEnd.Near(run)));
            Assert.Equal(0, protection.EnteringAmps(RunEnd.Far(run)));
        }
    }, iter: 2000);

    private static double Rating(FuseWish fuse) => fuse.RatingAmps ?? double.PositiveInfinity;

    private static double SmallestCut(Build build, SupplyTopology topology, Design design, int without, int node, int[] nodes)
    {
        if (topology.BatteryNodes.Contains(node)) return double.PositiveInfinity;
        bool fused = design.Near[without] is not null || design.Far[without] is not null;
        double smallest = double.PositiveInfinity;
        for (int set = 0; set < 1 << nodes.Length; set++)
        {
            HashSet<int> inside = [.. nodes.Where((at, i) => at >= 0 && (set >> i & 1) == 1)];
            if (!inside.Contains(node) || inside.Overlaps(topology.BatteryNodes)) continue;
            double sum = 0;
            for (int run = 0; run < build.Runs.Count - 2; run++)
            {
                (int from, int to) = topology.EndsOf(run);
                bool away = run == without || (fused && Set(run).SetEquals(Set(without)));
                if (!away && inside.Contains(from) != inside.Contains(to))
                    sum += Math.Min(TotalRating(design.Near[run]), TotalRating(design.Far[run]));

                double TotalRating(FittedFuse? fuse) =>
                    fuse is null ? double.PositiveInfinity : fuse.RatingAmps * (
                        fuse.PerConductor ? build.Runs[run].Conductor.Count!.Value : 1);
            }

            smallest = Math.Min(smallest, sum);
        }

        return smallest;

        HashSet<string> Set(int run) => [build.Runs[run].From, build.Runs[run].To];
    }

    private static Build Of(Run[] runs)
    {
        Run[] real = [.. runs.Select((run, i) => run with { Id = $"r{i}",
            To = run.To == run.From ? Places[(Array.IndexOf(Places, run.From) + 1) % Places.Length] : run.To })];
        string loaded = real.SelectMany(run => new[] { run.From, run.To })
            .First(place => place.StartsWith('p') || place == "rear");
        return OneAmplifier() with
        {
            Vehicle = OneAmplifier().Vehicle with
            {
                Batteries =
                [
                    new Battery { Id = "starter", InternalOhms = 0.005 },
                    new Battery { Id = "rear", InternalOhms = 0.005, Chemistry = Chemistry.Agm },
                ],
            },
            Runs = [.. real, Run("load", loaded, "bass", 1, "4 AWG") with { Side = Side.Supply, Fuse = NoFuse },
                Run("return", "bass", "body", 1, "4 AWG")],
        };
    }

    private static (SupplyTopology Topology, Design Design, int[] Nodes) ShapeOf(Build build)
    {
        CompleteBuild complete = BuildCompletion.Complete(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity));
        var circuit = new CircuitModel(complete);
        var topology = new SupplyTopology(complete, circuit);
        var nodeOf = new Dictionary<string, int>();
        for (int run = 0; run < build.Runs.Count - 1; run++)
        {
            nodeOf[build.Runs[run].From] = topology.EndsOf(run).From;
            nodeOf[build.Runs[run].To] = topology.EndsOf(run).To;
        }

        return (topology, TwoBatteryBuilds.DesignOf(complete), [.. Places.Select(place => nodeOf.GetValueOrDefault(place, -1))]);
    }
}
