using System.Diagnostics;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Kits;
using Cablewright.Vocabulary;
using CsCheck;
using Xunit.Abstractions;
using static Cablewright.Engine.Tests.Kits.SampleKits;
using Kit = Cablewright.Engine.Kits.Kit;
using KitPart = Cablewright.Engine.Kits.KitPart;

namespace Cablewright.Engine.Tests.Kits;

public class KitMatchTests(ITestOutputHelper output)
{
    private static readonly string[] Sizes = ["10 AWG", "8 AWG", "6 AWG", "4 AWG", "2 AWG", "1/0 AWG"];

    private static readonly Gen<Kit> AnyKit = Gen.Select(
        Gen.OneOfConst(Sizes),
        Gen.OneOfConst(Sizes),
        Gen.OneOfConst(Material.Copper, Material.CopperCladAluminium),
        Gen.Double[3, 8],
        Gen.OneOfConst(30.0, 40, 60, 80, 100, 150, 200),
        Gen.Bool,
        Gen.Double[10, 200],
        (power, ground, metal, metres, fuse, hasGrommet, price) => Kit(power, ground, metal, metres, fuse, hasGrommet, price));

    /// <summary>A shop's catalogue of ten thousand: the distinct combinations are assessed, not the kits.</summary>
    [Fact]
    public void Ten_thousand_kits_take_no_more_trials_than_their_distinct_combinations()
    {
        var random = new Random(4);
        Kit[] kits = [.. Enumerable.Range(0, 10_000).Select(number => AnyKitOf(random) with { Sku = $"K{number}" })];
        Build job = JobThroughBulkhead();
        Match(job, kits[..50]);
        long start = Stopwatch.GetTimestamp();
        IReadOnlyList<MatchedKit> matches = Match(job, kits).Found;
        output.WriteLine($"10,000 kits: {Stopwatch.GetElapsedTime(start).TotalMilliseconds:0} ms");

        var checker = new KitChecker(job, RulesetLibrary.Newest, WorkBudgets.MeterFor(job), isBrief: true);
        foreach (Kit kit in kits) checker.Check(kit);
        output.WriteLine($"{checker.TrialsMade} trials");
        start = Stopwatch.GetTimestamp();
        foreach (Kit kit in kits) checker.Check(kit);
        output.WriteLine($"all trials made: {Stopwatch.GetElapsedTime(start).TotalMilliseconds:0} ms");
        Assert.Equal(kits.Length, matches.Count);
        Assert.InRange(checker.TrialsMade, 1, 6 * 2 + 6 * 2 * 6 + 6 * 2 * 6 * 7);
        Assert.Contains(matches, match => match.Answer.Verdict is KitVerdict.Serves);
        Assert.Contains(matches, match => match.Answer.Verdict is KitVerdict.ServesWithChange);
        Assert.Contains(matches, match => match.Answer.Verdict is KitVerdict.DoesNotServe);
    }

    [Fact]
    public void Those_that_serve_come_first_and_the_cheapest_of_them_before_the_others() =>
        AnyKit.Array[2, 30].Sample(kits =>
        {
            IReadOnlyList<MatchedKit> matches = Match(JobThroughBulkhead(), kits).Found;
            foreach ((MatchedKit one, MatchedKit next) in matches.Zip(matches.Skip(1)))
            {
                Assert.True(one.Answer.Verdict <= next.Answer.Verdict);
                if (one.Answer.Verdict == next.Answer.Verdict) Assert.True(one.Kit.Price <= next.Kit.Price);
            }
        }, iter: 20);

    /// <summary>Prices of two currencies are not compared: those in the build's own come first.</summary>
    [Fact]
    public void Kits_priced_in_the_build_s_currency_come_before_the_others()
    {
        Build job = JobThroughBulkhead();
        job = job with { Sizing = job.Sizing with { Currency = "SEK" } };
        Kit[] kits =
        [
            Full() with { Sku = "a", Price = 10, Currency = "EUR" }, Full() with { Sku = "b", Price = 100, Currency = "SEK" },
            Full() with { Sku = "c", Price = null, Currency = null }, Full() with { Sku = "d", Price = 90, Currency = "SEK" },
        ];
        Assert.Equal(
            ["d", "b", "a", "c"], Match(job, kits).Found.Select(match => match.Kit.Sku));
    }

