using Cablewright.Engine.Builds;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Tests.Published;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.Protection.Drawn;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.ShortCircuits;

/// <summary>
/// Clearings worked by hand. The battery gives 12 V behind 5 mΩ. Copper at 105 °C, by ASTM B258 and 0.0172414 · 1.02 · 1.33405 Ω
/// mm²/m: 12 AWG 3.308773 mm² and 7.090516 mΩ/m, 6 AWG 1.763744 mΩ/m, 1/0 AWG 0.438726 mΩ/m; 0.2 mΩ of joints on each run. A fuse
/// has 0.1 V (ANL, type C blade) at its rating. Withstand by IEC 60364-4-43, t = k² S² / I² to 5 s, with the constants
/// of IEC 60364-5-54: k² = 0.00345 · 254.5 / 1.724138e-5 · ln((234.5 + 160) / (234.5 + θ)), 14887.55 from 60 °C, 7646.21 from
/// 105 °C.
/// </summary>
public class ClearingsTests
{
    private const double Tolerance = 1e-5;

    /// <summary>
    /// 40 A blade, 5 + 2 · (7.090516 + 0.2) + 2.5 = 22.081032 mΩ: 543.4529 A, 13.58632 times the rating: beyond the last point
    /// of the gates, at 600 % 0.15 s, so 0.15 · (6 / 13.58632)² = 0.0292543 s. 14887.55 · 3.308773² / 543.4529² = 0.551866 s.
    /// Over the body it would be more current.
    /// </summary>
    [Fact]
    public void A_fuse_that_opens_before_the_conductor_is_hurt_is_in_time()
    {
        Clearing clearing = Assert.Single(Worst(60, Thin(FuseFamilyName.BladeC, 40)));
        Assert.Equal((0, 0, "main near"), (clearing.Run, clearing.Battery, DeviceOf(clearing, "main")));
        Near.Relative(543.4529, clearing.DeviceAmps, Tolerance, "fuse, A");
        Near.Relative(543.4529, clearing.ConductorAmps, Tolerance, "conductor, A");
        Near.Relative(0.0292543, clearing.ClearingSeconds!.Value, Tolerance, "opening, s");
        Near.Relative(0.551866, clearing.WithstandSeconds, Tolerance, "withstand, s");
        Near.Relative(0.0292543 / 0.551866, clearing.Strain, Tolerance, "strain");
        Assert.True(clearing.IsInTime);
    }

    /// <summary>
    /// The fault is at the end at which the run carries more of it: 543.4529 A at the start of one written towards its battery.
    /// </summary>
    [Fact]
    public void A_run_that_is_written_towards_its_battery_clears_alike()
    {
        FuseWish wish = new() { RatingAmps = 40, Family = FuseFamilyName.BladeC };
        Run main = Wire("main", "bass", "starter", "12 AWG") with { FarFuse = wish };
        Clearing clearing = Assert.Single(Worst(60, Of(main).WithRun("return", run => run.Sized("12 AWG"))));
        Assert.Equal("main far", DeviceOf(clearing, "main"));
        Near.Relative(543.4529, clearing.DeviceAmps, Tolerance, "fuse, A");
        Near.Relative(0.551866, clearing.WithstandSeconds, Tolerance, "withstand, s");
    }

    /// <summary>
    /// ANL 100 A, 20.581032 mΩ: 583.0611 A, 5.830611 times the rating. Between 5 s at 350 % and 1 s at 600 % (from memory),
    /// straight on logarithmic scales: 5 · 0.2^(ln(5.830611/3.5) / ln(6/3.5)) = 1.089274 s. 14887.55 · 3.308773² / 583.0611² =
    /// 0.479434 s.
    /// </summary>
    [Fact]
    public void A_fuse_that_opens_after_the_conductor_is_hurt_is_too_late()
    {
        Clearing clearing = Assert.Single(Worst(60, Thin(FuseFamilyName.Anl, 100)));
        Near.Relative(1.089274, clearing.ClearingSeconds!.Value, Tolerance, "opening, s");
        Near.Relative(0.479434, clearing.WithstandSeconds, Tolerance, "withstand, s");
        Assert.False(clearing.IsInTime);
    }

    /// <summary>
    /// 20 m there and back behind the 40 A blade: 291.5206 mΩ, 41.1635 A, 1.0291 times the rating, below 135 %.
    /// </summary>
    [Fact]
    public void Where_opening_is_not_certain_it_is_not_in_time_and_nothing_is_worse()
    {
        Build build = Thin(FuseFamilyName.BladeC, 40);
        build = build with { Runs = [.. build.Runs.Select(run => run with { LengthMetres = 20 })] };
        Clearing clearing = Assert.Single(Worst(60, build));
        Near.Relative(41.1635, clearing.DeviceAmps, Tolerance, "fuse, A");
        Assert.Null(clearing.ClearingSeconds);
        Assert.Equal(double.PositiveInfinity, clearing.Strain);
        Assert.False(clearing.IsInTime);
    }

