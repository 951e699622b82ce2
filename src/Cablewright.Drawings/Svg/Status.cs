using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Svg;

/// <summary>
/// What a verdict or a finding looks like: a colour, and for those who do not see it, or see it in black and white, a shape of
/// its own.
/// </summary>
internal static class Status
{
    public const string PassColour = "#1b7f3b";
    public const string CautionColour = "#b35c00";
    public const string FailColour = "#b3152a";
    public const string InfoColour = "#51606e";

    public static string ColourOf(Verdict verdict) => verdict switch
    {
        Verdict.Pass => PassColour,
        Verdict.Caution => CautionColour,
        _ => FailColour,
    };

    /// <summary>A verdict: a disc with a tick, a triangle with an exclamation mark, an octagon with a cross.</summary>
    public static void Draw(SvgWriter svg, Verdict verdict, double x, double y, double size)
    {
        double r = size / 2, u = size / 16;
        string classes = "cw-status cw-" + verdict.Word();
        switch (verdict)
        {
            case Verdict.Pass:
                svg.Circle(classes, x, y, r, PassColour);
                svg.Path("cw-sign", Of(x, y, u, "M -4 0 L -1 3.5 L 4.5 -3"), stroke: "#ffffff", width: 2.2 * u);
                break;
            case Verdict.Caution:
                Draw(svg, Severity.Caution, x, y, size, "!");
                break;
            default:
                svg.Path(classes, Octagon(x, y, r), FailColour);
                string cross = Of(x, y, u, "M -3.5 -3.5 L 3.5 3.5 M -3.5 3.5 L 3.5 -3.5");
                svg.Path("cw-sign", cross, stroke: "#ffffff", width: 2.4 * u);
                break;
        }
    }

    /// <summary>A finding with its number: an octagon, a triangle or a ring.</summary>
    public static void Draw(SvgWriter svg, Severity severity, double x, double y, double size, string sign)
    {
        double r = size / 2;
        string classes = "cw-status cw-" + severity.Word();
        switch (severity)
        {
            case Severity.Fail:
                svg.Path(classes, Octagon(x, y, r), FailColour);
                svg.Text("cw-sign", x, y + size * 0.22, sign, size * 0.62, "#ffffff", true, "middle");
                break;
            case Severity.Caution:
                svg.Path(classes, Of(x, y, size / 16, "M 0 -8 L 8.6 7.4 L -8.6 7.4 Z"), CautionColour);
                svg.Text("cw-sign", x, y + size * 0.36, sign, size * 0.6, "#ffffff", true, "middle");
                break;
            default:
                svg.Circle(classes, x, y, r * 0.8, "#ffffff", InfoColour, 1.2);
                svg.Text("cw-sign", x, y + size * 0.2, sign, size * 0.58, InfoColour, true, "middle");
                break;
        }
    }

    private static string Octagon(double x, double y, double r)
    {
        IEnumerable<string> corners = Enumerable.Range(0, 8).Select(corner =>
        {
            double angle = Math.PI / 8 + corner * Math.PI / 4;
            return SvgWriter.Figure(x + r * Math.Cos(angle)) + " " + SvgWriter.Figure(y + r * Math.Sin(angle));
        });
        return "M " + string.Join(" L ", corners) + " Z";
    }

    /// <summary>A path drawn about the origin, moved and scaled.</summary>
    public static string Of(double x, double y, double unit, string data)
    {
        bool isAcross = true;
        return string.Join(' ', data.Split(' ').Select(word =>
        {
            if (!double.TryParse(word, System.Globalization.CultureInfo.InvariantCulture, out double number)) return word;
            double moved = (isAcross ? x : y) + number * unit;
            isAcross = !isAcross;
            return SvgWriter.Figure(moved);
        }));
    }
}
