using Cablewright.Drawings.Svg;
using Cablewright.Drawings.Text;

namespace Cablewright.Drawings.Charts;

/// <summary>The paper of a chart: title, axes with their figures, and what is written below.</summary>
internal sealed class Plot : IDisposable
{
    public const string Ink = "#17202a";
    public const string Faint = "#51606e";
    public const double Width = 360;

    private const double Left = 52;
    private const double RightMargin = 12;
    private const double TitleSize = 13;
    private const double TextSize = 11;
    private const double LineHeight = 15;
    private const double Margin = 8;
    private const double PlotHeight = 200;

    private readonly double bottom;

    /// <summary>Begins a chart.</summary>
    /// <param name="name">What its ids begin with.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="words">How it is to be read, below it and for those who hear it.</param>
    /// <param name="across">The axis across: least, most, whether it is logarithmic.</param>
    /// <param name="up">The axis up.</param>
    public Plot(
        string name, string title, string words, (double Least, double Most, bool IsLog) across,
        (double Least, double Most, bool IsLog) up)
    {
        IReadOnlyList<string> heading = Lines.Of(title, Width - 2 * Margin, TitleSize, true, 3);
        IReadOnlyList<string> below = Lines.Of(words, Width - 2 * Margin, TextSize, false, 8);
        double top = Margin + heading.Count * (TitleSize + 4) + 18;
        bottom = top + PlotHeight;
        double height = bottom + 44 + below.Count * LineHeight + Margin;
        Svg = new SvgWriter(name, Width, height, title, words);
        for (int i = 0; i < heading.Count; i++)
            Svg.Text("cw-title", Margin, Margin + TitleSize + i * (TitleSize + 4), heading[i], TitleSize, Ink, true);
        for (int i = 0; i < below.Count; i++)
            Svg.Text("cw-words", Margin, bottom + 44 + TextSize + i * LineHeight, below[i], TextSize, Faint);
        X = new Scale(across.Least, across.Most, Left, Width - RightMargin, across.IsLog);
        Y = new Scale(up.Least, up.Most, bottom, top, up.IsLog);
    }

    public SvgWriter Svg { get; }

    public Scale X { get; }

    public Scale Y { get; }

    public double Top => Y.End;

    public double Bottom => bottom;

    /// <summary>Draws the axes, with a line at each figure.</summary>
    public void Axes(string across, Func<double, string> acrossText, string up, Func<double, string> upText)
    {
        foreach (double tick in X.Ticks())
        {
            Svg.Line("cw-grid", X.At(tick), Top, X.At(tick), Bottom, "#dde3e8", 1);
            Svg.Text("cw-tick", X.At(tick), Bottom + 14, acrossText(tick), 10, Ink, false, "middle");
        }

        foreach (double tick in Y.Ticks())
        {
            Svg.Line("cw-grid", X.Start, Y.At(tick), X.End, Y.At(tick), "#dde3e8", 1);
            Svg.Text("cw-tick", X.Start - 5, Y.At(tick) + 3.5, upText(tick), 10, Ink, false, "end");
        }

        Svg.Line("cw-axis", X.Start, Bottom, X.End, Bottom, Ink, 1.4);
        Svg.Line("cw-axis", X.Start, Top, X.Start, Bottom, Ink, 1.4);
        Svg.Text("cw-axis-name", (X.Start + X.End) / 2, Bottom + 30, across, TextSize, Ink, false, "middle");
        Svg.Text("cw-axis-name", Margin, Top - 8, up, TextSize, Ink);
    }

    /// <summary>A line through points.</summary>
    public void Curve(
        string classes, IEnumerable<(double X, double Y)> points, string colour, double width, string? dash = null) =>
        Svg.Path(classes, Way(points), stroke: colour, width: width, dash: dash);

    /// <summary>An area between points.</summary>
    public void Area(string classes, IEnumerable<(double X, double Y)> points, string fill) =>
        Svg.Path(classes, Way(points) + " Z", fill);

    /// <inheritdoc/>
    public void Dispose() => Svg.Dispose();

    private string Way(IEnumerable<(double X, double Y)> points) => string.Join(' ', points.Select(
        (point, i) => $"{(i == 0 ? "M" : "L")} {SvgWriter.Figure(X.At(point.X))} {SvgWriter.Figure(Y.At(point.Y))}"));
}
