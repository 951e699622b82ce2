using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Protection;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Tests.Heat;
using Cablewright.Engine.Tests.Protection;
using Cablewright.Engine.Tests.Published;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.ShortCircuits;

/// <summary>
/// What a conductor reaches at 110, 135 and 200 % of its fuse's rating, beside small steps of time through
/// C dθ/dt = I² R(θ) − W(θ), with C worked out in <see cref="WarmingTests"/>. The air has 40 °C.
/// </summary>
public class OverloadTests
{
    private const double Air = 40;
    private const double Ever = double.PositiveInfinity;

    /// <summary>
    /// Longest times at 110, 135 and 200 %: of a type C blade none, 600 s and 5 s (gates of ISO 8820-3), of class T none, 7200 s
    /// and 600 s (UL 248-15, from memory). Thick cable warms slowly, so that the least current is the worst where it lasts
    /// longest.
    /// </summary>
    [Theory]
    [InlineData(FuseFamilyName.BladeC, 40, "4/0 AWG", Ever, 600, 5, 1.10)]
    [InlineData(FuseFamilyName.BladeC, 40, "12 AWG", Ever, 600, 5, 1.35)]
    [InlineData(FuseFamilyName.ClassT, 200, "1/0 AWG", Ever, 7200, 600, 2.00)]
    public void The_worst_share_is_held_for_the_longest_time_that_the_band_allows(
        FuseFamilyName family, double rating, string size, double at110, double at135, double at200, double worstShare)
    {
        Conductor conductor = Copper(size);
        double[] celsius =
        [
            Reached(conductor, 1.10 * rating, at110), Reached(conductor, 1.35 * rating, at135),
            Reached(conductor, 2.00 * rating, at200),
        ];
        (double share, double reached) = Worst(Of(family, rating, size), Air + 0.1)!.Value;
        Assert.Equal(worstShare, share);
        Near.Relative(celsius.Max() - Air, reached - Air, 0.005, $"{family} on {size}, K");
    }

    /// <summary>
    /// The golden case "long-thin-feed" works it out by hand: 1.35 · 40 A = 54 A make 124.6 °C in 12 AWG, of which after 600 s,
    /// several times what it takes to warm, all but half a kelvin is there.
    /// </summary>
    [Fact]
    public void What_lasts_long_reaches_the_steady_temperature() => Near.Absolute(
        124.4, Worst(Of(FuseFamilyName.BladeC, 40, "12 AWG"), 105)!.Value.Celsius, 0.3, "54 A in 12 AWG, C");

    /// <summary>124.6 °C are reached in the end, and nearly so after 600 s.</summary>
    [Theory]
    [InlineData(124.0, true)]
    [InlineData(124.7, false)]
    public void Only_what_passes_the_limit_is_told(double limit, bool isTold) =>
        Assert.Equal(isTold, Worst(Of(FuseFamilyName.BladeC, 40, "12 AWG"), limit) is not null);

    /// <summary>
    /// 400 A for the 600 s of class T in 1/0 AWG: a conductor that works at 90 °C is hotter after them than one at 40 °C.
    /// </summary>
    [Theory]
    [InlineData(40)]
    [InlineData(90)]
    public void It_starts_at_the_temperature_at_which_the_conductor_works(double start) => Near.Absolute(
        Reached(Copper("1/0 AWG"), 400, 600, start),
        Worst(Of(FuseFamilyName.ClassT, 200, "1/0 AWG", celsius: start), 105)!.Value.Celsius, 0.5, "400 A in 1/0 AWG, C");

    /// <summary>4/0 AWG that works at 120 °C is told as what 2 · 40 A hold it at in the end, not as 120 °C.</summary>
    [Fact]
    public void What_was_hotter_than_the_overload_keeps_it_is_not_its_doing() => Near.Absolute(
        Reached(Copper("4/0 AWG"), 80, Ever),
        Worst(Of(FuseFamilyName.BladeC, 40, "4/0 AWG", celsius: 120), Air + 0.1)!.Value.Celsius, 0.01, "80 A in 4/0 AWG, C");

    /// <summary>
    /// Of two conductors with 40 A each, each is as hot as one with 40 A. With 40 A for both, all of it may be in one, since the
    /// other may be broken: as hot again. 80 A for both are 80 A in one.
    /// </summary>
    [Theory]
    [InlineData(40, true, 40)]
    [InlineData(40, false, 40)]
    [InlineData(80, false, 80)]
    public void Each_parallel_conductor_has_what_its_own_fuse_lets_through(double rating, bool each, double asOne)
    {
        FuseWish wish = new() { RatingAmps = rating, Family = FuseFamilyName.BladeE, PerConductor = each };
        Run two = Drawn.Wire("main", "starter", "bass", "12 AWG").Times(2) with { Fuse = wish };
        Assert.Equal(
            Worst(Of(FuseFamilyName.BladeE, asOne, "12 AWG"), 105)!.Value, Worst(Of([two], 40, 0), 105)!.Value);
    }

    /// <summary>
    /// The feed behind two conductors with 40 A each gets 80 A into its one, and where it has two without a fuse of their own,
    /// all of it in one of them.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void What_lies_behind_fuses_of_each_conductor_gets_all_that_they_let_through(int count)
    {
        FuseWish wish = new() { RatingAmps = 40, Family = FuseFamilyName.BladeE, PerConductor = true };
        Run main = Drawn.Wire("main", "starter", "block").Times(2) with { Fuse = wish };
        Assert.Equal(
            Worst(Of(FuseFamilyName.BladeE, 80, "12 AWG"), 105)!.Value,
            Worst(Of([main, Drawn.Wire("feed", "block", "bass", "12 AWG").Times(count)], 40, 1), 105)!.Value);
    }

