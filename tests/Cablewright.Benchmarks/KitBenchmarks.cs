using BenchmarkDotNet.Attributes;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Reports.Kits;
using Cablewright.Vocabulary;
using Kit = Cablewright.Engine.Kits.Kit;
using KitPart = Cablewright.Engine.Kits.KitPart;

namespace Cablewright.Benchmarks;

/// <summary>
/// A shop's ten thousand kits, already in SI units as the service keeps them, held against a build of four amplifiers and nine
/// runs. What it takes hangs on how many different combinations of cables and fuses they hold, since each is assessed once.
/// </summary>
public class KitBenchmarks
{
    private const int Count = 10_000;
    private const int Seed = 1;

    private static readonly string[] MainSizes = ["2/0 AWG", "1/0 AWG", "2 AWG", "4 AWG"];
    private static readonly string[] FeedSizes = ["4 AWG", "6 AWG", "8 AWG", "10 AWG"];
    private static readonly double[] MainFuses = [80, 100, 125, 150, 200, 250];
    private static readonly double[] FeedFuses = [30, 40, 50, 60, 80];

    private readonly Build build = StarBuild.Small;
    private Kit[] kits = [];

    [Params(100, 1_000)]
    public int Combinations { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        Parts[] all =
        [
            .. from main in MainSizes from feed in FeedSizes from back in FeedSizes
               from mainFuse in MainFuses from feedFuse in FeedFuses
               select new Parts(main, feed, back, mainFuse, feedFuse),
        ];
        new Random(Seed).Shuffle(all);
        kits = [.. Enumerable.Range(0, Count).Select(number => KitOf(number, all[number % Combinations]))];
    }

    [Benchmark]
    public MatchedKits Match() => KitMatcher.Match(build, kits, RulesetLibrary.Newest, WorkBudgets.MeterFor(build));

    private static Kit KitOf(int number, Parts parts) => new(
        $"K{number}", $"Kit {number} of {parts.Main}", 40 + number % 397, "EUR",
        [
            Wire(KitPartKind.PowerWire, parts.Main, 3, 1),
            Wire(KitPartKind.PowerWire, parts.Feed, 2, 4),
            Wire(KitPartKind.GroundWire, parts.Back, 1, 4),
            Fuse(parts.MainFuseAmps, FuseFamilyName.Anl, 1),
            Fuse(parts.FeedFuseAmps, FuseFamilyName.BladeC, 4),
            new KitPart { Kind = KitPartKind.DistributionBlock, Ways = 4 },
            new KitPart { Kind = KitPartKind.RingTerminal, Count = 5 + number % 3 },
            new KitPart { Kind = KitPartKind.TurnOnLead, LengthMetres = 5 },
            new KitPart { Kind = KitPartKind.SignalInterconnect, LengthMetres = 5, Count = 2 + number % 3 },
        ]);

    private static KitPart Wire(KitPartKind kind, string size, double metres, int count) => new()
    {
        Kind = kind,
        Size = ConductorSize.Of(size),
        Material = Material.Copper,
        LengthMetres = metres,
        Count = count,
    };

    private static KitPart Fuse(double amps, FuseFamilyName family, int count) =>
        new() { Kind = KitPartKind.Fuse, RatingAmps = amps, Family = family, Count = count };

    private sealed record Parts(string Main, string Feed, string Back, double MainFuseAmps, double FeedFuseAmps);
}
