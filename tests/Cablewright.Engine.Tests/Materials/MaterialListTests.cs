using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Tests.Published;
using Cablewright.Reports.Materials;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Materials;

/// <summary>
/// Like put with like, for two amplifiers behind a block: 4 m of 1/0 from under the bonnet, two feeds of 6 AWG (1 m, and 2 m of
/// two conductors), one ground of 1/0 and one of 6 AWG, and the battery's strap.
/// </summary>
public class MaterialListTests
{
    private static readonly Build TwoAmplifiers = OneAmplifier() with
    {
        Amplifiers = [OneAmplifier().Amplifiers[0], OneAmplifier().Amplifiers[0] with { Id = "treble" }],
        Runs =
        [
            Run("feed", "block", "bass", 1, "6 AWG") with { Fuse = Anl(60) },
            Twice(Run("other", "block", "treble", 2, "6 AWG")) with { Fuse = Anl(60) with { PerConductor = true } },
            Run("main", "starter", "block", 4, "1/0 AWG") with { Fuse = Anl(150), FarFuse = Blade(60) },
            Run("ground", "bass", "body", 0.5, "6 AWG"),
            Run("other-ground", "treble", "body", 0.5, "1/0 AWG"),
            Run("strap", "body", "starter", 0.3, "1/0 AWG") with { Route = Route.EngineBay },
        ],
    };

    /// <summary>
    /// Power 1/0: 4 m. 6 AWG: 1 + 2 · 2 = 5 m in three pieces. Ground 1/0: 0.5 + 0.3 = 0.8 m in two, 6 AWG 0.5 m in one. A tenth
    /// more is bought (common practice, no source).
    /// </summary>
    [Fact]
    public void Cable_of_one_side_size_and_metal_is_one_line_the_thickest_first()
    {
        MaterialLine[] cables =
            [.. List(TwoAmplifiers).TakeWhile(line => line.ItemName.EndsWith("wire", StringComparison.Ordinal))];
        Assert.Equal(
            [
                ("power wire", "1/0 AWG", 1), ("power wire", "6 AWG", 3),
                ("ground wire", "1/0 AWG", 2), ("ground wire", "6 AWG", 1),
            ],
            cables.Select(line => (line.ItemName, line.Size!, line.Count)));
        double[] metres = [4, 5, 0.8, 0.5];
        Assert.All(cables.Zip(metres), pair =>
        {
            Near.Relative(pair.Second, pair.First.LengthMetres!.Value, 1e-12, "metres");
            Near.Relative(1.1 * pair.Second, pair.First.CutLengthMetres!.Value, 1e-12, "metres to buy");
        });
    }

    [Fact]
    public void Another_metal_is_another_line()
    {
        Build mixed = TwoAmplifiers.WithRun(
            "other", run => run with { Conductor = run.Conductor with { Material = Material.TinnedCopper } });
        Assert.Equal(
            [(Material.Copper, 1), (Material.TinnedCopper, 2)],
            List(mixed).Where(line => line is { ItemName: "power wire", Size: "6 AWG" })
                .Select(line => (line.Material!.Value, line.Count)));
    }

    /// <summary>ANL 60 A: one on a feed and one on each of two conductors. A blade of 60 A is another fuse.</summary>
    [Fact]
    public void Fuses_of_one_family_and_rating_are_one_line_the_largest_first() => Assert.Equal(
        [(150.0, FuseFamilyName.Anl, 1), (60.0, FuseFamilyName.BladeE, 1), (60.0, FuseFamilyName.Anl, 3)],
        List(TwoAmplifiers).Where(line => line.ItemName == "fuse with holder")
            .Select(line => (line.RatingAmps!.Value, line.Family!.Value, line.Count)));

    /// <summary>
    /// 1/0: one of the main run, one of a ground, two of the strap. 6 AWG: one of a ground; the feeds have none.
    /// </summary>
    [Fact]
    public void Ring_terminals_are_counted_by_the_conductor_that_they_go_on()
    {
        Assert.Equal([("1/0 AWG", 4), ("6 AWG", 1)], Rings(TwoAmplifiers));
        Assert.Equal([("1/0 AWG", 4), ("4 AWG", 1)], Rings(TwoAmplifiers.WithRun("ground", run => run.Sized("4 AWG"))));

        static IEnumerable<(string Size, int Count)> Rings(Build build) =>
            List(build).Where(line => line.ItemName == "ring terminal").Select(line => (line.Size!, line.Count));
    }

    /// <summary>
    /// 6 AWG: one feed, two conductors of the other and a ground end at amplifiers; 1/0 is more than 4 AWG, which the terminals
    /// of an amplifier of 300 W usually accept (common practice, no source).
    /// </summary>
    [Fact]
    public void What_ends_at_an_amplifier_has_a_ferrule_or_a_reducer() => Assert.Equal(
        [("reducer", "1/0 AWG", "4 AWG", 1), ("ferrule", "6 AWG", null, 4)],
        List(TwoAmplifiers with
        {
            Amplifiers = [TwoAmplifiers.Amplifiers[0], TwoAmplifiers.Amplifiers[1] with { RatedOutputWatts = 300 }],
        }).Where(line => line.ItemName is "ferrule" or "reducer")
            .Select(line => (line.ItemName, line.Size!, line.ReducedTo, line.Count)));

    /// <summary>
    /// The main run passes the bulkhead: 1.5 m of loom (common practice, no source). Three rings besides those of the vehicle's
    /// strap. 7 m of supply with a tie every 18 in: 15.3. A lead of 15 ft to the rear, and a signal for each amplifier.
    /// </summary>
    [Fact]
    public void Small_parts_come_last()
    {
        Assert.Equal(
            [
                ("distribution block", 1, null), ("bulkhead grommet", 1, null), ("split loom", 1, 1.5),
                ("heat-shrink sleeve", 3, null), ("tie or clamp", 16, null), ("turn-on lead", 1, 4.572),
                ("signal interconnect", 2, 4.572),
            ],
            List(TwoAmplifiers).TakeLast(7).Select(line => (line.ItemName, line.Count, line.LengthMetres)));
        Assert.Equal(2, List(TwoAmplifiers).Single(line => line.ItemName == "distribution block").Ways);
    }

    [Fact]
    public void Without_an_engine_bay_there_is_neither_grommet_nor_loom() => Assert.DoesNotContain(
        List(TwoAmplifiers.WithRun("strap", run => run with { Route = Route.Cabin })),
        line => line.ItemName is "bulkhead grommet" or "split loom");

    private static IReadOnlyList<MaterialLine> List(Build build) =>
        MaterialList.Of(DrawnRuns.NeedsOf(build), new PriceList(build.Sizing, RulesetLibrary.Newest));

    private static Run Twice(Run run) => run with { Conductor = run.Conductor with { Count = 2 } };
}
