using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Wiring;

/// <summary>A part of the picture's area.</summary>
internal readonly record struct Box(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public double MiddleX => X + Width / 2;

    public double MiddleY => Y + Height / 2;

    /// <summary>A box about a point.</summary>
    public static Box About(double x, double y, double width, double height) => new(x - width / 2, y - height / 2, width, height);
}

/// <summary>A symbol in its place.</summary>
internal sealed record Symbol(SymbolKind Kind, Box Box, bool PointsUp);

/// <summary>A line of text in its place.</summary>
/// <param name="Box">What it takes up at most.</param>
/// <param name="Words">What it says.</param>
/// <param name="Size">Height of the letters.</param>
/// <param name="IsStrong">Whether it is bold.</param>
internal sealed record Label(Box Box, string Words, double Size, bool IsStrong)
{
    /// <summary>The whole of a text that is shortened.</summary>
    public string? Whole { get; init; }

    /// <summary>The class of its look.</summary>
    public string Class { get; init; } = "cw-label";
}

/// <summary>A straight line, across or down.</summary>
internal sealed record Segment(double X1, double Y1, double X2, double Y2, Side Side);

/// <summary>The sign of a finding in its place.</summary>
internal sealed record MarkSign(Box Box, Severity Severity, string Sign);

/// <summary>One of the three lights in its place.</summary>
internal sealed record Light(Box Box, Verdict Verdict);

/// <summary>What is drawn for one row, so that a page can style or find it.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Classes">Its classes.</param>
/// <param name="Box">The row.</param>
internal sealed record RowShape(string? Id, string Classes, Box Box)
{
    public List<Symbol> Symbols { get; } = [];

    public List<Label> Labels { get; } = [];

    public MarkSign? Mark { get; set; }

    /// <summary>Where it lies, where that is to be shown.</summary>
    public Route? Route { get; init; }
}

/// <summary>Everything of a wiring drawing with its place, before anything is drawn.</summary>
internal sealed class WiringLayout
{
    public double Width { get; set; }

    public double Height { get; set; }

    public List<Light> Lights { get; } = [];

    public List<MarkSign> NoteMarks { get; } = [];

    /// <summary>Title, names of the lights, notes and what stands at the foot.</summary>
    public List<Label> Labels { get; } = [];

    public List<Segment> Segments { get; } = [];

    public List<RowShape> Rows { get; } = [];

    /// <summary>Where lines are joined.</summary>
    public List<(double X, double Y, Side Side)> Dots { get; } = [];
}
