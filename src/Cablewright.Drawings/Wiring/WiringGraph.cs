using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Vocabulary;
using static Cablewright.Contract.ContractLimits;

namespace Cablewright.Drawings.Wiring;

/// <summary>What stands at a place.</summary>
internal enum PlaceKind
{
    Battery,
    Amplifier,
    Charging,
    Junction,
}

/// <summary>One end of a place: a battery and an amplifier have a supply and a return terminal, a junction has one.</summary>
/// <param name="Place">The id of the place.</param>
/// <param name="Side">Which terminal.</param>
internal readonly record struct Terminal(string Place, Side Side);

/// <summary>A run as a link between terminals.</summary>
/// <param name="run">The run.</param>
/// <param name="from">Where it starts.</param>
/// <param name="to">Where it ends.</param>
internal sealed class Link(RunResult run, Terminal from, Terminal to)
{
    public RunResult Run => run;

    public Terminal From => from;

    public Terminal To => to;

    /// <summary>The body is drawn anew, as a frame symbol, wherever a run ends at it.</summary>
    public bool EndsAtBody => From.Place == BodyPlace || To.Place == BodyPlace;

    public Terminal Other(Terminal end) => From == end ? To : From;
}

/// <summary>The wiring as a graph, and the tree in which its supply side is drawn, from the charging place outwards.</summary>
internal sealed class WiringGraph
{
    private readonly Dictionary<Terminal, List<Link>> links = [];
    private readonly Dictionary<Terminal, Link> parents = [];
    private readonly HashSet<string> batteries;
    private readonly HashSet<string> amplifiers;

    private WiringGraph(Build build, Assessment answer)
    {
        batteries = [.. answer.Supply.Batteries.Select(battery => battery.Id)];
        amplifiers = [.. answer.Amplifiers.Select(amplifier => amplifier.Id)];
        Vehicle? vehicle = build.Vehicle;
        string? charged = vehicle?.Alternator?.At ?? vehicle?.Converter?.At
            ?? answer.Supply.Batteries.Select(battery => battery.Id).FirstOrDefault();
        if (vehicle is { Alternator: not null } or { Converter: not null }) ChargingPlace = charged;
        foreach (RunResult run in answer.Runs) Add(new Link(run, new(run.From, run.Side), new(run.To, run.Side)));
        string?[] starts = [charged, .. answer.Supply.Batteries.Select(battery => battery.Id)];
        Roots = [.. starts.OfType<string>().Select(place => new Terminal(place, Side.Supply)), .. links.Keys];
        Roots = [.. Roots.Where(Reach)];
    }

    /// <summary>Where the alternator or the converter stands, if there is one.</summary>
    public string? ChargingPlace { get; }

    /// <summary>Whether an alternator without a run back has its case on the engine, since runs end there.</summary>
    public bool HasAlternatorOnEngine =>
        links.ContainsKey(new Terminal(EnginePlace, Side.Return))
        && ChargingPlace is { } place
        && (KindOf(place) is PlaceKind.Battery || At(new Terminal(place, Side.Return)).Count == 0);

    /// <summary>The terminals from which everything else is reached: one, unless parts are joined by nothing.</summary>
    public IReadOnlyList<Terminal> Roots { get; }

    /// <summary>Every return terminal, in case one is reached from nowhere.</summary>
    public IEnumerable<Terminal> Returns => links.Keys.Where(terminal => terminal.Side is Side.Return);

    /// <summary>The wiring of an answer.</summary>
    public static WiringGraph Of(Build build, Assessment answer) => new(build, answer);

    public PlaceKind KindOf(string place) =>
        batteries.Contains(place) ? PlaceKind.Battery
        : amplifiers.Contains(place) ? PlaceKind.Amplifier
        : place == ChargingPlace ? PlaceKind.Charging
        : PlaceKind.Junction;

    /// <summary>Every run at a terminal.</summary>
    public IReadOnlyList<Link> At(Terminal terminal) => links.GetValueOrDefault(terminal, []);

    /// <summary>The runs by which further places are reached, the one that leads to the most last: it goes straight on.</summary>
    public IReadOnlyList<Link> Branches(Terminal terminal) =>
        [.. At(terminal).Where(link => parents.GetValueOrDefault(link.Other(terminal)) == link)
            .OrderBy(link => Size(link, terminal))];

    /// <summary>The runs from where the supply starts to a place, in that order.</summary>
    public IReadOnlyList<Link> WayTo(string place)
    {
        var way = new List<Link>();
        Terminal here = new(place, Side.Supply);
        while (parents.TryGetValue(here, out Link? link) && link != Nothing)
        {
            way.Add(link);
            here = link.Other(here);
        }

        way.Reverse();
        return way;
    }

    /// <summary>The runs by which the current of a place comes back to the body or a battery, the fewest of them.</summary>
    public IReadOnlyList<Link> WayBackFrom(string place)
    {
        var start = new Terminal(place, Side.Return);
        var ways = new Dictionary<Terminal, IReadOnlyList<Link>> { [start] = [] };
        var next = new Queue<Terminal>([start]);
        while (next.TryDequeue(out Terminal terminal))
        {
            foreach (Link link in At(terminal))
            {
                Terminal other = link.Other(terminal);
                if (!ways.TryAdd(other, [.. ways[terminal], link])) continue;
                if (other.Place == BodyPlace || KindOf(other.Place) is PlaceKind.Battery) return ways[other];
                next.Enqueue(other);
            }
        }

        return [];
    }

    private void Add(Link link)
    {
        foreach (Terminal end in new[] { link.From, link.To }.Distinct().Where(end => end.Place != BodyPlace))
        {
            if (!links.TryGetValue(end, out List<Link>? there)) links[end] = there = [];
            there.Add(link);
        }
    }

    /// <summary>Reaches all that is supplied from a place, the nearest first; <c>false</c> where it was reached before.</summary>
    private bool Reach(Terminal root)
    {
        if (root.Side is Side.Return || parents.ContainsKey(root)) return false;
        parents[root] = Nothing;
        var next = new Queue<Terminal>([root]);
        while (next.TryDequeue(out Terminal terminal))
        {
            foreach (Link link in At(terminal).Where(link => !link.EndsAtBody))
            {
                if (parents.TryAdd(link.Other(terminal), link)) next.Enqueue(link.Other(terminal));
            }
        }

        return true;
    }

    private int Size(Link link, Terminal from)
    {
        var next = new Stack<Terminal>([link.Other(from)]);
        int size = 0;
        while (next.TryPop(out Terminal terminal))
        {
            size++;
            foreach (Link further in At(terminal).Where(each => parents.GetValueOrDefault(each.Other(terminal)) == each))
                next.Push(further.Other(terminal));
        }

        return size;
    }

    /// <summary>What leads to a root.</summary>
    private static readonly Link Nothing = new(null!, default, default);
}
