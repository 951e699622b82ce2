using Cablewright.Engine.Builds;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.Protection.Drawn;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Protection;

/// <summary>
/// Zones read off small drawings: what is joined without a fuse, <c>battery</c> where one stands in it, and the fuses around it
/// beyond which a battery is reached.
/// </summary>
public class FuseZonesTests
{
    /// <summary><c>starter -[F]- main - block - feed - bass</c></summary>
    [Fact]
    public void A_fuse_at_the_battery_protects_all_that_follows_without_one() => Zones(
        [Fused("main", "starter", "block"), Wire("feed", "block", "bass")],
        ("main", "main near"), ("feed", "main near"));

    [Fact]
    public void Without_a_fuse_a_battery_stands_in_the_zone() => Zones(
        [Wire("main", "starter", "block"), Wire("feed", "block", "bass")], ("main", "battery"), ("feed", "battery"));

    /// <summary><c>starter - main - block -[F]- feed - bass</c></summary>
    [Fact]
    public void A_fuse_in_the_middle_protects_only_what_is_behind_it() => Zones(
        [Wire("main", "starter", "block"), Fused("feed", "block", "bass")], ("main", "battery"), ("feed", "feed near"));

    /// <summary><c>starter - main -[F]- block - feed - bass</c>: the body of the run lies before its own fuse.</summary>
    [Fact]
    public void A_fuse_at_the_far_end_leaves_its_own_run_open() => Zones(
        [Wire("main", "starter", "block") with { FarFuse = Anl(100) }, Wire("feed", "block", "bass")],
        ("main", "battery"), ("feed", "main far"));

    /// <summary>Two feeds from one block: no battery stands beyond the fuses of either.</summary>
    [Fact]
    public void A_fuse_that_leads_to_no_battery_protects_nothing_before_it() => Zones(
        [
            Fused("main", "starter", "block"), Fused("feed", "block", "bass"), Fused("on", "block", "post"),
            Fused("last", "post", "end"),
        ],
        ("main", "main near"), ("feed", "feed near"), ("on", "on near"), ("last", "last near"));

    /// <summary>
    /// <c>starter -[F]- main - block =[F][F]= post</c>: beyond either feed's fuse the battery is reached only through the zone
    /// itself, since the post leads back to the block.
    /// </summary>
    [Fact]
    public void A_way_that_comes_back_through_the_zone_reaches_no_battery() => Zones(
        [
            Fused("main", "starter", "block"), Fused("one", "block", "post"), Fused("other", "block", "post"),
            Wire("feed", "post", "bass"),
        ],
        ("main", "main near"), ("feed", "one near, other near"), ("one", "one near, other near"));

    /// <summary><c>starter -[F]- r1 - p - r2 - q - r3 -[F]- starter</c></summary>
    [Fact]
    public void A_ring_from_a_battery_has_a_fuse_at_both_its_ends() => Zones(
        [Fused("r1", "starter", "p"), Wire("r2", "p", "q"), Wire("r3", "q", "starter") with { FarFuse = Anl(100) }],
        ("r1", "r1 near, r3 far"), ("r2", "r1 near, r3 far"), ("r3", "r1 near, r3 far"));

    /// <summary>The same with a fuse at p: each half has the one at its battery and the one in the middle.</summary>
    [Fact]
    public void A_fuse_in_the_middle_of_a_ring_protects_both_halves() => Zones(
        [Fused("r1", "starter", "p"), Fused("r2", "p", "q"), Wire("r3", "q", "starter") with { FarFuse = Anl(100) }],
        ("r1", "r1 near, r2 near"), ("r2", "r2 near, r3 far"), ("r3", "r2 near, r3 far"));

    /// <summary>A ring open at one end of it: the battery stands in the zone, whatever the other end has.</summary>
    [Fact]
    public void A_ring_with_one_end_open_is_unprotected() => Zones(
        [Fused("r1", "starter", "p"), Wire("r2", "p", "q"), Wire("r3", "q", "starter")],
        ("r1", "battery"), ("r2", "battery"), ("r3", "battery"));

