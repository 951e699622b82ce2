using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>What is chosen is what shops sell for the job. The sizes by output are common practice, no source.</summary>
public class StockTests
{
    private const double Feet = 0.3048;

    public static TheoryData<double, string[]> Charts => new()
    {
        { 150, ["1 x 10 AWG", "1 x 8 AWG"] },
        { 300, ["1 x 8 AWG", "1 x 4 AWG"] },
        { 500, ["1 x 4 AWG"] },
        { 750, ["1 x 4 AWG", "1 x 2 AWG"] },
        { 1000, ["1 x 4 AWG", "1 x 2 AWG", "1 x 1/0 AWG"] },
        { 1500, ["1 x 1/0 AWG"] },
        { 2000, ["1 x 1/0 AWG", "2 x 1/0 AWG"] },
        { 3000, ["2 x 1/0 AWG"] },
    };

    /// <summary>At 10, 17 and 22 ft; a fuse of at most 1.6 times the full draw: common practice, no source.</summary>
    [Theory]
    [MemberData(nameof(Charts))]
    public void A_page_that_knows_power_and_length_gets_what_the_trade_sells(double watts, string[] sold)
    {
        foreach (double feet in new[] { 10.0, 17, 22 })
        {
            Assessment answer = Assessed.Of(Bare(watts, feet));
            RunResult feed = answer.Runs[0], ground = answer.Runs[1];
            Assert.Contains(Cable(feed), sold);
            Assert.Equal(Cable(feed), Cable(ground));
            int fuses = feed.Fuse!.PerConductor ? feed.Conductor.Count : 1;
            Assert.True(feed.Fuse.RatingAmps * fuses <= 1.6 * feed.PeakCurrentAmps);
            Assert.DoesNotContain(answer.Findings, finding => finding.Code == "sizing.beyond-stock");
        }
    }

    /// <summary>Small bolt-in fuses to 100 A, ANL above, plug-in ones to 30 A: what kits hold (common practice, no
    /// source).</summary>
    [Theory]
    [InlineData(150, FuseFamilyName.BladeC)]
    [InlineData(500, FuseFamilyName.MiniAnl)]
    [InlineData(750, FuseFamilyName.MiniAnl)]
    [InlineData(1500, FuseFamilyName.Anl)]
    public void Its_fuse_is_of_the_family_that_kits_hold(double watts, FuseFamilyName family) =>
        Assert.Equal(family, Assessed.Of(Bare(watts, 17)).Runs[0].Fuse!.Family);

    /// <summary>What is chosen does not hang on values being just as they are assumed.</summary>
    [Theory]
    [MemberData(nameof(Charts))]
    public void A_choice_fails_at_no_corner_of_its_tolerances(double watts, string[] sold)
    {
        Assessment answer = Assessed.Of(Bare(watts, 17) with { Include = [Extra.Robustness] });
        Assert.Contains(Cable(answer.Runs[0]), sold);
        Assert.NotEqual(Verdict.Fail, answer.Robustness!.VerdictAcrossTolerances);
    }

    /// <summary>Within a class of amplifier: from 400 W on one of unstated class counts as class D, which draws less.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(17)]
    [InlineData(25)]
    public void More_power_never_gets_less_copper(double feet)
    {
        double before = 0;
        for (double watts = 50; watts <= 3000; watts += 50)
        {
            Build build = Bare(watts, feet);
            build = build.WithAmplifier(amplifier => amplifier with { Class = AmplifierClass.D });
            RunResult feed = Assessed.Of(build).Runs[0];
            double copper = feed.Conductor.AreaMm2 * feed.Conductor.Count;
            Assert.True(copper >= before, $"{watts} W at {feet} ft: {copper} mm2 after {before} mm2");
            before = copper;
        }
    }

    [Fact]
    public void One_conductor_is_chosen_where_no_more_may_lie_in_parallel()
    {
        Build build = Bare(2000, 17) with { Sizing = new SizingWishes { MaxParallel = 1 } };
        Assert.Equal(1, Assessed.Of(build).Runs[0].Conductor.Count);
    }

