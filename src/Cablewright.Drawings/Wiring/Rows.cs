using Cablewright.Contract.Assessments;
using Cablewright.Drawings.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Wiring;

/// <summary>What a symbol stands for; drawn after IEC 60617 where it has one.</summary>
internal enum SymbolKind
{
    Battery,
    Alternator,
    Converter,
    Capacitor,
    Amplifier,
    Frame,
    Fuse,
    Relay,
    Diode,
    Charger,
    Block,
}

/// <summary>A vertical line on which symbols stand: a lane of the tree, or further right a bus.</summary>
internal sealed class Track
{
    /// <summary>Which lane of the tree, or which of the buses.</summary>
    public int Number { get; set; }

    public bool IsBus { get; init; }
}

/// <summary>A part of a row: a few words, and the symbol beside which they stand.</summary>
/// <param name="Words">The words.</param>
/// <param name="IsStrong">Whether they are what is to be read first.</param>
internal sealed record Item(string Words, bool IsStrong)
{
    public SymbolKind? Symbol { get; init; }

    /// <summary>The symbol stands between the row's lane and the frame, not on the lane.</summary>
    public bool IsAcross { get; init; }

    /// <summary>A symbol that has a direction points up.</summary>
    public bool PointsUp { get; init; }

    /// <summary>The frame symbol stands at the far end.</summary>
    public bool EndsInFrame { get; init; }
}

/// <summary>
/// A row of the drawing. Every part and every run has its own, with its symbols left and its words right, so that nothing can lie
/// upon anything else.
/// </summary>
/// <param name="track">Where its symbols stand.</param>
/// <param name="items">What it shows; nothing where it only lets a line pass to the side.</param>
internal sealed class Row(Track track, IReadOnlyList<Item> items)
{
    public Track Track => track;

    public IReadOnlyList<Item> Items => items;

    /// <summary>The part that it shows, which findings may be about.</summary>
    public Part? Part { get; init; }

    /// <summary>Where the run lies that it shows.</summary>
    public Route? Route { get; init; }

    public double Top { get; set; }

    public double Height { get; set; }
}

/// <summary>Where in a row a line starts or ends.</summary>
internal enum Anchor
{
    Top,
    Middle,
    Bottom,
}

/// <summary>The end of a line.</summary>
internal readonly record struct Point(Row Row, Anchor Anchor);

/// <summary>A line along a track, or from one track to another.</summary>
/// <param name="Side">Of the supply or of the return.</param>
/// <param name="From">The row where it starts.</param>
/// <param name="To">The row where it ends; the same where it leads from one track to another.</param>
/// <param name="Start">The track where it starts.</param>
/// <param name="End">The track where it ends.</param>
internal sealed record Wire(Side Side, Point From, Point To, Track Start, Track End);

/// <summary>What stands in rows, in words.</summary>
internal static class RowWords
{
    /// <summary>The row of a run, drawn from the end that is further up.</summary>
    public static Row OfRun(RunResult run, Track track, bool isFromAbove, UnitSystem units, Part part)
    {
        FuseResult? above = isFromAbove ? run.Fuse : run.FarFuse, below = isFromAbove ? run.FarFuse : run.Fuse;
        var items = new List<Item>();
        if (above is not null) items.Add(OfFuse(above));
        if (run.Isolator is { } isolator) items.Add(OfIsolator(isolator, isFromAbove));
        bool isChosen = run.Conductor.Decided is Decided.Chosen;
        string length = Figures.Length(run.LengthMetres, units);
        items.Add(new Item((isChosen ? "USE " : "") + $"{length} of {Figures.Conductor(run.Conductor)}", isChosen));
        items.Add(new Item(
            $"{Names.Clean(run.Name ?? run.Id)}: {Figures.Amps(run.PeakCurrentAmps)}, {Figures.Volts(run.DropVolts)} lost, "
            + Figures.Place(run.Route),
            false));
        if (below is not null) items.Add(OfFuse(below));
        return new Row(track, items) { Part = part, Route = run.Route };
    }

    private static Item OfFuse(FuseResult fuse)
    {
        bool isChosen = fuse.Decided is Decided.Chosen;
        return new Item((isChosen ? "FIT fuse " : "Fuse ") + Figures.Fuse(fuse), isChosen) { Symbol = SymbolKind.Fuse };
    }

    private static Item OfIsolator(IsolatorResult isolator, bool isFromAbove)
    {
        (string word, SymbolKind symbol) = isolator.Kind switch
        {
            IsolatorKind.Relay => ("Isolating relay", SymbolKind.Relay),
            IsolatorKind.Diode => ("Isolating diode", SymbolKind.Diode),
            _ => ("DC-DC charger", SymbolKind.Charger),
        };
        string rated = isolator.RatedAmps is { } amps ? " " + Figures.Amps(amps) : "";
        return new Item(word + rated, false) { Symbol = symbol, PointsUp = !isFromAbove };
    }
}
