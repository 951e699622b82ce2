using Cablewright.Engine.Builds;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Materials;

/// <summary>
/// What a job needs, counted by hand. A tenth more than the measured length is bought, 1.5 m of loom cover a run that leaves the
/// engine bay, and a ring terminal goes on each end at a battery or at the body (common practice, no source).
/// </summary>
public class BillOfMaterialsTests
{
    /// <summary>5 m and a tenth: 5.5 m. 0.6 m: 0.66 m.</summary>
    [Fact]
    public void A_piece_is_a_tenth_longer_than_the_run()
    {
        BillOfMaterials needs = NeedsOf(Supply("main", "starter", "bass", 5), Return("ground", "bass", "body", 0.6));
        IReadOnlyList<WirePiece> pieces = [.. needs.Pieces.Take(2)];
        Assert.Equal(["main", "ground"], pieces.Select(piece => piece.Run.Id));
        Near.Relative(5.5, pieces[0].CutMetres, 1e-12, "main, m");
        Near.Relative(0.66, pieces[1].CutMetres, 1e-12, "ground, m");
    }

    [Theory]
    [InlineData("starter", "bass", 1, 1)]
    [InlineData("starter", "rear", 1, 2)]
    [InlineData("starter", "bass", 2, 2)]
    [InlineData("starter", "rear", 3, 6)]
    [InlineData("block", "bass", 1, 0)]
    [InlineData("block", "rear", 1, 1)]
    [InlineData("bass", "body", 1, 1)]
    [InlineData("rear", "body", 2, 4)]
    public void Each_end_at_a_battery_or_the_body_has_a_ring_terminal_on_each_conductor(
        string from, string to, int count, int rings)
    {
        Run run = Supply("run", from, to, 1);
        Assert.Equal(rings, NeedsOf(run with { Conductor = run.Conductor with { Count = count } }).Pieces[0].RingTerminals);
    }

    /// <summary>
    /// The starter battery's own strap is there; a second battery's is not, and neither is an amplifier's ground.
    /// </summary>
    [Theory]
    [InlineData("starter", "body", true)]
    [InlineData("body", "starter", true)]
    [InlineData("rear", "body", false)]
    [InlineData("bass", "body", false)]
    [InlineData("bass", "starter", false)]
    public void The_charging_battery_s_strap_is_the_vehicle_s(string from, string to, bool isVehicles) =>
        Assert.Equal(isVehicles, NeedsOf(Return("run", from, to, 1)).Pieces[0].IsVehicles);

    [Fact]
    public void The_alternator_s_cable_is_the_vehicle_s_and_no_other_supply_run()
    {
        BillOfMaterials needs = DrawnRuns.NeedsOf(WithAlternator(
            Supply("charge", "alternator", "starter", 1), Supply("back", "starter", "alternator", 1),
            Supply("main", "starter", "bass", 5)));
        Assert.Equal(["charge", "back"], needs.Pieces.Where(piece => piece.IsVehicles).Select(piece => piece.Run.Id));
    }

    /// <summary>Where the battery's strap or any of its cables lies beside the engine, the battery is under the bonnet.</summary>
    [Theory]
    [InlineData(Route.EngineBay, Route.Cabin, true)]
    [InlineData(Route.Cabin, Route.EngineBay, true)]
    [InlineData(Route.Cabin, Route.Cabin, false)]
    [InlineData(Route.Underbody, Route.Underbody, false)]
    public void A_cable_from_a_battery_under_the_bonnet_passes_the_bulkhead(Route main, Route strap, bool passes)
    {
        BillOfMaterials needs = NeedsOf(
            Supply("main", "starter", "bass", 5) with { Route = main }, Return("ground", "bass", "body", 0.6),
            Return("strap", "body", "starter", 0.4) with { Route = strap });
        Assert.Equal(passes ? ["main"] : [], needs.Grommets.Select(run => run.Id));
        Assert.Equal(passes ? 1.5 : 0, needs.LoomMetres);
    }

    /// <summary>A block with all its runs beside the engine is there too; with one that lies elsewhere it is not.</summary>
    [Theory]
    [InlineData(Route.EngineBay, new[] { "feed", "other" }, 0.8 + 1.5 + 1.5)]
    [InlineData(Route.Cabin, new[] { "main" }, 0.8)]
    public void The_run_that_passes_the_bulkhead_is_the_one_that_leaves_the_engine_bay(Route other, string[] passing, double loom)
    {
        BillOfMaterials needs = NeedsOf(
            Beside(Supply("main", "starter", "block", 0.8)), Beside(Supply("feed", "block", "bass", 5)),
            Supply("other", "block", "treble", 4) with { Route = other });
        Assert.Equal(passing, needs.Grommets.Select(run => run.Id));
        Near.Relative(loom, needs.LoomMetres, 1e-12, "loom, m");
    }