    /// <summary>A size between the kept ones is given to the feed.</summary>
    [Fact]
    public void A_ground_is_the_cable_of_its_supply_though_that_is_of_a_size_no_one_keeps()
    {
        Build build = Bare(800, 17);
        build = build with
        {
            Runs = [build.Runs[0] with { Conductor = new ConductorWish { Size = ConductorSize.Of("2/0 AWG") } }],
        };
        Assert.Equal("1 x 2/0 AWG", Cable(Assessed.Of(build).Runs[1]));
        Build free = build with { Sizing = new SizingWishes { GroundSize = GroundSize.Free } };
        Assert.NotEqual("1 x 2/0 AWG", Cable(Assessed.Of(free).Runs[1]));
    }

    /// <summary>
    /// 4 ft of 14 AWG lose more than the target by themselves. What is chosen beside it is what it would be without it: no feed
    /// of several 4/0 makes up for it, and the finding is about the 14 AWG.
    /// </summary>
    [Fact]
    public void Nothing_that_is_chosen_makes_up_for_a_thin_conductor_that_is_given()
    {
        Build build = Bare(1000, 16);
        build = build with
        {
            Amplifiers = [.. build.Amplifiers, new Amplifier { Id = "front", RatedOutputWatts = 400 }],
            Runs =
            [
                build.Runs[0] with { To = "block" },
                new Run { Id = "to-bass", From = "block", To = "bass", LengthMetres = 3 * Feet },
                new Run
                {
                    Id = "to-front", From = "block", To = "front", LengthMetres = 4 * Feet,
                    Conductor = new ConductorWish { Size = ConductorSize.Of("14 AWG") },
                },
            ],
        };
        Assessment answer = Assessed.Of(build);
        Assert.Contains(Cable(answer.Runs[0]), (string[])["1 x 2 AWG", "1 x 1/0 AWG"]);
        Assert.Contains(Cable(answer.Runs[1]), (string[])["1 x 4 AWG", "1 x 2 AWG", "1 x 1/0 AWG"]);
        Assert.DoesNotContain(answer.Findings, finding => finding.Code == "sizing.beyond-stock");
    }

    /// <summary>
    /// 8 AWG loses a little more than the 3 % that a design aims at, with any ground that a shop keeps: the ground stays the
    /// cable of the feed.
    /// </summary>
    [Fact]
    public void A_ground_stays_the_cable_of_a_given_supply_that_is_clean_and_no_more()
    {
        Build build = Bare(324, 17);
        build = build with
        {
            Amplifiers = [build.Amplifiers[0] with { Class = AmplifierClass.D }],
            Runs = [build.Runs[0] with { Conductor = new ConductorWish { Size = ConductorSize.Of("8 AWG") } }],
        };
        Assessment answer = Assessed.Of(build);
        Assert.InRange(answer.Amplifiers[0].ConductorDropPercent, 3, 5);
        Assert.Equal("1 x 8 AWG", Cable(answer.Runs[1]));
    }

    [Fact]
    public void An_open_strap_carries_what_the_fuses_of_its_battery_let_through()
    {
        Build build = Bare(2500, 17);
        build = build with
        {
            Runs =
            [
                .. build.Runs,
                new Run { Id = "strap", From = "battery", To = "body", Side = Side.Return, LengthMetres = 0.5 },
            ],
        };
        Assert.DoesNotContain(Assessed.Of(build).Findings, finding => finding.Code == "return.strap-below-fuse");
    }

    private static string Cable(RunResult run) => $"{run.Conductor.Count} x {run.Conductor.Size}";

    private static Build Bare(double watts, double feet) => new()
    {
        Amplifiers = [new Amplifier { Id = "bass", RatedOutputWatts = watts }],
        Runs = [new Run { Id = "feed", From = "battery", To = "bass", LengthMetres = feet * Feet }],
    };
}
