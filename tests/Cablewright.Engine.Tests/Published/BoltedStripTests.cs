using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: the time-current graph and the melting energies of a 32 V bolt-in strip of ISO 8820-5 type SF51, 300 to 500 A, quoted
/// in a public parts-data file.
/// </summary>
public class BoltedStripTests
{
    private static readonly TimeCurrentBand Band =
        RulesetLibrary.Newest.FuseFamilies.Of(FuseFamilyName.StripSf51).TimeCurrentBand;

    public static TheoryData<double, double, double?> Graph()
    {
        var points = new TheoryData<double, double, double?>();
        foreach (PublishedRow row in PublishedTable.Read("sf51-opening"))
            points.Add(
                row.Number("rating_a"), row.Number("current_a"),
                row["typical_open_s"].Length > 0 ? row.Number("typical_open_s") : null);
        return points;
    }

    /// <summary>
    /// Both edges hold every point of the graph; below 135 %, where opening is not certain, the fast edge alone does.
    /// </summary>
    [Theory]
    [MemberData(nameof(Graph))]
    public void The_band_holds_the_points_of_the_graph(double rating, double amps, double? seconds)
    {
        double opens = seconds ?? double.PositiveInfinity, share = amps / rating;
        Assert.True(Band.FastestSeconds(share) <= opens, $"fast edge {Band.FastestSeconds(share)} s");
        if (share >= 1.35) Assert.True(Band.SlowestSeconds(share) >= opens, $"slow edge {Band.SlowestSeconds(share)} s");
        else Assert.Null(Band.SlowestSeconds(share));
    }

    public static TheoryData<double, double> Energies()
    {
        var energies = new TheoryData<double, double>();
        foreach (PublishedRow row in PublishedTable.Read("sf51-melting-energy"))
            energies.Add(row.Number("rating_a"), row.Number("i2t_a2s"));
        return energies;
    }

    /// <summary>
    /// At the currents of short circuits a fuse melts by its energy: from the last gate on, 6 times its rating, both edges lie
    /// on either side of I²t/I².
    /// </summary>
    [Theory]
    [MemberData(nameof(Energies))]
    public void In_a_short_circuit_the_band_holds_the_melting_energy(double rating, double energy)
    {
        foreach (double share in new[] { 6.0, 8, 12, 20, 40 })
        {
            double melts = energy / Math.Pow(share * rating, 2);
            Assert.True(Band.FastestSeconds(share) <= melts, $"fast edge {Band.FastestSeconds(share)} s of {melts} s");
            Assert.True(Band.SlowestSeconds(share) >= melts, $"slow edge {Band.SlowestSeconds(share)} s of {melts} s");
        }
    }

    /// <summary>Beyond the last gate the time falls with the square of the current, down to the time of the arc.</summary>
    [Fact]
    public void Beyond_the_last_gate_the_energy_stays()
    {
        Near.Relative(1.0 / 9, Band.SlowestSeconds(18)!.Value, 1e-9, "slow edge at 18 times, s");
        Assert.Equal(Band.ArcingSeconds.Value, Band.SlowestSeconds(600));
    }

    /// <summary>A band that was read is taken as it stands; one of which a point is recalled may be off.</summary>
    [Fact]
    public void It_may_be_taken_as_it_stands_and_recalled_bands_may_not()
    {
        Assert.True(Band.IsRead);
        Assert.All(RulesetLibrary.Newest.FuseFamilies.All, family => Assert.Equal(
            family.TimeCurrentBand.Points.Any(point => point.Provenance != "read"),
            family.TimeCurrentBand.Uncertainty is { Value: > 1, Provenance: "from memory" }));
    }
}
