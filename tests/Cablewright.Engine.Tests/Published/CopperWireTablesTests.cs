using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: the Copper Wire Tables of the National Bureau of Standards, bare solid copper, as a handbook prints them.
/// </summary>
public class CopperWireTablesTests
{
    private const double KilogramsPerPound = 0.45359237;
    private const double MetresPerThousandFeet = 304.8;
    private const double Mm2PerCircularMil = 5.067075e-4;

    public static TheoryData<string, double, double, double> Rows()
    {
        var rows = new TheoryData<string, double, double, double>();
        foreach (PublishedRow row in PublishedTable.Read("copper-wire-tables"))
            rows.Add(
                row["awg"] + " AWG",
                row.Number("textbook_diameter_in"),
                row.Number("textbook_cmil"),
                row.Number("textbook_cu_lb_per_kft"));
        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Diameter_area_and_mass_are_within_the_rounding_of_the_table(
        string size, double inches, double circularMils, double poundsPerThousandFeet)
    {
        var copper = Conductor.Of(ConductorSize.Of(size), Material.Copper);
        double diameterInches = Math.Sqrt(4 / Math.PI * copper.Size.MetalAreaMm2) / 25.4;
        Near.Absolute(inches, diameterInches, 0.000051, size + " diameter, in");
        Near.Relative(circularMils, copper.Size.MetalAreaMm2 / Mm2PerCircularMil, 0.0005, size + " circular mils");
        double solid = copper.KilogramsPerMetre / Stranding.LayFactor / KilogramsPerPound * MetresPerThousandFeet;
        Near.Relative(poundsPerThousandFeet, solid, 0.0008, size + " lb per 1000 ft, solid");
    }

    [Theory]
    [InlineData("1/0 AWG", 0.3195)]
    [InlineData("4/0 AWG", 0.6405)]
    public void A_stranded_foot_weighs_the_lay_factor_more_than_a_solid_one(string size, double poundsPerSolidFoot)
    {
        double stranded = Conductor.Of(ConductorSize.Of(size), Material.Copper).KilogramsPerMetre / KilogramsPerPound * 0.3048;
        Near.Relative(1.02 * poundsPerSolidFoot, stranded, 0.0005, size + " lb per ft, stranded");
    }
}
