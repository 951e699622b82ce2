using Cablewright.Engine.Conductors;
using Cablewright.Engine.Data;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Data;

public class LadderTests
{
    private static readonly string[] TableSizes =
        ["18", "16", "14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0"];

    private static readonly int[] TableRatings = [60, 75, 80, 90, 105, 125];

    [Fact]
    public void Fuse_ratings_rise_and_are_positive() =>
        Assert.All(RulesetLibrary.Newest.FuseFamilies.All, family =>
        {
            AssertRises(family.RatingsAmps.Values, family.Standard);
            Assert.InRange(family.ContinuousUseFactor.Value, 0.5, 1);
            Assert.True(family.VoltageRatingVolts.Value >= 32);
            Assert.InRange(family.DropAtRatingVolts.Value, 0.01, 0.5);
        });

    [Fact]
    public void Every_fuse_family_has_its_row() =>
        Assert.Equal(Enum.GetValues<FuseFamilyName>(), RulesetLibrary.Newest.FuseFamilies.All.Select(family => family.Name));

    [Fact]
    public void Every_material_has_its_row() =>
        Assert.Equal(Enum.GetValues<Material>(), MaterialProperties.All.Select(material => material.Material));

    [Fact]
    public void Metric_sizes_rise_and_their_resistances_fall()
    {
        MetricSizeRow[] rows = Embedded.Read("Conductors/metric-sizes.json", ConductorsJson.Default.MetricSizeRowArray);
        AssertRises([.. rows.Select(row => row.NominalMm2)], "nominal area");
        AssertRises([.. rows.Select(row => -row.PlainMaxOhmsPerKilometre)], "plain resistance, falling");
        AssertRises([.. rows.Select(row => -row.TinnedMaxOhmsPerKilometre)], "tinned resistance, falling");
        Assert.All(rows, row => Assert.InRange(row.TinnedMaxOhmsPerKilometre / row.PlainMaxOhmsPerKilometre, 1.015, 1.031));
    }

    [Fact]
    public void Insulation_walls_rise_and_reach_the_largest_size()
    {
        WallRow[] rows = Embedded.Read("Heat/insulation-walls.json", HeatJson.Default.WallRowArray);
        AssertRises([.. rows.Select(row => row.UpToMm2)], "area");
        AssertRises([.. rows.Select(row => row.WallMillimetres)], "wall");
        Assert.True(rows[^1].UpToMm2 >= ConductorSize.All[^1].NominalAreaMm2);
    }

    [Fact]
    public void The_ampacity_table_has_every_size_and_rating_once_and_never_falls_along_either()
    {
        IReadOnlyList<AmpacityRow> rows = RulesetLibrary.Newest.Ampacity.Rows;
        var amps = rows.ToDictionary(row => (row.Size, row.InsulationCelsius), row => row.Amps);
        Assert.Equal(TableSizes.Length * TableRatings.Length, amps.Count);
        foreach (int rating in TableRatings)
            AssertRises([.. TableSizes.Select(size => amps[(size + " AWG", rating)])], $"{rating} C column");
        foreach (string size in TableSizes)
        {
            double[] row = [.. TableRatings.Select(rating => amps[(size + " AWG", rating)])];
            Assert.Equal(row.Order(), row);
        }
    }

    private static void AssertRises(IReadOnlyList<double> values, string what)
    {
        Assert.NotEmpty(values);
        foreach ((double lower, double higher) in values.Zip(values.Skip(1)))
            Assert.True(lower < higher, $"{what}: {lower} is followed by {higher}");
    }
}