    /// <summary>
    /// From 105 °C 7646.21 · 3.308773² / 543.4529² = 0.283437 s, and so from 200 °C, at which it is judged elsewhere.
    /// </summary>
    [Theory]
    [InlineData(60, 0.551866)]
    [InlineData(105, 0.283437)]
    [InlineData(200, 0.283437)]
    public void The_conductor_starts_as_hot_as_it_works_at_most_at_its_rating(double celsius, double seconds) => Near.Relative(
        seconds, Assert.Single(Worst(celsius, Thin(FuseFamilyName.BladeC, 40))).WithstandSeconds, Tolerance, "withstand, s");

    /// <summary>
    /// Two conductors with a blade of 40 A each: 5 + 7.090516/2 + 0.2 + 2.5/2 + 7.290516 = 17.285774 mΩ, 694.2125 A in both
    /// fuses and 347.1062 A in each conductor: 14887.55 · 3.308773² / 347.1062² = 1.352796 s.
    /// </summary>
    [Fact]
    public void Parallel_conductors_share_the_fault()
    {
        FuseWish wish = new() { RatingAmps = 40, Family = FuseFamilyName.BladeC, PerConductor = true };
        Run two = Wire("main", "starter", "bass", "12 AWG").Times(2) with { Fuse = wish };
        Clearing clearing = Assert.Single(Worst(60, Of(two).WithRun("return", run => run.Sized("12 AWG"))));
        Near.Relative(694.2125, clearing.DeviceAmps, Tolerance, "fuses, A");
        Near.Relative(347.1062, clearing.ConductorAmps, Tolerance, "conductor, A");
        Near.Relative(1.352796, clearing.WithstandSeconds, Tolerance, "withstand, s");
    }

    /// <summary>
    /// Two ways to a block, each behind 100 A: 0.5 m of 1/0, 0.219363 + 0.2 + 1 = 1.419363 mΩ, and 2 m of 6 AWG, 4.727487 mΩ,
    /// together 1.091619 mΩ. With the battery and 1 m of 6 AWG each way 10.019106 mΩ: 1197.712 A, of which 276.5624 A over the
    /// second way: 2.765624 times its rating, between 15 s at 200 % and 5 s at 350 %: 15 · (1/3)^(ln(2.765624/2) / ln(3.5/2)) =
    /// 7.938740 s. The other has 921 A and opens within 0.5 s.
    /// </summary>
    [Fact]
    public void Of_several_fuses_that_carry_the_fault_the_slowest_decides()
    {
        Clearing feed = ClearingOf("feed", TwoWays(
            Fused("first", "starter", "block") with { LengthMetres = 0.5 },
            Fused("second", "starter", "block", 100, "6 AWG") with { LengthMetres = 2 }));
        Assert.Equal("second near", DeviceOf(feed, "first", "second"));
        Near.Relative(276.5624, feed.DeviceAmps, Tolerance, "fuse, A");
        Near.Relative(1197.712, feed.ConductorAmps, Tolerance, "conductor, A");
        Near.Relative(7.938740, feed.ClearingSeconds!.Value, Tolerance, "opening, s");
    }

    /// <summary>
    /// The second way is 20 m of 18 AWG behind a blade of 10 A, 583.2990 mΩ beside 0.752696 mΩ: it carries 0.129 % of a fault,
    /// 1.6 A of 1239.770 A, and its fuse would never open. So it is not asked, and a fault at the end of that way is none of it.
    /// </summary>
    [Fact]
    public void What_carries_less_than_a_hundredth_of_a_fault_has_no_part_in_it()
    {
        Build build = TwoWays(
            Fused("first", "starter", "block", 300) with { LengthMetres = 0.5 },
            Wire("second", "starter", "block", "18 AWG") with
            {
                LengthMetres = 20,
                Fuse = new FuseWish { RatingAmps = 10, Family = FuseFamilyName.BladeC },
            });
        Clearing feed = ClearingOf("feed", build);
        Assert.Equal("first near", DeviceOf(feed, "first", "second"));
        Near.Relative(1238.172, feed.DeviceAmps, Tolerance, "fuse, A");
        Assert.Equal([0, 2], Worst(60, build).Select(clearing => clearing.Run));
    }