    /// <summary>A second battery stands in the boot, whatever its cable passes.</summary>
    [Fact]
    public void A_second_battery_is_not_under_the_bonnet()
    {
        BillOfMaterials needs = NeedsOf(Beside(Supply("link", "starter", "rear", 4)), Beside(Supply("feed", "rear", "bass", 1)));
        Assert.Equal(["link"], needs.Grommets.Select(run => run.Id));
    }

    /// <summary>
    /// The alternator is beside the engine even where nothing says so; the loom of the vehicle's own cable is there.
    /// </summary>
    [Fact]
    public void The_alternator_is_under_the_bonnet()
    {
        BillOfMaterials needs = DrawnRuns.NeedsOf(WithAlternator(Supply("charge", "alternator", "starter", 4)));
        Assert.Equal(["charge"], needs.Grommets.Select(run => run.Id));
        Assert.Equal(0, needs.LoomMetres);
    }

    /// <summary>What is bolted to the body is bolted on the side where it is.</summary>
    [Fact]
    public void A_run_to_the_body_passes_no_bulkhead() => Assert.DoesNotContain(
        NeedsOf(
            Beside(Supply("main", "starter", "bass", 5)), Beside(Return("strap", "starter", "body", 0.9)),
            Beside(Return("ground", "bass", "body", 1))).Grommets,
        run => run.Run.To == "body");

    /// <summary>A run that leaves the engine bay and is shorter than 1.5 m needs only its own length.</summary>
    [Fact]
    public void The_loom_is_no_longer_than_the_run() =>
        Assert.Equal(1.2, NeedsOf(Beside(Supply("main", "starter", "bass", 1.2))).LoomMetres);

    /// <summary>One run in and two out: two ways. One in and one out is a joint, and a battery is no block.</summary>
    [Fact]
    public void A_junction_that_parts_one_supply_run_into_several_is_a_block()
    {
        BillOfMaterials needs = NeedsOf(
            Supply("main", "starter", "block", 5), Supply("one", "block", "bass", 1), Supply("other", "block", "joint", 1),
            Supply("on", "joint", "treble", 1), Supply("second", "starter", "star", 1), Supply("a", "star", "bass", 1),
            Supply("b", "star", "treble", 1), Supply("c", "star", "rear", 1));
        Assert.Equal([new BlockNeed("block", 2), new BlockNeed("star", 3)], needs.Blocks);
    }

    [Fact]
    public void Returns_that_meet_are_no_distribution_block() => Assert.Empty(NeedsOf(
        Return("one", "bass", "post", 1), Return("other", "treble", "post", 1), Return("on", "post", "body", 1)).Blocks);

    [Fact]
    public void Each_amplifier_is_counted() => Assert.Equal(2, NeedsOf(Supply("main", "starter", "bass", 5)).Amplifiers);

    private static BillOfMaterials NeedsOf(params Run[] runs) => DrawnRuns.NeedsOf(Of(runs));

    private static Build WithAlternator(params Run[] runs)
    {
        Build build = Of(runs);
        return build with { Vehicle = build.Vehicle with { Alternator = new Alternator { RatedAmps = 100, At = "alternator" } } };
    }

    /// <summary>The runs first; both amplifiers are grounded at the body far from any engine.</summary>
    private static Build Of(Run[] runs) => OneAmplifier() with
    {
        Vehicle = OneAmplifier().Vehicle with { Batteries = [Starter(), Starter() with { Id = "rear" }] },
        Amplifiers = [OneAmplifier().Amplifiers[0], OneAmplifier().Amplifiers[0] with { Id = "treble" }],
        Runs = [.. runs, Return("bass-ground", "bass", "body", 0.6), Return("treble-ground", "treble", "body", 0.6)],
    };

    private static Run Supply(string id, string from, string to, double metres) =>
        Run(id, from, to, metres, "4 AWG") with { Side = Side.Supply };

    private static Run Return(string id, string from, string to, double metres) =>
        Run(id, from, to, metres, "4 AWG") with { Side = Side.Return };

    private static Run Beside(Run run) => run with { Route = Route.EngineBay };
}
