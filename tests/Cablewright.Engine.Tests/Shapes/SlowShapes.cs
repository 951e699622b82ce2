using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Shapes;

/// <summary>The shapes of legal builds that take longest, each as large as a caller may send it.</summary>
internal static class SlowShapes
{
    private static readonly string[] EverySize =
    [
        .. Enumerable.Range(0, 4).Select(n => $"{4 - n}/0 AWG"), .. Enumerable.Range(1, 20).Select(n => $"{n} AWG"),
        .. new[]
        {
            "0.5", "0.75", "1", "1.25", "1.5", "2", "2.5", "3", "4", "5", "6", "8", "10", "12", "16", "20", "25", "30", "35",
            "40", "50",
            "60", "70", "95", "120", "150",
        }.Select(area => area + " mm2"),
    ];

    /// <summary>Every shape by its name.</summary>
    /// <param name="amplifiers">The most amplifiers.</param>
    /// <param name="runs">The most runs.</param>
    /// <param name="batteries">The most batteries.</param>
    public static IEnumerable<(string Name, Build Build)> All(int amplifiers, int runs, int batteries)
    {
        int side = (int)Math.Floor((1 + Math.Sqrt(1 + 2.0 * (runs - 2))) / 2);
        int whole = (int)Math.Floor((1 + Math.Sqrt(1 + 8.0 * (runs - 2))) / 2);
        Build star = StarBuild.Given(amplifiers, runs, 1200.0 / amplifiers), mesh = Mesh(side, 1, 300);
        yield return ("star, given", star);
        yield return ("star, open", StarBuild.Open(star));
        yield return ("star, open, everything asked for", Asking(StarBuild.Open(star)));
        yield return ("star, all feeds too long", Longer(star, 20));
        yield return ("star, open, no choice stands", Longer(StarBuild.Open(star), 40));
        yield return ("chain, given", Chain(runs - 2, 1));
        yield return ("chain, open", Opened(Chain(runs - 2, 1)));
        yield return ("chain, open, fewest sizes", Preferring(Opened(Chain(runs - 2, 1)), Prefer.FewestSizes));
        yield return ("binary tree, given", Tree(amplifiers, runs));
        yield return ("binary tree, open, everything asked for", Asking(Opened(Tree(amplifiers, runs))));
        yield return ($"mesh {side} x {side}, given", mesh);
        yield return ($"mesh {side} x {side}, fused, given", Fused(mesh));
        yield return ($"mesh {side} x {side}, everything asked for", Asking(mesh));
        yield return ($"mesh {side} x {side}, open", Opened(mesh));
        yield return ($"mesh {side} x {side}, collapse", Mesh(side, 1, 50_000));
        yield return ($"mesh {side} x {side}, {batteries} batteries", Mesh(side, batteries, 300));
        yield return ($"mesh {side} x {side}, {batteries} batteries, fused, everything asked for",
            Asking(Fused(Mesh(side, batteries, 300))));
        yield return ($"complete graph of {whole}, given", Complete(whole, 1));
        yield return ($"complete graph of {whole}, open, {batteries} batteries", Opened(Complete(whole, batteries)));
        yield return ("every size of every metal, open", WithEverySize(Opened(Tree(amplifiers, runs))));
        yield return ("every size of every metal, fewest sizes",
            Preferring(WithEverySize(Opened(Tree(amplifiers, runs))), Prefer.FewestSizes));
        foreach (IsolatorKind kind in Enum.GetValues<IsolatorKind>())
            yield return ($"{batteries} batteries in a row over {kind}, everything asked for", Asking(Isolated(batteries, kind)));
    }

    /// <summary>A square of junctions, an amplifier at the far corner, batteries along the first row.</summary>
    public static Build Mesh(int side, int batteries, double watts)
    {
        static string Node(int x, int y) => $"n{x}-{y}";
        List<Run> runs = [];
        for (int x = 0; x < side; x++)
        {
            for (int y = 0; y < side; y++)
            {
                if (x + 1 < side) runs.Add(Run($"h{x}-{y}", Node(x, y), Node(x + 1, y)));
                if (y + 1 < side) runs.Add(Run($"v{x}-{y}", Node(x, y), Node(x, y + 1)));
            }
        }

        string[] from = [.. Enumerable.Range(0, batteries).Select(battery => Node(battery % side, battery / side))];
        return With(Placed(runs, [.. from, Node(side - 1, side - 1)]), batteries, [watts]);
    }

    private static Build Complete(int nodes, int batteries)
    {
        List<Run> runs = [];
        for (int a = 0; a < nodes; a++)
        {
            for (int b = a + 1; b < nodes; b++) runs.Add(Run($"r{a}-{b}", $"n{a}", $"n{b}"));
        }

        string[] ends = [.. Enumerable.Range(0, batteries).Select(battery => $"n{battery}"), $"n{nodes - 1}"];
        return With(Placed(runs, ends), batteries, [300]);
    }

