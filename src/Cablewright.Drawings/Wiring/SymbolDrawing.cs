using Cablewright.Drawings.Svg;

namespace Cablewright.Drawings.Wiring;

/// <summary>
/// The symbols, after IEC 60617 where it has one: battery, generator, capacitor, fuse, frame, contact, diode, converter,
/// amplifier.
/// </summary>
internal static class SymbolDrawing
{
    private const string Ink = "#17202a";
    private const string Paper = "#ffffff";

    /// <summary>Draws one.</summary>
    public static void Draw(SvgWriter svg, Symbol symbol)
    {
        (double x, double y) = (symbol.Box.MiddleX, symbol.Box.MiddleY);
        string classes = "cw-symbol cw-" + symbol.Kind.ToString().ToLowerInvariant();
        svg.Group(classes);
        switch (symbol.Kind)
        {
            case SymbolKind.Battery:
                Gap(svg, symbol);
                Stroke(svg, x, y, "M -9 0 L -7 0 M -7 -11 L -7 11 M 3 -11 L 3 11 M 8 0 L 9 0", 1.6);
                Stroke(svg, x, y, "M -2 -5 L -2 5 M 8 -5 L 8 5", 3.2);
                break;
            case SymbolKind.Capacitor:
                Gap(svg, symbol);
                Stroke(svg, x, y, "M -3 -10 L -3 10 M 3 -10 L 3 10", 2);
                break;
            case SymbolKind.Alternator:
                svg.Circle("cw-body", x, y, 10.5, Paper, Ink, 1.6);
                svg.Text("cw-letter", x, y + 4, "G", 11, Ink, true, "middle");
                break;
            case SymbolKind.Converter:
                Square(svg, symbol);
                Stroke(svg, x, y, "M -11 11 L 11 -11 M -8 -7 L -1 -7 M -8 -4 L -1 -4 M 1 5 L 8 5 M 1 8 L 8 8", 1.3);
                break;
            case SymbolKind.Charger:
                Square(svg, symbol);
                Stroke(svg, x, y, "M -7 10 L 7 -10 M -5 -5 L -1 -5 M 1 6 L 5 6", 1.3);
                break;
            case SymbolKind.Amplifier:
                Square(svg, symbol);
                Stroke(svg, x, y, "M -6 -7 L 8 0 L -6 7 Z", 1.4);
                break;
            case SymbolKind.Frame:
                Stroke(svg, x, symbol.Box.Y, "M 0 0 L 0 6 M -7 6 L 7 6 M -7 6 L -10 12 M 0 6 L -3 12 M 7 6 L 4 12", 1.6);
                break;
            case SymbolKind.Fuse:
                svg.Rectangle("cw-body", symbol.Box.X, symbol.Box.Y, symbol.Box.Width, symbol.Box.Height, Paper, Ink, 1.6);
                Stroke(svg, x, y, "M 0 -11 L 0 11", 1.4);
                break;
            case SymbolKind.Relay:
                Gap(svg, symbol);
                Stroke(svg, x, y, "M 0 -10 L 0 -6 M 0 10 L 0 6 M 0 6 L -7 -6", 1.8);
                break;
            case SymbolKind.Diode:
                string triangle = symbol.PointsUp ? "M -7 6 L 7 6 L 0 -6 Z" : "M -7 -6 L 7 -6 L 0 6 Z";
                svg.Path("cw-body", Status.Of(x, y, 1, triangle), Paper, Ink, 1.6);
                Stroke(svg, x, y, symbol.PointsUp ? "M -7 -6 L 7 -6" : "M -7 6 L 7 6", 2);
                break;
            default:
                svg.Rectangle("cw-body", symbol.Box.X, symbol.Box.Y, symbol.Box.Width, symbol.Box.Height, Ink);
                break;
        }

        svg.EndGroup();
    }

    private static void Square(SvgWriter svg, Symbol symbol) =>
        svg.Rectangle("cw-body", symbol.Box.X, symbol.Box.Y, symbol.Box.Width, symbol.Box.Height, Paper, Ink, 1.6);

    /// <summary>The line does not go through it.</summary>
    private static void Gap(SvgWriter svg, Symbol symbol) =>
        svg.Rectangle("cw-gap", symbol.Box.X, symbol.Box.Y, symbol.Box.Width, symbol.Box.Height, Paper);

    private static void Stroke(SvgWriter svg, double x, double y, string data, double width) =>
        svg.Path("cw-stroke", Status.Of(x, y, 1, data), stroke: Ink, width: width);
}
