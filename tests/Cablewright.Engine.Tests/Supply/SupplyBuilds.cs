using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Supply;

/// <summary>How the second battery hangs on the first.</summary>
public enum Tie
{
    Alone,
    Wire,
    Relay,
    Diode,
    Charger,
}

/// <summary>
/// Random builds in which everything about the supply is given: one to three batteries, an alternator at a battery or at a place
/// of its own, amplifiers on a block or beside a battery. The same number always gives the same build.
/// </summary>
internal sealed class SupplyBuilds
{
    private static readonly string[] Sizes = ["4 AWG", "2 AWG", "1/0 AWG", "2/0 AWG", "4/0 AWG"];

    private readonly Random random;
    private readonly Tie tie;

    private SupplyBuilds(int number, Tie tie)
    {
        random = new Random(1_000_003 * (int)tie + number);
        this.tie = tie;
    }

    public static Build Make(int number, Tie tie) => new SupplyBuilds(number, tie).Make();

    /// <summary>A battery with everything given.</summary>
    public static Battery AnyBattery(Random random, string id, Chemistry? chemistry = null) => new()
    {
        Id = id,
        Chemistry = chemistry ?? (Chemistry)random.Next(4),
        CapacityAmpHours = 20 + 120 * random.NextDouble(),
        InternalOhms = 0.003 + 0.015 * random.NextDouble(),
        StateOfCharge = 0.6 + 0.4 * random.NextDouble(),
        Polarisation = [.. Enumerable.Range(0, random.Next(3)).Select(part =>
            new Polarisation(0.001 + 0.006 * random.NextDouble(), (part == 0 ? 0.03 : 1) * (1 + random.NextDouble())))],
    };

    private Build Make()
    {
        string[] ids = ["starter", .. tie == Tie.Alone ? [] : random.Next(3) == 0 ? ["rear", "spare"] : new[] { "rear" }];
        bool isApart = random.Next(3) == 0;
        string[] places = [.. ids, "block"];
        Amplifier[] amplifiers = [.. Enumerable.Range(0, random.Next(1, 4)).Select(AnyAmplifier)];
        string[] feedsFrom = [.. amplifiers.Select((_, i) => i == 0 ? "block" : places[random.Next(places.Length)])];
        List<Run> runs = [Feed("main", ids[random.Next(ids.Length)], "block", 4), .. ids.Select(Strap)];
        if (ids.Length > 1) runs.Add(Feed("tie", "starter", "rear", 5) with { Isolator = AnyIsolator() });
        if (ids.Length > 2) runs.Add(Feed("second-tie", "rear", "spare", 1));
        if (isApart) runs.Add(Feed("charging", "alternator", "starter", 1.5));
        for (int i = 0; i < amplifiers.Length; i++)
        {
            runs.Add(Feed($"feed{i}", feedsFrom[i], $"a{i}", 2));
            runs.Add(Back($"return{i}", $"a{i}", 1));
        }

        return OneAmplifier() with
        {
            Vehicle = new Vehicle
            {
                ChargingVolts = 13.8 + random.NextDouble(),
                BodyReturnOhms = 0.0002 + 0.001 * random.NextDouble(),
                BaseLoadAmps = 20 + 40 * random.NextDouble(),
                StandbyLoadAmps = 5 * random.NextDouble(),
                Alternator = new Alternator { RatedAmps = 60 + 200 * random.NextDouble(), At = isApart ? "alternator" : null },
                Batteries = [.. ids.Select(id => AnyBattery(random, id))],
                Capacitors = [.. Enumerable.Range(0, random.Next(3))
                    .Select(i => AnyCapacitor(i == 0 ? "a0" : places[random.Next(ids.Length)]))],
            },
            Amplifiers = amplifiers,
            Runs = runs,
        };
    }

    private Amplifier AnyAmplifier(int index) => new()
    {
        Id = $"a{index}",
        RatedOutputWatts = 200 + 1300 * random.NextDouble(),
        Efficiency = 0.5 + 0.4 * random.NextDouble(),
        Class = (AmplifierClass)random.Next(5),
        PowerSupply = random.Next(4) == 0 ? PowerSupply.Unregulated : PowerSupply.Regulated,
        Programme = (Programme)random.Next(3),
    };

    private Capacitor AnyCapacitor(string place) => new()
    {
        At = place,
        Farads = Math.Pow(10, -1 + 2 * random.NextDouble()),
        SeriesOhms = 0.001 + 0.01 * random.NextDouble(),
    };

    private Isolator? AnyIsolator() => tie switch
    {
        Tie.Relay =>
            new Isolator { Kind = IsolatorKind.Relay, RatedAmps = 200, ContactOhms = 0.0005 + 0.002 * random.NextDouble() },
        Tie.Diode => new Isolator { Kind = IsolatorKind.Diode, RatedAmps = 200, ForwardVolts = 0.3 + 0.5 * random.NextDouble() },
        Tie.Charger => new Isolator
        {
            Kind = IsolatorKind.DcDcCharger,
            RatedAmps = 20 + 40 * random.NextDouble(),
            OutputVolts = 14.4,
            Efficiency = 0.8 + 0.15 * random.NextDouble(),
        },
        _ => null,
    };

    private Run Feed(string id, string from, string to, double longest) =>
        Run(id, from, to, 0.3 + longest * random.NextDouble(), Sizes[random.Next(Sizes.Length)]) with
        {
            Side = Side.Supply,
            Fuse = Anl(300),
        };

    private Run Back(string id, string from, double longest) =>
        Run(id, from, "body", 0.2 + longest * random.NextDouble(), Sizes[random.Next(Sizes.Length)]) with { Side = Side.Return };

    private Run Strap(string battery) => Back("strap-" + battery, battery, 0.4);
}