    /// <summary>The work is bounded: the cheapest are tried, the dearest are counted.</summary>
    [Fact]
    public void Kits_beyond_the_work_budget_are_left_untried()
    {
        Kit[] kits = [.. Enumerable.Range(0, 40).Select(number => Full().With(
            KitPartKind.PowerWire, wire => wire with { InsulationCelsius = 90 + number }) with { Price = 40 - number })];
        MatchedKits matches = KitMatcher.Match(
            JobThroughBulkhead(), kits, RulesetLibrary.Newest, WorkBudgets.MeterFor(JobThroughBulkhead()), trialBudget: 60);
        Assert.InRange(matches.Untried, 1, kits.Length - 1);
        Assert.Equal(kits.Length, matches.Untried + matches.Found.Count);
        Assert.Equal(matches.Found.Count, matches.Found.Max(match => match.Kit.Price));
        Assert.Equal(0, Match(JobThroughBulkhead(), kits).Untried);
    }

    [Fact]
    public void Giving_up_ends_it()
    {
        using var given = new CancellationTokenSource();
        given.Cancel();
        Assert.Throws<OperationCanceledException>(
            () => Match(JobThroughBulkhead(), [Full()], cancellation: given.Token));
    }

    [Fact]
    public void A_kit_among_many_is_judged_as_it_is_alone() =>
        AnyKit.Array[2, 10].Sample(kits =>
        {
            foreach (MatchedKit match in Match(JobThroughBulkhead(), kits).Found)
                Assert.Equal(match.Kit.Check(JobThroughBulkhead()).Verdict, match.Answer.Verdict);
        }, iter: 20);

    [Fact]
    public void A_longer_cable_never_serves_worse() =>
        Gen.Select(AnyKit, Gen.Double[0.1, 5]).Sample((kit, more) =>
        {
            Kit longer = kit.With(
                KitPartKind.PowerWire, wire => wire with { LengthMetres = wire.LengthMetres + more });
            Assert.True(longer.Check(JobThroughBulkhead()).Verdict <= kit.Check(JobThroughBulkhead()).Verdict);
        }, iter: 100);

    [Fact]
    public void Two_amplifiers_over_a_block_want_the_block_and_a_cable_for_each_run()
    {
        Build one = Job();
        Build two = one with
        {
            Amplifiers = [one.Amplifiers[0], one.Amplifiers[0] with { Id = "front", RatedOutputWatts = 200 }],
            Runs =
            [
                new Run { Id = "main", From = "starter", To = "block", LengthMetres = 4 },
                new Run { Id = "bass-feed", From = "block", To = "bass", LengthMetres = 1 },
                new Run { Id = "front-feed", From = "block", To = "front", LengthMetres = 1 },
                .. one.Runs.Skip(1),
            ],
        };
        Kit kit = Full().With(KitPartKind.PowerWire, wire => wire with { LengthMetres = 7 })
            .With(KitPartKind.SignalInterconnect, lead => lead with { Count = 2 })
            .With(KitPartKind.GroundWire, wire => wire with { LengthMetres = 2 });
        Assert.Contains(
            kit.Check(two).Findings, finding => finding.Message.Contains("distribution block", StringComparison.Ordinal));
        Kit blocked = kit with
        {
            Parts = [.. kit.Parts, new KitPart { Kind = KitPartKind.DistributionBlock, Ways = 2 }],
        };
        Assert.DoesNotContain(
            blocked.Check(two).Findings, finding => finding.Message.Contains("distribution block", StringComparison.Ordinal));
    }

    private static Kit AnyKitOf(Random random) => Kit(
        Sizes[random.Next(Sizes.Length)],
        Sizes[random.Next(Sizes.Length)],
        random.Next(2) == 0 ? Material.Copper : Material.CopperCladAluminium,
        3 + 5 * random.NextDouble(),
        new double[] { 30, 40, 60, 80, 100, 150, 200 }[random.Next(7)],
        random.Next(3) > 0,
        10 + 190 * random.NextDouble());

    private static Kit Kit(
        string power, string ground, Material metal, double metres, double fuseAmps, bool hasGrommet, double price)
    {
        Kit kit = Full() with { Name = $"{power} {metal} {fuseAmps}", Price = price };
        kit = kit
            .With(
                KitPartKind.PowerWire,
                wire => wire with { Size = ConductorSize.Of(power), Material = metal, LengthMetres = metres })
            .With(KitPartKind.GroundWire, wire => wire with { Size = ConductorSize.Of(ground), Material = metal })
            .With(KitPartKind.Fuse, fuse => fuse with { RatingAmps = fuseAmps, Family = FuseFamilyName.Anl });
        return hasGrommet ? kit : kit.Without(KitPartKind.Grommet);
    }

    private static MatchedKits Match(Build build, IEnumerable<Kit> kits, CancellationToken cancellation = default) =>
        KitMatcher.Match(build, kits, RulesetLibrary.Newest, WorkBudgets.MeterFor(build, cancellation));
}
