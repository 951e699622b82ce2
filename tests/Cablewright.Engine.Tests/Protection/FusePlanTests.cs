using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.Protection.Drawn;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Protection;

/// <summary>
/// Where fuses are put and of which rating, worked by hand. Ampacity by 33 CFR 183.425 table 5 (105 °C) and its note 1, √(65/75)
/// at 40 °C: 1/0 AWG 285 A · 0.93095 = 265.3 A, 6 AWG 111.7 A, 12 AWG 41.9 A, 14 AWG 32.6 A, 16 AWG 23.3 A. Of its rating an ANL
/// carries 0.8 and a blade 0.75 (common practice, no source; small-fuse practice), so for I it is rated at least I / 0.8 and
/// I / 0.75. Air of 40 °C takes nothing from that: the sheet of a 40 A blade grants it 1 − 0.15 · 20/45 = 0.9333 there.
/// </summary>
public class FusePlanTests
{
    /// <summary>50 / 0.8 = 62.5: 70 A. All of one size: none is needed behind the first.</summary>
    [Fact]
    public void A_fuse_stands_at_the_battery_and_none_between_equal_conductors() => Places(
        [Wire("main", "starter", "block"), Wire("on", "block", "post"), Wire("feed", "post", "bass")], All(50),
        "main near: 70 A mini-ANL");

    /// <summary>A run that is written towards its battery has the fuse at its end.</summary>
    [Fact]
    public void It_stands_at_the_end_where_the_battery_is() => Places(
        [Wire("main", "block", "starter"), Wire("feed", "block", "bass")], All(50), "main far: 70 A mini-ANL");

    /// <summary>
    /// Between two batteries both ends: 75 A for the current at the charging one; at the other, of unknown current, the largest
    /// within 111.7 A, 100 A. Two of 630 A cold cranking ask for 5000 A by the table of ABYC E-11, and 5 mΩ each let them: more
    /// than the 2700 A of an ANL, as much as a fuse with one bolt interrupts.
    /// </summary>
    [Fact]
    public void Between_two_batteries_one_stands_at_each_end() => Places(
        [Wire("tie", "starter", "rear", "6 AWG"), Fused("feed", "rear", "bass", 60, "6 AWG")], All(50),
        "tie near: 80 A ANL", "tie far: 100 A ANL", "feed near: 60 A ANL");

    /// <summary>A run that leaves the second battery for a load alone is fused for its current.</summary>
    [Fact]
    public void At_the_second_battery_a_run_to_a_load_is_fused_for_its_current() => Places(
        [Fused("tie", "starter", "rear", 60, "6 AWG") with { FarFuse = Anl(60) }, Wire("feed", "rear", "bass", "6 AWG")], All(50),
        "tie near: 60 A ANL", "tie far: 60 A ANL", "feed near: 80 A ANL");

    /// <summary>
    /// 70 A is more than the 41.9 A of 12 AWG. 17 / 0.75 = 22.7: a blade of 25 A there; 25 A is within the 32.6 A of 14 AWG and
    /// above the 23.3 A of 16 AWG, which gets one of its own: 10 / 0.75 = 13.3, 15 A.
    /// </summary>
    [Fact]
    public void A_fuse_stands_where_the_conductor_no_longer_bears_what_may_enter() => Places(
        [
            Wire("main", "starter", "block"), Wire("equal", "block", "bass"), Wire("thin", "block", "post", "12 AWG"),
            Wire("thinner", "post", "end", "14 AWG"), Wire("thinnest", "post", "other-end", "16 AWG"),
        ],
        id => id switch { "thinnest" => (10, 1), "thin" or "thinner" => (17, 1), _ => (50, 1) },
        "main near: 70 A mini-ANL", "thin near: 25 A blade-c", "thinnest near: 15 A blade-c");

    /// <summary>41.9 A of 12 AWG bear 40 A and not 50 A.</summary>
    [Theory]
    [InlineData(40, false)]
    [InlineData(50, true)]
    public void A_reduction_is_one_only_where_more_may_enter_than_is_borne(double before, bool isReduction)
    {
        Run[] runs = [Fused("main", "starter", "block", before), Wire("thin", "block", "bass", "12 AWG")];
        string main = $"main near: {before} A ANL";
        Places(runs, _ => (10, 1), isReduction ? [main, "thin near: 15 A blade-c"] : [main]);
    }

    /// <summary>In 30 °C 12 AWG bears the 45 A of the table itself, and a fuse of 45 A is not above that.</summary>
    [Theory]
    [InlineData(45, false)]
    [InlineData(45.1, true)]
    public void A_rating_that_is_just_the_ampacity_is_within_it(double before, bool isReduction)
    {
        Build build = Of(Fused("main", "starter", "block", before), Wire("thin", "block", "bass", "12 AWG"));
        BuildModel model = ModelOf(build with { Limits = build.Limits with { CabinCelsius = 30 } });
        Assert.Equal(isReduction, Place(model, All(10), null).Near[1] is not null);
    }