    /// <summary>
    /// In a loom 0.7 of the ampacity is left (33 CFR 183.425 table 5 note 2): 54 A warm as 54 / 0.7 = 77.1 A do alone.
    /// </summary>
    [Fact]
    public void In_a_loom_it_warms_as_the_current_over_the_loom_s_share_does() => Near.Absolute(
        Reached(Copper("12 AWG"), 54 / 0.7, 600),
        Worst(Of([Fused(FuseFamilyName.BladeC, 40, "12 AWG") with { Route = Route.Loom }], 40, 0), 105)!.Value.Celsius,
        0.5, "54 A in a loom, C");

    /// <summary>
    /// Below 135 % no opening of an ANL is certain, so the conductor takes the temperature that a continuous current holds. Where
    /// that of 1.22 times the rating is the limit, 1.20 hurts nothing and 1.25, the next that is looked at, does.
    /// </summary>
    [Theory]
    [InlineData(1.22, 1.25)]
    [InlineData(1.18, 1.20)]
    [InlineData(0.90, 1.00)]
    public void It_is_hurt_from_the_first_share_whose_continuous_current_passes_the_limit(double held, double from)
    {
        Case on = Of(FuseFamilyName.Anl, 200, "1/0 AWG");
        Assert.Equal(from, HurtFrom(on, Held(held * 200))!.Value, 9);
    }

    /// <summary>
    /// From 135 % on it opens, at the latest after 1800 s, and at 200 % after 15 s: 4/0 AWG is then below where a continuous 1.35
    /// times the rating would bring it, and what is less brings it no further.
    /// </summary>
    [Fact]
    public void Where_the_fuse_opens_first_nothing_is_hurt()
    {
        Case on = Of(FuseFamilyName.Anl, 300, "4/0 AWG");
        double limit = HeatBalance.Of(Copper("4/0 AWG")).TemperatureAt(1.35 * 300, Air);
        Assert.True(Reached(Copper("4/0 AWG"), 1.35 * 300, 1800) < limit);
        Assert.Null(HurtFrom(on, limit));
    }

    /// <summary>
    /// A conductor that class T lets take 200 % for 600 s; every twentieth of the rating below where it begins is borne.
    /// </summary>
    [Theory]
    [InlineData(90, false)]
    [InlineData(115, true)]
    [InlineData(130, true)]
    public void Below_where_it_begins_nothing_is_hurt_and_there_it_is(double limit, bool opens)
    {
        double from = HurtFrom(Of(FuseFamilyName.ClassT, 200, "1/0 AWG"), limit)!.Value;
        Assert.Equal(opens, from > 1.35);
        Assert.True(After(from) > limit, $"{After(from)} C at {from}");
        for (double share = 1; share < from - 0.01; share += 0.05)
            Assert.True(After(share) <= limit, $"{After(share)} C at {share}");

        double After(double share) => Reached(Copper("1/0 AWG"), share * 200, ClassT(share));
    }

    /// <summary>Straight on logarithmic scales from 7200 s at 135 % to 600 s at 200 %.</summary>
    private static double ClassT(double share) =>
        share < 1.35 - 1e-9 ? Ever : 7200 * Math.Pow(600.0 / 7200, Math.Log(share / 1.35) / Math.Log(2 / 1.35));

    private static double Held(double amps) => HeatBalance.Of(Copper("1/0 AWG")).TemperatureAt(amps, Air);

    /// <summary>By 20,000 equal steps; for ever is ten hours, of which nothing is left of the start.</summary>
    private static double Reached(Conductor conductor, double amps, double seconds, double start = Air)
    {
        const int Steps = 20_000;
        var balance = HeatBalance.Of(conductor);
        double step = Math.Min(seconds, 36_000) / Steps, celsius = start;
        double stored = WarmingTests.Stored(conductor, balance.OuterMetres);
        for (int i = 0; i < Steps; i++)
            celsius += step / stored * (amps * amps * conductor.OhmsPerMetre(celsius) - balance.LeavingWatts(celsius, Air));
        return celsius;
    }

    private static Conductor Copper(string size) => Conductor.Of(ConductorSize.Of(size), Material.Copper);

    private static (double Share, double Celsius)? Worst(Case on, double limit) => on.Overload.Worst(on.Run, on.Device, limit);

    private static double? HurtFrom(Case on, double limit) => on.Overload.HurtFrom(on.Run, on.Device, limit);

    private static Run Fused(FuseFamilyName family, double rating, string size) =>
        Drawn.Wire("main", "starter", "bass", size) with { Fuse = new FuseWish { RatingAmps = rating, Family = family } };

    private static Case Of(FuseFamilyName family, double rating, string size, double celsius = Air) =>
        Of([Fused(family, rating, size)], celsius, 0);

    private static Case Of(Run[] runs, double celsius, int run)
    {
        BuildModel model = Drawn.ModelOf(Drawn.Of(runs));
        DesignEvaluation evaluation = Drawn.EvaluationAt(celsius, model);
        return new Case(new Overload(model.Build, evaluation), run, Assert.Single(evaluation.Protection.For(run)));
    }

    private sealed record Case(Overload Overload, int Run, ProtectiveDevice Device);
}