    private static Build Chain(int length, int batteries)
    {
        List<Run> runs =
            [.. Enumerable.Range(0, length).Select(i => Run($"r{i}", $"n{i}", $"n{i + 1}") with { LengthMetres = 0.05 })];
        return With(Placed(runs, ["n0", $"n{length}"]), batteries, [300]);
    }

    private static Build Tree(int amplifiers, int runs)
    {
        int inner = Math.Min(amplifiers - 1, runs - 2 * amplifiers);
        List<Run> tree = [];
        for (int node = 2; node < 2 * amplifiers && tree.Count < inner + amplifiers; node++)
            tree.Add(Run($"r{node}", $"n{node / 2}", $"n{node}"));
        Build build = With(
            [.. tree.Select(run => Placed(run, "n1", "starter"))], 1, [.. Enumerable.Repeat(900.0 / amplifiers, amplifiers)]);
        HashSet<string> inside = [.. build.Runs.Select(run => run.From)];
        string[] leaves = [.. build.Runs.Select(run => run.To).Where(to => !inside.Contains(to) && to.StartsWith('n'))];
        return build with
        {
            Amplifiers = [.. build.Amplifiers.Take(leaves.Length)],
            Runs = [.. build.Runs.Select(
                run => Array.IndexOf(leaves, run.To) is >= 0 and int leaf ? run with { To = $"a{leaf}" } : run)],
        };
    }

    /// <summary>Batteries one after another, an amplifier at each.</summary>
    /// <param name="batteries">How many batteries.</param>
    /// <param name="kind">What parts each from the next.</param>
    /// <param name="beside">How many of these side by side.</param>
    public static Build Isolated(int batteries, IsolatorKind kind, int beside = 1)
    {
        List<Run> runs = [];
        for (int i = beside; i < beside * batteries; i++)
        {
            runs.Add(Run($"r{i}", Battery(i / beside - 1), Battery(i / beside)) with
            {
                Isolator = new Isolator { Kind = kind, RatedAmps = kind is IsolatorKind.DcDcCharger ? 20 : 200 },
            });
        }

        for (int i = 0; i < batteries; i++) runs.Add(Run($"feed{i}", Battery(i), $"a{i}"));
        return With(runs, batteries, [.. Enumerable.Repeat(150.0, batteries)]);
    }

    /// <summary>The ends of a net put to the batteries and the last of them to the amplifier.</summary>
    private static List<Run> Placed(List<Run> runs, string[] ends)
    {
        for (int i = 0; i < ends.Length; i++)
        {
            string place = i == ends.Length - 1 ? "a0" : Battery(i);
            runs = [.. runs.Select(run => Placed(run, ends[i], place))];
        }

        return runs;
    }

    private static Run Placed(Run run, string end, string place) => run with
    {
        From = run.From == end ? place : run.From,
        To = run.To == end ? place : run.To,
    };

    private static string Battery(int index) => index == 0 ? "starter" : $"b{index}";

    private static Build With(IReadOnlyList<Run> runs, int batteries, double[] watts) => StarBuild.Small with
    {
        Vehicle = StarBuild.Small.Vehicle with
        {
            Batteries = [.. Enumerable.Range(0, batteries)
                .Select(i => StarBuild.Small.Vehicle.Batteries[0] with { Id = Battery(i) })],
        },
        Amplifiers = [.. watts.Select((each, i) => StarBuild.Small.Amplifiers[0] with { Id = $"a{i}", RatedOutputWatts = each })],
        Runs = [.. runs.Select(run => run with { Side = Side.Supply })],
    };

    private static Build Asking(Build build) => build with { Include = Enum.GetValues<Extra>() };

    private static Build Preferring(Build build, Prefer prefer) => build with { Sizing = build.Sizing with { Prefer = prefer } };

    private static Build WithEverySize(Build build) => build with
    {
        Sizing = build.Sizing with { Sizes = [.. EverySize.Select(ConductorSize.Of)], Materials = Enum.GetValues<Material>() },
    };

    private static Build Longer(Build build, double times) => build with
    {
        Runs = [.. build.Runs.Select(run => run with { LengthMetres = run.LengthMetres * times })],
    };

    private static Build Opened(Build build) => build with
    {
        Runs = [.. build.Runs.Select(
            run => run with { Conductor = new ConductorWish(), Fuse = null, FarFuse = null, JointOhms = null, Route = null })],
    };

    private static Build Fused(Build build) => build with
    {
        Runs = [.. build.Runs.Select((run, i) => run with
        {
            Fuse = new FuseWish { RatingAmps = 40 + 10 * (i % 7), Family = FuseFamilyName.Anl, DistanceMetres = 0.1 },
        })],
    };

    private static Run Run(string id, string from, string to) => new()
    {
        Id = id,
        From = from,
        To = to,
        LengthMetres = 0.5,
        Route = Route.Cabin,
        JointOhms = 0.0001,
        Conductor = new ConductorWish
        {
            Size = ConductorSize.Of("4 AWG"),
            Material = Material.Copper,
            Count = 1,
            InsulationCelsius = 105,
        },
    };
}