    /// <summary>Both blocks are fed over 70 A, so the thin link between them is fused at both its ends.</summary>
    [Fact]
    public void A_thin_link_that_is_fed_from_both_sides_has_one_at_each_end() => Places(
        [
            Wire("w1", "starter", "one"), Wire("w2", "starter", "other"), Wire("link", "one", "other", "12 AWG"),
            Wire("feed", "other", "bass"),
        ],
        id => id == "link" ? (10, 1) : (50, 1),
        "w1 near: 70 A mini-ANL", "w2 near: 70 A mini-ANL", "link near: 15 A blade-c", "link far: 15 A blade-c");

    [Fact]
    public void Where_the_build_says_that_there_is_none_none_is_put() => Places(
        [Wire("main", "starter", "block") with { Fuse = NoFuse }, Wire("thin", "block", "bass", "12 AWG") with { Fuse = NoFuse }],
        All(10));

    /// <summary>A fuse without a rating is chosen, though the 70 A before it would do: 20 / 0.75 = 26.7, 30 A.</summary>
    [Fact]
    public void A_fuse_that_the_build_speaks_of_stands_where_none_is_needed() => Places(
        [Wire("main", "starter", "block"), Wire("feed", "block", "bass") with { Fuse = new FuseWish() }],
        id => id == "feed" ? (20, 1) : (50, 1), "main near: 70 A mini-ANL", "feed near: 30 A blade-c");

    [Fact]
    public void A_given_fuse_stays_as_it_is_and_a_chosen_one_says_so()
    {
        Run[] runs = [Fused("main", "starter", "block", 300), Wire("thin", "block", "bass", "12 AWG")];
        Design placed = Place(ModelOf(Of(runs)), _ => (10, 1), null);
        Assert.Equal((300, Decided.Given), (placed.Near[0]!.RatingAmps, placed.Near[0]!.Decided));
        Assert.Equal((15, Decided.Chosen), (placed.Near[1]!.RatingAmps, placed.Near[1]!.Decided));
    }

    /// <summary>
    /// 1/0 AWG bears more than any of these: 100 / 0.8 = 125 exactly; 104 / 0.8 = 130; 104.1 wants 150 A. The larger of
    /// the peak and the continuous current counts.
    /// </summary>
    [Theory]
    [InlineData(100, 10, 125)]
    [InlineData(104, 10, 130)]
    [InlineData(104.1, 10, 150)]
    [InlineData(10, 100, 125)]
    public void It_is_the_smallest_that_carries_the_full_current(double peak, double thermal, double rating) => Places(
        [Wire("main", "starter", "bass")], _ => (peak, thermal), $"main near: {rating} A ANL");

    /// <summary>
    /// 100 A want 125 A, 6 AWG bears 111.7 A: 100 A, the largest within. But 90 A continuous take 90 / 0.8 = 112.5: 125 A,
    /// whatever the conductor bears.
    /// </summary>
    [Theory]
    [InlineData(40, 100)]
    [InlineData(80, 100)]
    [InlineData(90, 125)]
    public void It_stays_within_the_ampacity_as_far_as_the_continuous_current_lets_it(double thermal, double rating) => Places(
        [Wire("main", "starter", "bass", "6 AWG")], _ => (100, thermal), $"main near: {rating} A ANL");

    /// <summary>
    /// 22.5 / 0.75 = 30: a blade to 30 A; 23 / 0.75 = 30.7 would be one of 35 A: a small bolt-in fuse, of which 23 / 0.8 = 28.75
    /// asks 30 A. 80 / 0.8 = 100: a small one to 100 A, an ANL above (common practice, no source). No bolt-in fuse is made below
    /// 30 A, so what bears 23.3 A has a blade: the largest within, 20 A.
    /// </summary>
    [Theory]
    [InlineData("1/0 AWG", 22.5, "30 A blade-c")]
    [InlineData("1/0 AWG", 23, "30 A mini-ANL")]
    [InlineData("1/0 AWG", 80, "100 A mini-ANL")]
    [InlineData("1/0 AWG", 80.1, "125 A ANL")]
    [InlineData("16 AWG", 23, "20 A blade-c")]
    public void Small_ratings_are_blades_and_larger_ones_strips(string size, double amps, string fuse) => Places(
        [Wire("main", "starter", "bass", size)], _ => (amps, 1), "main near: " + fuse);

    /// <summary>Of class T, 0.8 of its rating: 85 / 0.8 = 106.25 asks 110 A, a rating that no ANL has.</summary>
    [Fact]
    public void A_stated_family_wins() => Places(
        [Wire("main", "starter", "bass") with { Fuse = new FuseWish { Family = FuseFamilyName.ClassT } }], All(85),
        "main near: 110 A class-t");

