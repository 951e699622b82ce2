using Cablewright.Contract.Assessments;
using Cablewright.Drawings.Svg;
using Cablewright.Drawings.Text;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Charts;

/// <summary>What a run would lose with each size that shops keep, in copper and in copper-clad aluminium.</summary>
internal static class LossChart
{
    /// <summary>As the trade keeps them (common practice, no source).</summary>
    private static readonly string[] Gauges = ["8 AWG", "4 AWG", "2 AWG", "1/0 AWG", "2/0 AWG", "4/0 AWG"];

    private static readonly string[] Metric = ["10 mm2", "16 mm2", "25 mm2", "35 mm2", "50 mm2", "70 mm2"];

    private const double Margin = 8;
    private const double RowHeight = 30;
    private const double BarX = 92;
    private const double LongestBar = 150;
    private const double TextSize = 11;

    /// <summary>Draws it.</summary>
    /// <param name="run">The run, at its length and its current.</param>
    /// <param name="volts">The charging voltage.</param>
    /// <param name="units">The units of the build.</param>
    public static string Of(RunResult run, double volts, UnitSystem units)
    {
        Loss[] losses =
        [
            .. Sizes(run).Select(size =>
                new Loss(size, Watts(run, size, Material.Copper), Watts(run, size, Material.CopperCladAluminium))),
        ];
        double most = losses.Max(loss => Math.Max(loss.Copper, loss.Clad));
        string title = $"Lost in run \"{Names.Clean(run.Id)}\", {Figures.Length(run.LengthMetres, units)} at "
            + $"{Figures.Amps(run.PeakCurrentAmps)}, by size";
        string words = "Dark: copper. Light: copper-clad aluminium. Watts, and decibels of output where the supply is not "
            + "regulated; the conductor alone, as warm as it gets. "
            + (run.Conductor.Count > 1 ? $"{run.Conductor.Count} in parallel. " : "")
            + "The arrow marks what this answer has.";
        IReadOnlyList<string> heading = Lines.Of(title, Plot.Width - 2 * Margin, 13, true, 3);
        IReadOnlyList<string> below = Lines.Of(words, Plot.Width - 2 * Margin, TextSize, false, 8);
        double top = Margin + heading.Count * 17 + 8, end = top + losses.Length * RowHeight;
        using var svg = new SvgWriter(
            "loss-" + run.Id, Plot.Width, end + below.Count * 15 + 2 * Margin, title, words + " " + InWords(losses));
        for (int i = 0; i < heading.Count; i++)
            svg.Text("cw-title", Margin, Margin + 13 + i * 17, heading[i], 13, Plot.Ink, true);
        foreach ((int i, Loss loss) in losses.Index()) Draw(svg, run, loss, top + i * RowHeight, most, volts);
        for (int i = 0; i < below.Count; i++)
            svg.Text("cw-words", Margin, end + Margin + TextSize + i * 15, below[i], TextSize, Plot.Faint);
        return svg.Finish();
    }

    /// <summary>What a run loses in its conductors alone with another size and metal, in watts.</summary>
    public static double Watts(RunResult run, ConductorSize size, Material metal) => run.PeakCurrentAmps * run.PeakCurrentAmps
        * Conductor.Of(size, metal).OhmsPerMetre(run.TemperatureCelsius) * run.LengthMetres / run.Conductor.Count;

    private static void Draw(SvgWriter svg, RunResult run, Loss loss, double y, double most, double volts)
    {
        bool isChosen = loss.Size.Label == run.Conductor.Size;
        svg.Text("cw-size", Margin, y + 17, loss.Size.Label, 12, Plot.Ink, isChosen);
        Bar(loss.Copper, y + 2, "#17202a", isChosen && run.Conductor.Material is not Material.CopperCladAluminium, "cw-copper");
        Bar(loss.Clad, y + 14, "#9aa7b3", isChosen && run.Conductor.Material is Material.CopperCladAluminium, "cw-clad");

        void Bar(double watts, double top, string fill, bool isMarked, string classes)
        {
            double width = Math.Max(1, watts / most * LongestBar);
            svg.Rectangle(classes, BarX, top, width, 10, fill, Plot.Ink, 0.8);
            if (isMarked) svg.Path("cw-arrow", Status.Of(BarX - 4, top + 5, 1, "M -8 -5 L 0 0 L -8 5 Z"), Status.FailColour);
            string figure = $"{Figures.Watts(watts)}, {Decibels(watts / run.PeakCurrentAmps, volts)}";
            svg.Text("cw-figure", BarX + width + 4, top + 9, figure, 10, Plot.Ink, isMarked);
        }
    }

    private static string Decibels(double lost, double volts) =>
        lost >= volts ? "nothing left" : Figures.Decibels(-20 * Math.Log10(1 - lost / volts));

    private static string InWords(Loss[] losses) => string.Join("; ", losses.Select(loss =>
        $"{loss.Size.Label}: {Figures.Watts(loss.Copper)} in copper, {Figures.Watts(loss.Clad)} in copper-clad aluminium")) + ".";

    /// <summary>The sizes that shops keep, and the run's own.</summary>
    private static IEnumerable<ConductorSize> Sizes(RunResult run)
    {
        ConductorSize? own = ConductorSize.Parse(run.Conductor.Size).Size;
        return (own is { IsMetric: true } ? Metric : Gauges).Select(ConductorSize.Of).Append(own).OfType<ConductorSize>()
            .DistinctBy(size => size.Label).OrderBy(size => size.NominalAreaMm2);
    }

    private sealed record Loss(ConductorSize Size, double Copper, double Clad);
}
