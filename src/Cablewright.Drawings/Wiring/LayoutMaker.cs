using System.Globalization;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Drawings.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Wiring;

/// <summary>
/// Gives everything its place: lights and notes first, then the rows, their symbols left, their words right of every line.
/// </summary>
internal sealed class LayoutMaker
{
    /// <summary>The width of a telephone; a drawing is wider only where so many lines run side by side.</summary>
    private const double Narrowest = 360;

    private const double Margin = 10;
    private const double LanePitch = 24;
    private const double BusPitch = 16;
    private const double MarkColumn = 22;
    private const double LeastWords = 190;
    private const double TextSize = 12;
    private const double SmallSize = 11;
    private const double TitleSize = 14;
    private const double LineHeight = 1.3;
    private const double RowPadding = 5;
    private const double PortHeight = 10;
    private const double SymbolRoom = 28;
    private const double FrameRoom = 34;
    private const int MostNotes = 6;

    private readonly WiringLayout layout = new();
    private readonly Build build;
    private readonly Assessment answer;
    private readonly RowPlan plan;
    private readonly Marks marks;
    private readonly double busesX;
    private readonly double wordsX;
    private double y = Margin;

    private LayoutMaker(Build build, Assessment answer)
    {
        (this.build, this.answer) = (build, answer);
        plan = RowPlan.Of(build, answer);
        marks = Marks.Of(build, answer);
        busesX = Margin + plan.Lanes * LanePitch + BusPitch / 2;
        wordsX = Margin + plan.Lanes * LanePitch + plan.BusTracks * BusPitch + MarkColumn;
        layout.Width = Math.Max(Narrowest, wordsX + LeastWords + Margin);
    }

    /// <summary>The layout of an answer's wiring.</summary>
    public static WiringLayout Of(Build build, Assessment answer)
    {
        var maker = new LayoutMaker(build, answer);
        maker.Title();
        maker.Lights();
        maker.Notes();
        maker.Rows();
        maker.Wires();
        maker.Foot();
        maker.layout.Height = maker.y + Margin;
        return maker.layout;
    }

    private void Title()
    {
        if (string.IsNullOrWhiteSpace(build.Name)) return;
        string name = Names.Clean(build.Name);
        IReadOnlyList<string> lines = Lines.Of(name, layout.Width - 2 * Margin, TitleSize, true, 3);
        bool isWhole = string.Concat(lines).Replace(" ", "").Length == name.Replace(" ", "").Length;
        foreach (string line in lines)
            Put(layout.Labels, Names.Isolated(line), Margin, TitleSize, true, "cw-title", isWhole ? null : Names.Isolated(name));
        y += 4;
    }

    private void Lights()
    {
        (string Name, Verdict Verdict)[] lights =
        [
            ("Safety", answer.Verdicts.Safety), ("Performance", answer.Verdicts.Performance), ("Supply", answer.Verdicts.Supply),
        ];
        const double Size = 22;
        double step = (Narrowest - 2 * Margin) / lights.Length, top = y;
        foreach ((int i, (string name, Verdict verdict)) in lights.Index())
        {
            double x = Margin + i * step;
            layout.Lights.Add(new Light(new Box(x, top + 6, Size, Size), verdict));
            y = top;
            Put(layout.Labels, name, x + Size + 5, SmallSize, false, "cw-light");
            Put(layout.Labels, verdict.Word().ToUpperInvariant(), x + Size + 5, TextSize, true, "cw-light cw-" + verdict.Word());
        }

        y = top + 40;
    }

    /// <summary>What is wrong, in words, by the number that stands at its place.</summary>
    private void Notes()
    {
        const double Size = 16, Indent = 24;
        foreach ((int i, Finding finding) in marks.Notes.Take(MostNotes).Index())
        {
            layout.NoteMarks.Add(new MarkSign(new Box(Margin, y, Size, Size), finding.Severity, Number(i + 1)));
            foreach (string line in Lines.Of(
                Names.Clean(finding.Message), layout.Width - 2 * Margin - Indent, SmallSize, false, int.MaxValue))
                Put(layout.Labels, line, Margin + Indent, SmallSize, false, "cw-note");
            y += 4;
        }

        int more = marks.Notes.Count - MostNotes;
        if (more > 0)
            Put(layout.Labels, $"and {Number(more)} more among the findings", Margin + Indent, SmallSize, false, "cw-note");
        if (answer.Feasibility?.Changes is [Change cure, ..])
        {
            foreach (string line in Lines.Of(
                "Cure: " + Names.Clean(cure.Message), layout.Width - 2 * Margin - Indent, SmallSize, true, int.MaxValue))
                Put(layout.Labels, line, Margin + Indent, SmallSize, true, "cw-cure");
        }

        y += 6;
    }

    private void Rows()
    {
        foreach (Row row in plan.Rows)
        {
            row.Top = y;
            var shape = new RowShape(IdOf(row.Part), ClassesOf(row), default) { Route = row.Route };
            if (row.Items.Count > 0) y += RowPadding;
            foreach (Item item in row.Items) Put(row, item, shape);
            if (row.Items.Any(item => item.IsAcross)) y = Math.Max(y, row.Top + RowPadding + FrameRoom);
            y = row.Items.Count > 0 ? y + RowPadding : row.Top + PortHeight;
            row.Height = y - row.Top;
            if (marks.At(row.Part) is { } mark) Put(mark, row, shape);
            layout.Rows.Add(shape with { Box = new Box(0, row.Top, layout.Width, row.Height) });
        }
    }

