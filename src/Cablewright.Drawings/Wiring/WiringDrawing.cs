using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Drawings.Svg;
using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Wiring;

/// <summary>The wiring as a single-line diagram in the sense of IEC 61082, from top to bottom, as SVG.</summary>
public static class WiringDrawing
{
    private const string SupplyColour = "#17202a";
    private const string ReturnColour = "#51606e";

    /// <summary>Draws an answer.</summary>
    /// <param name="build">The build as it was posted.</param>
    /// <param name="answer">What was answered.</param>
    /// <returns>An SVG element, without a declaration.</returns>
    public static string Svg(Build build, Assessment answer)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(answer);
        WiringLayout layout = LayoutMaker.Of(build, answer);
        using var svg = new SvgWriter(
            "wiring", layout.Width, layout.Height, WiringWords.Title(build, answer), WiringWords.Description(build, answer));
        foreach (RowShape row in layout.Rows) Band(svg, row);
        svg.Group("cw-lines");
        foreach (Segment line in Joined(layout.Segments)) Draw(svg, line);
        foreach ((double x, double y, Side side) in layout.Dots) svg.Circle("cw-dot", x, y, 3.2, ColourOf(side));
        svg.EndGroup();
        foreach (RowShape row in layout.Rows) Draw(svg, row);
        foreach (Light light in layout.Lights)
            Status.Draw(svg, light.Verdict, light.Box.MiddleX, light.Box.MiddleY, light.Box.Width);
        foreach (MarkSign mark in layout.NoteMarks) Draw(svg, mark);
        foreach (Label label in layout.Labels) Draw(svg, label);
        return svg.Finish();
    }

    /// <summary>What goes on in a straight line is drawn in one stroke, so that no joints show.</summary>
    private static IEnumerable<Segment> Joined(IReadOnlyList<Segment> segments)
    {
        Segment? line = null;
        foreach (Segment next in segments.OrderBy(each => each.Side).ThenBy(each => each.X1 != each.X2)
            .ThenBy(each => each.X1).ThenBy(each => each.Y1))
        {
            bool goesOn = line is not null && line.Side == next.Side && line.X1 == line.X2 && next.X1 == next.X2
                && line.X1 == next.X1 && next.Y1 <= line.Y2;
            if (!goesOn && line is not null) yield return line;
            line = goesOn ? line! with { Y2 = Math.Max(line.Y2, next.Y2) } : next;
        }

        if (line is not null) yield return line;
    }

    private static void Draw(SvgWriter svg, RowShape row)
    {
        svg.Group(row.Classes, row.Id);
        foreach (Symbol symbol in row.Symbols) SymbolDrawing.Draw(svg, symbol);
        if (row.Mark is { } mark) Draw(svg, mark);
        foreach (Label label in row.Labels) Draw(svg, label);
        svg.EndGroup();
    }

    /// <summary>What lies outside the cabin lies on a ground of its own; the words say where, too.</summary>
    private static void Band(SvgWriter svg, RowShape row)
    {
        string? fill = row.Route switch
        {
            Route.EngineBay => "#f3e3cf",
            Route.Underbody => "#e3e9f1",
            _ => null,
        };
        if (fill is null) return;
        svg.Rectangle($"cw-band cw-{row.Route!.Value.Word()}", 0, row.Box.Y, row.Box.Width, row.Box.Height, fill);
    }

    private static void Draw(SvgWriter svg, Segment line) => svg.Line(
        "cw-line cw-" + line.Side.Word(), line.X1, line.Y1, line.X2, line.Y2, ColourOf(line.Side),
        line.Side is Side.Supply ? 2.6 : 1.6);

    private static string ColourOf(Side side) => side is Side.Supply ? SupplyColour : ReturnColour;

    private static void Draw(SvgWriter svg, MarkSign mark) =>
        Status.Draw(svg, mark.Severity, mark.Box.MiddleX, mark.Box.MiddleY, mark.Box.Width, mark.Sign);

    private static void Draw(SvgWriter svg, Label label) => svg.Text(
        label.Class, label.Box.X, label.Box.Y + label.Size, label.Words, label.Size, ColourOf(label), label.IsStrong,
        whole: label.Whole);

    private static string ColourOf(Label label) => label.Class switch
    {
        "cw-light cw-pass" => Status.ColourOf(Verdict.Pass),
        "cw-light cw-caution" => Status.ColourOf(Verdict.Caution),
        "cw-light cw-fail" => Status.ColourOf(Verdict.Fail),
        "cw-foot" => Status.InfoColour,
        _ => SupplyColour,
    };
}
