using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Tests.Published;
using Cablewright.Reports.Materials;
using Cablewright.Reports.Messages;
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
    /// The main run passes the bulkhead: 1.5 m of loom (common practice, no source). Nothing of it without an engine bay.
    /// </summary>
    [Fact]
    public void Small_parts_come_last_and_only_where_there_are_any()
    {
        Assert.Equal(
            [("distribution block", 1, null), ("bulkhead grommet", 1, null), ("split loom", 1, 1.5)],
            List(TwoAmplifiers).TakeLast(3).Select(line => (line.ItemName, line.Count, line.LengthMetres)));
        Assert.Equal(
            ["distribution block"],
            List(TwoAmplifiers.WithRun("strap", run => run with { Route = Route.Cabin })).Select(line => line.ItemName)
                .SkipWhile(item => item != "ring terminal").Where(item => item != "ring terminal"));
    }

    private static IReadOnlyList<MaterialLine> List(Build build) =>
        MaterialList.Of(
            DrawnRuns.NeedsOf(build), new ConductorCosts(build.Sizing, RulesetLibrary.Newest), new Speech(build.Units));

    private static Run Twice(Run run) => run with { Conductor = run.Conductor with { Count = 2 } };
}