    private void Put(Row row, Item item, RowShape shape)
    {
        double top = y, size = item.IsStrong ? TextSize : SmallSize;
        foreach (string line in Lines.Of(item.Words, layout.Width - wordsX - Margin, size, item.IsStrong, int.MaxValue))
            Put(shape.Labels, line, wordsX, size, item.IsStrong, item.IsStrong ? "cw-label cw-strong" : "cw-label");
        if (item.Symbol is not { } kind) return;
        double middle = row.Top + MiddleOf(row, top), x = X(row.Track);
        if (item.IsAcross)
        {
            shape.Symbols.Add(new Symbol(kind, SizeOf(kind).At(x + LanePitch, middle), false));
            if (item.EndsInFrame) shape.Symbols.Add(Frame(x + 2 * LanePitch, middle + 4));
        }
        else
        {
            shape.Symbols.Add(kind is SymbolKind.Frame
                ? Frame(x, middle - 2)
                : new Symbol(kind, SizeOf(kind).At(x, middle), item.PointsUp));
        }

        // What stands across has its row to itself; along a run the words go on below each symbol.
        if (!item.IsAcross) y = Math.Max(y, top + (kind is SymbolKind.Frame or SymbolKind.Block ? 18 : SymbolRoom));
    }

    /// <summary>Where in a row the middle of the item is that starts at a height.</summary>
    private static double MiddleOf(Row row, double top) => top - row.Top + SymbolRoom / 2 - 3;

    private static Symbol Frame(double x, double y) => new(SymbolKind.Frame, new Box(x - 10, y, 18, 13), false);

    private void Put(Mark mark, Row row, RowShape shape)
    {
        string sign = mark.Note is { } note and <= MostNotes ? Number(note) : mark.Severity is Severity.Info ? "i" : "!";
        shape.Mark = new MarkSign(new Box(wordsX - MarkColumn + 2, row.Top + RowPadding, 16, 16), mark.Severity, sign);
    }

    private void Wires()
    {
        foreach (Wire wire in plan.Wires)
            layout.Segments.Add(new Segment(X(wire.Start), Y(wire.From), X(wire.End), Y(wire.To), wire.Side));
        foreach (Wire wire in plan.Wires.Where(wire => wire.Start != wire.End && wire.From.Anchor is Anchor.Middle))
            layout.Dots.Add((X(wire.Start), Y(wire.From), wire.Side));
    }

    private void Foot()
    {
        y += 6;
        string[] said =
        [
            .. HasChoice() ? ["USE and FIT: chosen here; everything else is as it was stated."] : (string[])[],
            .. answer.SafetyNotes.TakeLast(2), $"Ruleset {answer.Ruleset}, {answer.Id[..12]}",
        ];
        foreach (string words in said)
        {
            foreach (string line in Lines.Of(Names.Clean(words), layout.Width - 2 * Margin, SmallSize, false, int.MaxValue))
                Put(layout.Labels, line, Margin, SmallSize, false, "cw-foot");
        }
    }

    private bool HasChoice() => answer.Runs.Any(run =>
        Decided.Chosen == run.Conductor.Decided || Decided.Chosen == run.Fuse?.Decided || Decided.Chosen == run.FarFuse?.Decided);

    private void Put(
        List<Label> labels, string words, double x, double size, bool isStrong, string classes, string? whole = null)
    {
        double width = Math.Min(TextWidth.Of(words, size, isStrong), layout.Width - x);
        labels.Add(new Label(new Box(x, y, width, size * LineHeight), words, size, isStrong) { Class = classes, Whole = whole });
        y += size * LineHeight;
    }

    private double X(Track track) => track.IsBus ? busesX + track.Number * BusPitch : Margin + (track.Number + 0.5) * LanePitch;

    private static double Y(Point point) => point.Anchor switch
    {
        Anchor.Top => point.Row.Top,
        Anchor.Bottom => point.Row.Top + point.Row.Height,
        _ when point.Row.Items.Count == 0 => point.Row.Top + point.Row.Height / 2,
        _ => point.Row.Top + MiddleOf(point.Row, point.Row.Top + RowPadding),
    };

    private static string? IdOf(Part? part) => part is null
        ? null
        : $"wiring-{part.Kind.ToString().ToLowerInvariant()}{(part.Id.Length > 0 ? "-" : "")}{Names.Clean(part.Id)}";

    private string ClassesOf(Row row)
    {
        string kind = row.Part is null ? "cw-row" : "cw-row cw-" + row.Part.Kind.ToString().ToLowerInvariant();
        string route = row.Route is { } where ? " cw-" + where.Word() : "";
        return kind + route + (marks.At(row.Part) is { } mark ? " cw-has-" + mark.Severity.Word() : "");
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static SymbolSize SizeOf(SymbolKind kind) => kind switch
    {
        SymbolKind.Fuse => new(10, 22),
        SymbolKind.Relay or SymbolKind.Diode or SymbolKind.Charger => new(14, 20),
        SymbolKind.Block => new(18, 10),
        SymbolKind.Battery => new(18, 22),
        SymbolKind.Capacitor => new(8, 20),
        _ => new(22, 22),
    };

    /// <summary>How large a symbol is.</summary>
    private readonly record struct SymbolSize(double Width, double Height)
    {
        public Box At(double x, double y) => Box.About(x, y, Width, Height);
    }
}
