using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>Source: IEC 60228:2004 class 5 (flexible), maximum conductor resistance at 20 °C.</summary>
public class Iec60228Class5Tests
{
    public static TheoryData<string, double, double, double> Rows()
    {
        var rows = new TheoryData<string, double, double, double>();
        foreach (PublishedRow row in PublishedTable.Read("iec-60228-class-5"))
            rows.Add(
                row["nominal_mm2"] + " mm2",
                row.Number("nominal_mm2"),
                row.Number("plain_max_ohm_per_km_20C"),
                row.Number("tinned_max_ohm_per_km_20C"));
        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_metric_size_has_the_largest_resistance_that_the_standard_permits(
        string size, double nominal, double plain, double tinned)
    {
        Assert.Equal(nominal, ConductorSize.Of(size).NominalAreaMm2);
        Near.Relative(
            plain, 1000 * Conductor.Of(ConductorSize.Of(size), Material.Copper).OhmsPerMetreAt20, 1e-12, size + " plain");
        Near.Relative(
            tinned, 1000 * Conductor.Of(ConductorSize.Of(size), Material.TinnedCopper).OhmsPerMetreAt20, 1e-12, size + " tinned");
    }

    /// <summary>
    /// A gauge size holds its full area of metal, so the same area of it may not resist more than the standard permits.
    /// </summary>
    [Theory]
    [MemberData(nameof(Rows))]
    public void A_conductor_of_the_full_nominal_area_is_within_the_maximum(
        string size, double nominal, double plain, double tinned)
    {
        Assert.True(1000 * OhmMm2PerMetre(Material.Copper) / nominal <= plain, size);
        Assert.True(1000 * OhmMm2PerMetre(Material.TinnedCopper) / nominal <= tinned, size);
    }

    /// <summary>A conductor at the maximum holds less metal than its label says: 4 to 14 % less than nominal.</summary>
    [Theory]
    [MemberData(nameof(Rows))]
    public void The_metal_certain_to_be_there_is_less_than_the_label_says(
        string size, double nominal, double plain, double tinned)
    {
        Assert.True(tinned > plain);
        Assert.InRange(ConductorSize.Of(size).MetalAreaMm2 / nominal, 0.86, 0.96);
    }

    private static double OhmMm2PerMetre(Material material)
    {
        var gauge = Conductor.Of(ConductorSize.Of("4 AWG"), material);
        return gauge.OhmsPerMetreAt20 * gauge.Size.MetalAreaMm2;
    }
}