    /// <summary><c>block -[F]- a - post</c> and <c>block - b - post</c>: the fuse has the same zone on both sides.</summary>
    [Fact]
    public void A_fuse_that_a_way_leads_round_is_at_no_edge() => Zones(
        [
            Fused("main", "starter", "block"), Fused("a", "block", "post"), Wire("b", "block", "post"),
            Wire("feed", "post", "bass"),
        ],
        ("main", "main near"), ("a", "main near"), ("b", "main near"), ("feed", "main near"));

    /// <summary><c>starter -[F]- tie -[F]- rear</c></summary>
    [Fact]
    public void Between_two_batteries_each_end_has_a_fuse() => Zones(
        [Fused("tie", "starter", "rear") with { FarFuse = Anl(80) }, Wire("feed", "rear", "bass")],
        ("tie", "tie near, tie far"), ("feed", "battery, tie far"));

    [Fact]
    public void Between_two_batteries_one_fuse_is_not_enough() => Zones(
        [Fused("tie", "starter", "rear"), Fused("feed", "rear", "bass")], ("tie", "battery, tie near"), ("feed", "feed near"));

    /// <summary>
    /// <c>starter - front - joint -[F]- back - rear</c>: both halves have a battery of their own, and the fuse holds off only the
    /// other one.
    /// </summary>
    [Fact]
    public void A_fuse_in_the_middle_between_two_batteries_leaves_both_halves_unprotected() => Zones(
        [Wire("front", "starter", "joint"), Fused("back", "joint", "rear")],
        ("front", "battery, back near"), ("back", "battery, back near"));

    /// <summary>Two batteries feed one block, each over its own fuse.</summary>
    [Fact]
    public void What_two_batteries_feed_has_the_fuses_of_both_around_it() => Zones(
        [Fused("front", "starter", "block"), Fused("back", "rear", "block"), Wire("feed", "block", "bass")],
        ("front", "back near, front near"), ("back", "back near, front near"), ("feed", "back near, front near"));

    /// <summary>Two conductors: 2 · 60 A = 120 A where each has a fuse, 60 A where they share one.</summary>
    [Theory]
    [InlineData(true, 120)]
    [InlineData(false, 60)]
    public void A_device_lets_through_what_its_parallel_parts_do_together(bool each, double amps)
    {
        Run main = Fused("main", "starter", "bass").Times(2) with { Fuse = Anl(60) with { PerConductor = each } };
        BuildModel model = ModelOf(Of(main));
        Assert.Equal(amps, Assert.Single(new FuseZones(model.Topology, DesignOf(model)).DevicesOf(0)).TotalRatingAmps);
    }

    /// <summary>A return is no part of any zone, and a fuse in it protects nothing.</summary>
    [Fact]
    public void A_return_has_no_fuses_around_it() => Zones(
        [
            Fused("main", "starter", "bass"),
            Run("ground", "bass", "starter", 1, "1/0 AWG") with { Fuse = Anl(100), Side = Side.Return },
        ],
        ("main", "main near"), ("ground", ""));

    private static void Zones(Run[] runs, params (string Run, string Around)[] expected)
    {
        BuildModel model = ModelOf(Of(runs));
        var zones = new FuseZones(model.Topology, DesignOf(model));
        Assert.All(expected, zone =>
        {
            int run = Array.FindIndex(runs, each => each.Id == zone.Run);
            string[] fuses = [.. zones.DevicesOf(run).Select(device => Words(model, device.End)).Order(StringComparer.Ordinal)];
            string around = string.Join(", ", zones.HasBattery(run) ? ["battery", .. fuses] : fuses);
            Assert.Equal((zone.Run, Sorted(zone.Around)), (zone.Run, around));
        });
    }

    /// <summary>As written, but the fuses in the order of their names, so that a drawing may list them as they stand.</summary>
    private static string Sorted(string around)
    {
        string[] parts = around.Split(", ");
        return string.Join(", ", parts.OrderBy(part => part != "battery").ThenBy(part => part, StringComparer.Ordinal));
    }
}
