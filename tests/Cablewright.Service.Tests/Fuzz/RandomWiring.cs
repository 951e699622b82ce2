using System.Text.Json.Nodes;
using Cablewright.Contract.Builds;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Random places of a build, and runs that join them as is legal.</summary>
/// <remarks>
/// Islands of the supply side, each with a battery, are joined by isolators, in trees and in rings; within an island runs make a
/// tree, loops, and runs side by side. Returns lead to the body, to batteries, to the engine, or meet on the way.
/// </remarks>
internal sealed class RandomWiring
{
    private readonly Dice dice;
    private readonly RandomMembers members;
    private readonly Names names;
    private readonly Names runNames;
    private readonly List<Link> links = [];
    private readonly List<List<string>> islands = [];
    private readonly HashSet<string> junctions = [];

    public RandomWiring(Dice dice, Temper temper, BuildSize size)
    {
        this.dice = dice;
        members = new RandomMembers(dice, temper);
        names = new Names(dice, temper);
        runNames = new Names(dice, temper);
        Batteries = size.Batteries == 0
            ? [names.Take("battery")]
            : [.. Enumerable.Range(0, size.Batteries).Select(_ => names.New("battery"))];
        Amplifiers = [.. Enumerable.Range(0, size.Amplifiers).Select(_ => names.New("amp"))];
        MakeIslands();
        ChargingPlace = size.ChargesAtPlace ? MakeChargingPlace() : dice.OneOf(null, null, dice.OneOf(Batteries));
        foreach (string amplifier in Amplifiers) Feed(amplifier);
        SecureJunctions();
        AddLoops(size.Loops);
        JoinIslands();
        PointAwayFromAlternator();
        MakeReturns();
    }

    public IReadOnlyList<string> Batteries { get; }

    public IReadOnlyList<string> Amplifiers { get; }

    /// <summary>Where the alternator stands, if anything says so.</summary>
    public string? ChargingPlace { get; }

    /// <summary>The places that supply runs only name.</summary>
    public IReadOnlyCollection<string> Junctions => junctions;

    /// <summary>Every place of the supply side.</summary>
    public string[] SupplyPlaces => [.. links.Where(link => !link.IsReturn).SelectMany(link => link.Ends).Distinct()];

    /// <summary>The runs as a build states them, with nothing said of conductors and fuses yet.</summary>
    public IEnumerable<JsonObject> Runs() => links.Select(link =>
    {
        JsonObject run = members.Of<Run>();
        run["id"] = runNames.New(link.IsReturn ? "ground" : "feed");
        run["from"] = link.From;
        run["to"] = link.To;
        run.Remove("side");
        if (NeedsSide(link) || dice.Chance(0.2)) run["side"] = link.IsReturn ? "return" : "supply";
        if (link.HasIsolator) run["isolator"] = RandomIsolator(link);
        return run;
    });

    private JsonObject RandomIsolator(Link link)
    {
        string kind = link.IsEven ? "relay" : dice.OneOf("relay", "diode", "dc-dc-charger");
        JsonObject isolator = kind == "dc-dc-charger" ? members.Of<Isolator>("ratedCurrent") : members.Of<Isolator>();
        isolator["kind"] = kind;
        if (kind != "relay") isolator.Remove("contactResistance");
        if (kind != "diode") isolator.Remove("forwardVoltage");
        if (kind == "dc-dc-charger") return isolator;
        isolator.Remove("outputVoltage");
        isolator.Remove("efficiency");
        return isolator;
    }

    /// <summary>Whether the places of a run tell nothing of its side, or the wrong thing.</summary>
    private bool NeedsSide(Link link)
    {
        bool isGround = link.Touches("body") || link.Touches("engine");
        bool tellsSupply = Batteries.Contains(link.From) || link.From == ChargingPlace || Amplifiers.Contains(link.To);
        bool tellsReturn = Amplifiers.Contains(link.From);
        return !isGround && (tellsSupply == tellsReturn ? !dice.Chance(0.02) : tellsReturn != link.IsReturn);
    }

    private void MakeIslands()
    {
        int count = dice.Chance(0.35) ? 1 : dice.Between(1, Batteries.Count);
        for (int i = 0; i < count; i++) islands.Add([]);
        for (int i = 0; i < Batteries.Count; i++) Join(islands[i < count ? i : dice.Below(count)], Batteries[i]);
        for (int left = dice.Below(Amplifiers.Count + 1); left > 0; left--) Join(dice.OneOf(islands), NewJunction());
    }

    private string NewJunction()
    {
        string junction = names.New("block");
        junctions.Add(junction);
        return junction;
    }

    private string MakeChargingPlace()
    {
        string place = names.New("alternator");
        Join(dice.OneOf(islands), place);
        return place;
    }

    /// <summary>Joins a new place to an island.</summary>
    private void Join(List<string> island, string place)
    {
        if (island.Count > 0) AddSupply(dice.OneOf(island), place);
        island.Add(place);
    }

    private void Feed(string amplifier)
    {
        List<string> island = dice.OneOf(islands);
        AddSupply(dice.OneOf(island), amplifier);
        // Now and then a later amplifier is fed from this one's terminal, or a loop passes over it.
        if (dice.Chance(0.15)) island.Add(amplifier);
    }

    private void AddSupply(string from, string to) => links.Add(dice.Chance(0.15) ? new Link(to, from) : new Link(from, to));

    /// <summary>A junction that one run alone names joins nothing.</summary>
    private void SecureJunctions()
    {
        foreach (List<string> island in islands)
        {
            foreach (string junction in island.Where(junctions.Contains))
            {
                if (links.Count(link => link.Touches(junction)) < 2)
                    AddSupply(junction, dice.OneOf([.. island.Where(place => place != junction)]));
            }
        }
    }

