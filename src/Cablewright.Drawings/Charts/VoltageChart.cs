using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Drawings.Text;
using Cablewright.Drawings.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Charts;

/// <summary>What is left of the voltage along the way from the battery to each amplifier and back, at full output.</summary>
internal static class VoltageChart
{
    private const int MostAmplifiers = 6;
    private const double Near = 0.02;
    private const double MetresPerFoot = 0.3048;

    private static readonly string[] Colours = ["#17202a", "#1f5fa8", "#8a3ffc", "#0a7d5a", "#a2560a", "#9f1853"];
    private static readonly string?[] Dashes = [null, "7 3", "2 3", "9 3 2 3", "4 4", "12 3"];

    /// <summary>Draws it; nothing where no way adds up, as with loops, in which the current goes by several.</summary>
    public static string? Of(Build build, Assessment answer)
    {
        var graph = WiringGraph.Of(build, answer);
        Way[] ways =
            [.. answer.Amplifiers.Select(amplifier => WayOf(amplifier, graph, answer)).OfType<Way>().Take(MostAmplifiers)];
        if (ways.Length == 0) return null;
        bool isMetric = build.Units is UnitSystem.Metric;
        double unit = isMetric ? 1 : MetresPerFoot, volts = answer.Supply.OperatingVolts;
        double longest = ways.Max(way => way.Points[^1].Metres) / unit, lowest = ways.Min(way => way.Points[^1].Volts);
        using var plot = new Plot(
            "voltage", "Voltage along the way at full output", Words(ways, volts), (0, longest, false),
            (lowest - (volts - lowest) * 0.1, volts, false));
        plot.Axes(
            "along the cable, out and back, " + (isMetric ? "m" : "ft"), Figures.Number, "volts left", Figures.Number);
        for (int i = 0; i < ways.Length; i++)
        {
            plot.Curve("cw-way", ways[i].Points.Select(point => (point.Metres / unit, point.Volts)), Colours[i], 2, Dashes[i]);
            foreach ((double metres, double left) in ways[i].Points)
                plot.Svg.Circle("cw-joint", plot.X.At(metres / unit), plot.Y.At(left), 2.2, Colours[i]);
            (double at, double there) = ways[i].Points[ways[i].Out];
            plot.Svg.Rectangle("cw-amplifier", plot.X.At(at / unit) - 4, plot.Y.At(there) - 4, 8, 8, "#ffffff", Colours[i], 2);
            // Now on one side, now on the other, since amplifiers often lie close to each other.
            (double aside, double below, string anchor) = i % 2 == 0 ? (-7, 13, "end") : (7, -6, "start");
            plot.Svg.Text(
                "cw-letter", plot.X.At(at / unit) + aside, plot.Y.At(there) + below, Letter(i), 11, Colours[i], true, anchor);
        }

        return plot.Svg.Finish();
    }

    private static Way? WayOf(AmplifierResult amplifier, WiringGraph graph, Assessment answer)
    {
        double volts = answer.Supply.OperatingVolts, metres = 0;
        var points = new List<(double Metres, double Volts)> { (0, volts) };
        IReadOnlyList<Link> way = graph.WayTo(amplifier.Id);
        if (way.Any(link => link.Run.Isolator is { Kind: IsolatorKind.DcDcCharger })) return null;
        foreach (Link link in way) Go(link.Run);
        foreach (Link link in graph.WayBackFrom(amplifier.Id)) Go(link.Run);
        // What is left is lost in the body, in straps and in isolators.
        double rest = volts - amplifier.TerminalVolts;
        if (rest < -Near || volts > answer.Supply.OperatingVolts) return null;
        points.Add((metres, amplifier.TerminalVolts));
        return new Way(amplifier, points, way.Count);

        void Go(RunResult run)
        {
            metres += run.LengthMetres;
            volts -= run.DropVolts;
            points.Add((metres, volts));
        }
    }

    private static string Words(Way[] ways, double volts) =>
        $"From {Figures.Volts(volts)} at the battery out to the amplifier (square) and back; the last step is body, straps and "
        + "isolators. " + string.Join("; ", ways.Select((way, i) =>
            $"{Letter(i)}: {Names.Clean(way.Amplifier.Id)} gets {Figures.Volts(way.Amplifier.TerminalVolts)}")) + ".";

    private static string Letter(int number) => ((char)('A' + number)).ToString();

    /// <summary>The way of one amplifier's current.</summary>
    /// <param name="Amplifier">The amplifier.</param>
    /// <param name="Points">What is left of the voltage after each run.</param>
    /// <param name="Out">Which of the points is the amplifier's supply terminal.</param>
    private sealed record Way(AmplifierResult Amplifier, IReadOnlyList<(double Metres, double Volts)> Points, int Out);
}
