using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Wiring;

/// <summary>
/// The wiring as rows from top to bottom: from the charging place outwards, each branch before the line goes on, each amplifier
/// with its way back below it. A run that closes a loop or meets others ends at a bus to the right of the tree, which draws out
/// the terminal that it leads to.
/// </summary>
internal sealed class RowPlan
{
    /// <summary>A part stands between its supply terminal and its return terminal, one lane from each.</summary>
    private const int AcrossLanes = 2;

    private readonly WiringGraph graph;
    private readonly PartRows parts;
    private readonly UnitSystem units;
    private readonly HashSet<Link> drawn = [];
    private readonly HashSet<Terminal> claimed = [];
    private readonly Dictionary<Terminal, Bus> buses = [];
    private readonly Dictionary<Row, int> numbers = [];
    private readonly List<Track> lanes = [];
    private readonly List<Row> rows = [];
    private readonly List<Wire> wires = [];

    private RowPlan(Build build, Assessment answer)
    {
        graph = WiringGraph.Of(build, answer);
        parts = new PartRows(build, answer, graph);
        units = build.Units ?? UnitSystem.Us;
        foreach (Terminal root in graph.Roots.Concat(graph.Returns))
        {
            if (claimed.Add(root)) Draw(root, 0, null);
        }

        BusTracks = DrawBuses();
    }

    public IReadOnlyList<Row> Rows => rows;

    public IReadOnlyList<Wire> Wires => wires;

    /// <summary>How many lanes the tree has.</summary>
    public int Lanes => lanes.Count;

    /// <summary>How many tracks the buses have.</summary>
    public int BusTracks { get; }

    public static RowPlan Of(Build build, Assessment answer) => new(build, answer);

    /// <summary>Draws what stands at a terminal and all that follows on it.</summary>
    private void Draw(Terminal terminal, int lane, Point? arrival)
    {
        Link[] branches = Branches(terminal);
        Link[] loops = [.. graph.At(terminal).Where(link => !drawn.Contains(link))];
        Link[] closing = [.. loops.Where(link => buses.ContainsKey(link.Other(terminal)))];
        foreach (Link link in closing) drawn.Add(link);
        var line = new List<Point>();
        if (arrival is { } above) line.Add(above);
        if (loops.Length > closing.Length) line.Add(Open(terminal, lane));
        if (terminal.Side is Side.Supply) Parts(terminal.Place, lane, line);
        else if (graph.KindOf(terminal.Place) is PlaceKind.Junction)
            line.Add(Middle(Add(PartRows.Ground(terminal.Place, Lane(lane)))));
        Link[] onward = [.. closing, .. branches];
        foreach ((int i, Link link) in onward.Index())
            line.Add(Branch(terminal, link, lane, i == onward.Length - 1 ? lane : lane + 1));
        if (line.Count > 1) wires.Add(new Wire(terminal.Side, line[0], line[^1], Lane(lane), Lane(lane)));
    }

    /// <summary>
    /// The runs that lead on from a terminal; what they lead to is drawn from here and from nowhere else. A way back leads to the
    /// body or to a place where several meet.
    /// </summary>
    private Link[] Branches(Terminal terminal)
    {
        IEnumerable<Link> branches = terminal.Side is Side.Supply
            ? graph.Branches(terminal)
            : graph.At(terminal).Where(link => link.EndsAtBody
                || (graph.KindOf(link.Other(terminal).Place) is PlaceKind.Junction && !claimed.Contains(link.Other(terminal))))
                .DistinctBy(link => link.EndsAtBody ? (object)link : link.Other(terminal));
        Link[] mine = [.. branches.Where(drawn.Add)];
        foreach (Link link in mine) claimed.Add(link.Other(terminal));
        return mine;
    }