    /// <summary>
    /// 1 m of 6 AWG there and back behind an ANL of 150 A, 4.594155 mΩ, and 1.944119 mΩ more from the rear battery over the tie.
    /// Where a battery of 5 mΩ gives more than 6 times the rating, both times fall as I²: 1 · (6 · 150)² / (14887.55 ·
    /// 13.301768²) is a strain of 0.307499. One of 9.5 mΩ gives less, at which the ANL takes longer than in proportion: at the
    /// front 851.4168 A, 5.676112 times, 5 · 0.2^(ln(5.676112/3.5) / ln(6/3.5)) = 1.180221 s against 3.633771 s, 0.324792; at the
    /// rear 748.2102 A, 1.735932 s against 4.705380 s, 0.368925. One of 100 mΩ gives 112.6356 A, at which 150 A need not open.
    /// </summary>
    [Theory]
    [InlineData(0.0095, 0.005, 0, 851.4168, 1.180221, 0.324792)]
    [InlineData(0.005, 0.0095, 1, 748.2102, 1.735932, 0.368925)]
    [InlineData(0.005, 0.1, 1, 112.6356, null, double.PositiveInfinity)]
    public void Of_several_batteries_the_one_with_the_worse_strain_decides(
        double starterOhms, double rearOhms, int battery, double amps, double? seconds, double strain)
    {
        Build build = Of(
            Fused("main", "starter", "bass", 150, "6 AWG"), Fused("tie", "starter", "rear", 300) with { FarFuse = Anl(300) });
        Clearing main = ClearingOf("main", build.WithBattery("starter", starter => starter with { InternalOhms = starterOhms })
            .WithBattery("rear", rear => rear with { InternalOhms = rearOhms }));
        Assert.Equal((battery, seconds is null), (main.Battery, main.ClearingSeconds is null));
        Near.Relative(amps, main.DeviceAmps, Tolerance, "fuse, A");
        Assert.Equal(1 / strain, 1 / main.Strain, Tolerance);
        if (seconds is { } opening) Near.Relative(opening, main.ClearingSeconds!.Value, Tolerance, "opening, s");
    }

    /// <summary>
    /// A run without a fuse before it has no clearing, nor has one with a battery on its side of the fuse; the others come in the
    /// order of the build.
    /// </summary>
    [Fact]
    public void Only_protected_supply_runs_are_cleared_in_the_order_of_the_build()
    {
        Assert.Empty(Worst(60, Of(Wire("main", "starter", "bass"))));
        Assert.Equal([0, 1], Cleared(Wire("feed", "block", "bass"), Fused("main", "starter", "block")));
        Assert.Equal([1], Cleared(Wire("main", "starter", "block"), Fused("feed", "block", "bass")));
        Assert.Equal(
            [2], Cleared(Wire("front", "starter", "joint"), Fused("back", "joint", "rear"), Fused("feed", "rear", "bass")));

        static IEnumerable<int> Cleared(params Run[] runs) => Worst(60, Of(runs)).Select(clearing => clearing.Run);
    }

    /// <summary>To the six digits that an answer shows, the same time is in time.</summary>
    [Theory]
    [InlineData(2.0, 2.0, true)]
    [InlineData(2.0000001, 2.0, true)]
    [InlineData(2.0001, 2.0, false)]
    [InlineData(1.9999, 2.0, true)]
    [InlineData(1000.0, double.PositiveInfinity, true)]
    [InlineData(null, double.PositiveInfinity, false)]
    public void It_is_in_time_if_the_fuse_opens_no_later_than_the_conductor_withstands(
        double? opens, double withstands, bool isInTime)
    {
        var clearing = new Clearing(0, 0, default, 100, 100, opens, withstands);
        Assert.Equal(isInTime, clearing.IsInTime);
        Assert.Equal(opens / withstands ?? double.PositiveInfinity, clearing.Strain);
    }

    /// <summary>1 m of 12 AWG there and back.</summary>
    private static Build Thin(FuseFamilyName family, double rating) => Of(
            Wire("main", "starter", "bass", "12 AWG") with { Fuse = new FuseWish { RatingAmps = rating, Family = family } })
        .WithRun("return", run => run.Sized("12 AWG"));

    private static Build TwoWays(Run first, Run second) => Of(first, second, Wire("feed", "block", "bass", "6 AWG"));

    private static Clearing ClearingOf(string run, Build build)
    {
        int index = build.Runs.TakeWhile(each => each.Id != run).Count();
        return Worst(60, build).Single(clearing => clearing.Run == index);
    }

    private static string DeviceOf(Clearing clearing, params string[] runs) =>
        $"{runs[clearing.Device.Run]} {(clearing.Device.End.IsFar ? "far" : "near")}";

    private static IReadOnlyList<Clearing> Worst(double celsius, Build build)
    {
        BuildModel model = ModelOf(build);
        DesignEvaluation evaluation = EvaluationAt(celsius, model);
        return new Clearings(model, evaluation, new FaultCurrents(model, evaluation.Design)).Worst();
    }
}