    private void AddLoops(int count)
    {
        for (; count > 0; count--)
        {
            string[] ends = dice.Some(2, dice.OneOf(islands));
            if (ends.Length == 2 && dice.Chance(0.7)) AddSupply(ends[0], ends[1]);
            else links.Add(dice.OneOf(links));
        }
    }

    private void JoinIslands()
    {
        for (int i = 1; i < islands.Count; i++)
        {
            bool isTouched = links.Any(link => link.Touches(islands[i][0]));
            if (!isTouched || dice.Chance(0.95)) Isolate(i, dice.Below(i));
        }

        if (islands.Any(island => !links.Any(link => link.Touches(island[0])))) Isolate(0, islands.Count - 1);
        while (islands.Count > 1 && dice.Chance(0.25))
        {
            int[] pair = dice.Some(2, [.. Enumerable.Range(0, islands.Count)]);
            Isolate(pair[0], pair[1]);
        }
    }

    private void Isolate(int one, int other) => links.Add(new Link(EndIn(one), EndIn(other)) { HasIsolator = true });

    private string EndIn(int island) =>
        dice.Chance(0.6) ? dice.OneOf([.. islands[island].Where(Batteries.Contains)]) : dice.OneOf(islands[island]);

    /// <summary>Turns what isolates so that it leads from islands nearer to the alternator to those further off.</summary>
    private void PointAwayFromAlternator()
    {
        var steps = new Dictionary<int, int> { [IslandOf(FirstCharged())] = 0 };
        for (int step = 0; step < islands.Count; step++)
        {
            foreach (Link link in links.Where(link => link.HasIsolator))
            {
                int from = IslandOf(link.From), to = IslandOf(link.To);
                if (steps.GetValueOrDefault(from, -1) == step) steps.TryAdd(to, step + 1);
                if (steps.GetValueOrDefault(to, -1) == step) steps.TryAdd(from, step + 1);
            }
        }

        for (int i = 0; i < links.Count; i++)
        {
            if (!links[i].HasIsolator) continue;
            int from = steps.GetValueOrDefault(IslandOf(links[i].From)), to = steps.GetValueOrDefault(IslandOf(links[i].To));
            // A relay alone may point either way.
            if (from > to) links[i] = dice.Chance(0.1) ? links[i] with { IsEven = true } : links[i].Turned();
        }
    }

    private int IslandOf(string place) => islands.FindIndex(island => island.Contains(place));

    /// <summary>The battery that the alternator charges: the one with the fewest runs between.</summary>
    private string FirstCharged()
    {
        if (ChargingPlace is null) return Batteries[0];
        var seen = new List<string> { ChargingPlace };
        for (int done = 0; done < seen.Count;)
        {
            if (Batteries.FirstOrDefault(seen[done..].Contains) is { } found) return found;
            string[] ring = [.. seen[done..]];
            done = seen.Count;
            seen.AddRange(links.Where(link => ring.Any(link.Touches)).SelectMany(link => link.Ends)
                .Where(place => !Amplifiers.Contains(place)).Except(seen).Distinct());
        }

        throw new InvalidOperationException("The alternator's place is joined to a battery when it is made.");
    }

    private void MakeReturns()
    {
        string[] meetings = [.. Enumerable.Range(0, dice.Chance(0.3) ? dice.Between(1, 3) : 0).Select(_ => names.New("star"))];
        foreach (string meeting in meetings) AddReturn(meeting, Ground());
        foreach (string amplifier in Amplifiers)
        {
            for (int runs = dice.Weighted(35, 55, 10); runs > 0; runs--)
                AddReturn(amplifier, meetings.Length > 0 && dice.Chance(0.5) ? dice.OneOf(meetings) : Ground());
        }

        foreach (string meeting in meetings.Where(meeting => links.Count(link => link.Touches(meeting)) < 2))
            AddReturn(meeting, Ground());
        foreach (string battery in Batteries.Where(_ => dice.Chance(0.15))) AddReturn(battery, "body");
        if (Batteries.Count > 1 && dice.Chance(0.15)) AddReturn(Batteries[0], Batteries[1]);
        if (meetings.Length > 1 && dice.Chance(0.3)) AddReturn(meetings[0], meetings[1]);
        if (dice.Chance(0.2)) MakeEngine();
    }

    /// <summary>A strap, a battery's cable or both, and now and then what else is grounded there.</summary>
    private void MakeEngine()
    {
        bool hasStrap = dice.Chance(0.6);
        if (hasStrap) AddReturn("engine", "body");
        if (!hasStrap || dice.Chance(0.6)) AddReturn(dice.OneOf(Batteries), "engine");
        if (ChargingPlace is { } place && dice.Chance(0.3)) AddReturn(place, "engine");
        if (dice.Chance(0.2)) AddReturn(dice.OneOf(Amplifiers), "engine");
    }

    private string Ground() => dice.Chance(0.75) ? "body" : dice.OneOf(Batteries);

    private void AddReturn(string from, string to) =>
        links.Add(dice.Chance(0.1) ? new Link(to, from) { IsReturn = true } : new Link(from, to) { IsReturn = true });

    /// <summary>One run.</summary>
    private sealed record Link(string From, string To)
    {
        public bool IsReturn { get; init; }

        public bool HasIsolator { get; init; }

        /// <summary>Only what lets current pass both ways may stand here.</summary>
        public bool IsEven { get; init; }

        public string[] Ends => [From, To];

        public bool Touches(string place) => From == place || To == place;

        public Link Turned() => this with { From = To, To = From };
    }
}
