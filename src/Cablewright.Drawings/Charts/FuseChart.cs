using Cablewright.Contract.Assessments;
using Cablewright.Drawings.Svg;
using Cablewright.Drawings.Text;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Drawings.Charts;

/// <summary>
/// When a fuse opens against how long its conductor withstands, over the current, both on logarithmic scales: the fuse guards the
/// conductor wherever its band lies below the conductor's line.
/// </summary>
internal static class FuseChart
{
    private const int Steps = 60;
    private const double ShortestSeconds = 0.01;
    private const double LongestSeconds = 1000;
    private const string Band = "#9db7d5";
    private const string Doubt = "#dbe5f0";

    /// <summary>Draws it.</summary>
    /// <param name="run">The run that it guards, with its conductor.</param>
    /// <param name="fuse">The fuse.</param>
    /// <param name="ruleset">The ruleset of the answer.</param>
    public static string Of(RunResult run, FuseResult fuse, Ruleset ruleset)
    {
        TimeCurrentBand band = ruleset.FuseFamilies.Of(fuse.Family).TimeCurrentBand;
        double rating = fuse.RatingAmps * (fuse.PerConductor ? run.Conductor.Count : 1);
        double most = Math.Max(fuse.LargestFaultAmps ?? 0, rating * 10) * 1.3;
        double[] amps =
            [.. Enumerable.Range(0, Steps + 1).Select(step => rating * Math.Pow(most / rating, (double)step / Steps))];
        using var plot = new Plot(
            "fuse-" + run.Id,
            $"Fuse {Figures.Fuse(fuse)} of run \"{Names.Clean(run.Id)}\" against {Figures.Conductor(run.Conductor)}",
            Words(fuse, band),
            (rating, most, true), (ShortestSeconds, LongestSeconds, true));
        double doubt = band.Uncertainty.Value;
        if (doubt > 1) plot.Area("cw-doubt", Around(band, rating, amps, doubt), Doubt);
        plot.Area("cw-band", Around(band, rating, amps, 1), Band);
        plot.Axes("current, A", Figures.Number, "time, s", Figures.Number);
        plot.Curve("cw-withstand", Withstand(run, amps, ruleset), Plot.Ink, 3);
        Mark(plot, fuse.SmallestFaultAmps, "S");
        Mark(plot, fuse.LargestFaultAmps, "L");
        return plot.Svg.Finish();
    }

    /// <summary>How long the conductor of a run withstands currents, where that ends.</summary>
    /// <remarks>The air around it is taken to be as warm as it is itself, which is on the safe side.</remarks>
    public static IEnumerable<(double Amps, double Seconds)> Withstand(RunResult run, IEnumerable<double> amps, Ruleset ruleset)
    {
        if (ConductorSize.Parse(run.Conductor.Size).Size is not { } size) return [];
        var conductor = Conductor.Of(size, run.Conductor.Material);
        double limit = ShortCircuit.LimitFor(run.Conductor.InsulationCelsius, ruleset), start = run.TemperatureCelsius;
        return amps
            .Select(each => (each, ShortCircuit.WithstandSeconds(
                conductor, each / run.Conductor.Count, start, limit, start, ruleset.ShortCircuit)))
            .Where(point => double.IsFinite(point.Item2));
    }

    /// <summary>Out along the times at the latest, back along those at the earliest.</summary>
    private static IEnumerable<(double X, double Y)> Around(TimeCurrentBand band, double rating, double[] amps, double doubt) =>
    [
        .. amps.Select(each => (each, (band.SlowestSeconds(each / rating) ?? LongestSeconds) * doubt)),
        .. amps.Reverse().Select(each => (each, Math.Min(LongestSeconds, band.FastestSeconds(each / rating)) / doubt)),
    ];

    private static void Mark(Plot plot, double? amps, string letter)
    {
        if (amps is not { } current || current < plot.X.Least) return;
        double x = plot.X.At(current);
        plot.Svg.Line("cw-fault", x, plot.Top, x, plot.Bottom, Status.FailColour, 1.6, "5 3");
        plot.Svg.Text("cw-fault", x, plot.Top - 2, letter, 11, Status.FailColour, true, "middle");
    }

    private static string Words(FuseResult fuse, TimeCurrentBand band)
    {
        string faults = string.Join("; ", new[]
        {
            fuse.SmallestFaultAmps is { } smallest ? $"S: the smallest short circuit, {Figures.Amps(smallest)}" : null,
            fuse.LargestFaultAmps is { } largest ? $"L: the largest, {Figures.Amps(largest)}" : null,
        }.OfType<string>());
        string doubt = band.Uncertainty.Value > 1 ? " The light band is how far off the recalled curve may be." : "";
        string times = fuse.OpensSeconds is { } opens
            ? $" At S it opens within {Figures.Seconds(opens)}; the conductor withstands that for "
                + (fuse.ConductorWithstandSeconds is { } bears ? Figures.Seconds(bears) + "." : "any time.")
            : "";
        return $"Shaded: when the fuse opens. Thick line: how long the conductor withstands.{doubt} {faults}.{times}";
    }
}