    /// <summary>
    /// In 95 °C a blade carries 0.75 − 0.125 · 10/25 = 0.7 of its rating by its sheet: 11 / 0.7 = 15.7 asks 20 A, where 40 °C ask
    /// 11 / 0.75 = 14.7, 15 A. A bolt-in fuse has no such curve: 50 / 0.8 = 62.5 asks 70 A in any air. 4/0 AWG bears far more.
    /// </summary>
    [Theory]
    [InlineData(40, 11, "15 A blade-c")]
    [InlineData(95, 11, "20 A blade-c")]
    [InlineData(40, 50, "70 A mini-ANL")]
    [InlineData(95, 50, "70 A mini-ANL")]
    public void Hot_air_asks_for_a_larger_blade(double celsius, double amps, string fuse)
    {
        Build build = Of(Wire("main", "starter", "bass", "4/0 AWG") with { Route = Route.EngineBay });
        BuildModel model = ModelOf(build with { Limits = build.Limits with { EngineBayCelsius = celsius } });
        Assert.Equal(fuse, Words(Place(model, All(amps), null).Near[0]!));
    }

    /// <summary>
    /// Two conductors, 100 A: 50 A each ask 80 A each; one for both asks 125 A. A given fuse is one for both unless the build
    /// says else.
    /// </summary>
    [Theory]
    [InlineData(null, null, 80, true)]
    [InlineData(null, true, 80, true)]
    [InlineData(null, false, 125, false)]
    [InlineData(200.0, null, 200, false)]
    [InlineData(200.0, true, 200, true)]
    public void Parallel_conductors_have_one_each(double? given, bool? stated, double rating, bool each)
    {
        FuseWish wish = new() { RatingAmps = given, Family = FuseFamilyName.Anl, PerConductor = stated };
        BuildModel model = ModelOf(Of(Wire("main", "starter", "bass").Times(2) with { Fuse = wish }));
        FittedFuse fuse = Place(model, _ => (100, 10), null).Near[0]!;
        Assert.Equal((rating, each), (fuse.RatingAmps, fuse.PerConductor));
    }

    [Fact]
    public void One_conductor_alone_has_no_fuse_of_each_conductor() =>
        Assert.False(Place(ModelOf(Of(Wire("main", "starter", "bass"))), All(50), null).Near[0]!.PerConductor);

    /// <summary>70 A stood: 20 A would ask a blade of 30 A, and 100 A ask 125 A.</summary>
    [Theory]
    [InlineData(20, "70 A mini-ANL")]
    [InlineData(100, "125 A ANL")]
    public void What_was_once_chosen_only_grows(double amps, string fuse)
    {
        BuildModel model = ModelOf(Of(Wire("main", "starter", "bass")));
        Design before = Place(model, All(50), null);
        Assert.Equal("70 A mini-ANL", Words(before.Near[0]!));
        Assert.Equal(fuse, Words(Place(model, All(amps), before).Near[0]!));
    }

    /// <summary>
    /// Behind 50 A a reduction to 12 AWG (41.9 A) asks for a fuse; behind 40 A only one that stood there before does.
    /// </summary>
    [Fact]
    public void What_was_once_put_at_a_reduction_stands_again()
    {
        BuildModel more = Behind(50), less = Behind(40);
        Assert.Null(Place(less, All(10), null).Near[1]);
        Assert.Equal("15 A blade-c", Words(Place(less, All(10), Place(more, All(10), null)).Near[1]!));

        static BuildModel Behind(double amps) =>
            ModelOf(Of(Fused("main", "starter", "block", amps), Wire("thin", "block", "bass", "12 AWG")));
    }

    /// <summary>A given rating is what it is, even where a larger one was tried before.</summary>
    [Fact]
    public void A_given_fuse_never_grows()
    {
        BuildModel open = ModelOf(Of(Wire("main", "starter", "bass"))), given = ModelOf(Of(Fused("main", "starter", "bass", 60)));
        Assert.Equal(60, Place(given, All(100), Place(open, All(100), null)).Near[0]!.RatingAmps);
    }

    private static Func<string, (double Peak, double Thermal)> All(double peak) => _ => (peak, 1);

    private static void Places(Run[] runs, Func<string, (double Peak, double Thermal)> amps, params string[] expected)
    {
        BuildModel model = ModelOf(Of(runs));
        Design placed = Place(model, amps, null);
        IEnumerable<RunEnd> ends =
            Enumerable.Range(0, runs.Length).SelectMany(RunEnd.Of).Where(end => placed.FuseAt(end) is not null);
        Assert.Equal(expected, ends.Select(end => $"{Words(model, end)}: {Words(placed.FuseAt(end)!)}"));
    }

    private static Design Place(BuildModel model, Func<string, (double Peak, double Thermal)> amps, Design? least) =>
        FusePlan.Place(model, new FuseLadders(model), DesignOf(model), EnvelopeOf(model, 40, amps), least);
}