    /// <summary>A run to the next place, and that place.</summary>
    /// <returns>Where it leaves the line.</returns>
    private Point Branch(Terminal from, Link link, int lane, int next)
    {
        Row row = Add(Run(link, from, Lane(next)));
        if (next != lane) wires.Add(new Wire(from.Side, new(row, Anchor.Top), new(row, Anchor.Top), Lane(lane), Lane(next)));
        wires.Add(new Wire(from.Side, new(row, Anchor.Top), new(row, Anchor.Bottom), Lane(next), Lane(next)));
        if (link.EndsAtBody) EndAtBody(from.Side, next);
        else if (buses.TryGetValue(link.Other(from), out Bus? bus)) Close(bus, from.Side, next);
        else Draw(link.Other(from), next, new Point(row, Anchor.Bottom));
        return new Point(row, Anchor.Top);
    }

    private void EndAtBody(Side side, int lane)
    {
        Row frame = Add(PartRows.Body(Lane(lane)));
        wires.Add(new Wire(side, new(frame, Anchor.Top), Middle(frame), Lane(lane), Lane(lane)));
    }

    /// <summary>Takes a terminal out to a bus of its own, since runs come back to it from further down.</summary>
    private Point Open(Terminal terminal, int lane)
    {
        Row port = Add(new Row(Lane(lane), []));
        var bus = new Bus(terminal.Side, new Track { IsBus = true }, port);
        wires.Add(new Wire(terminal.Side, Middle(port), Middle(port), Lane(lane), bus.Track));
        buses[terminal] = bus;
        return Middle(port);
    }

    /// <summary>Ends a run at the bus of a terminal further up.</summary>
    private void Close(Bus bus, Side side, int lane)
    {
        Row port = Add(new Row(Lane(lane), []));
        bus.Last = port;
        wires.Add(new Wire(side, new(port, Anchor.Top), Middle(port), Lane(lane), Lane(lane)));
        wires.Add(new Wire(side, Middle(port), Middle(port), bus.Track, Lane(lane)));
    }

    /// <summary>What stands at a place: alternator, capacitors, then battery or amplifier with its way back.</summary>
    private void Parts(string place, int lane, List<Point> line)
    {
        foreach (Row row in parts.At(place, Lane(lane)))
        {
            Point here = Middle(Add(row));
            line.Add(here);
            if (!row.Items[0].IsAcross) continue;
            Track beside = Lane(lane + 1), beyond = Lane(lane + AcrossLanes);
            wires.Add(new Wire(Side.Supply, here, here, Lane(lane), beside));
            wires.Add(new Wire(Side.Return, here, here, beside, beyond));
            if (row.Items[0].EndsInFrame || !claimed.Add(new Terminal(place, Side.Return))) continue;
            Draw(new Terminal(place, Side.Return), lane + AcrossLanes, here);
        }
    }

    private Row Run(Link link, Terminal above, Track track) => RowWords.OfRun(
        link.Run, track, isFromAbove: link.From == above, units, new Part(PartKind.Run, link.Run.Id));

    private Row Add(Row row)
    {
        numbers[row] = rows.Count;
        rows.Add(row);
        return row;
    }

    private static Point Middle(Row row) => new(row, Anchor.Middle);

    private Track Lane(int number)
    {
        while (lanes.Count <= number) lanes.Add(new Track { Number = lanes.Count });
        return lanes[number];
    }

    /// <summary>Draws the buses, each on the first track that is free all along it.</summary>
    private int DrawBuses()
    {
        var ends = new List<int>();
        foreach (Bus bus in buses.Values.OrderBy(bus => numbers[bus.First]))
        {
            wires.Add(new Wire(bus.Side, Middle(bus.First), Middle(bus.Last), bus.Track, bus.Track));
            int free = ends.FindIndex(end => end < numbers[bus.First]);
            if (free < 0)
            {
                free = ends.Count;
                ends.Add(0);
            }

            ends[free] = numbers[bus.Last];
            bus.Track.Number = free;
        }

        return ends.Count;
    }

    /// <summary>A terminal drawn out along a track of its own.</summary>
    private sealed class Bus(Side side, Track track, Row first)
    {
        public Side Side => side;

        public Track Track => track;

        /// <summary>Where it leaves its terminal.</summary>
        public Row First { get; } = first;

        /// <summary>Where the last run comes back to it.</summary>
        public Row Last { get; set; } = first;
    }
}
