using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: sheet of a maker of copper-clad aluminium wire to ASTM B566, 10 % copper by volume, solid wire (so without the lay
/// factor). The sheet gives diameters to 0.0001 in and masses to 0.01 lb, hence the tolerance.
/// </summary>
public class CopperCladWireTests
{
    private const double RoundingOfTheSheet = 0.008;

    public static TheoryData<string, double, double> Rows()
    {
        var rows = new TheoryData<string, double, double>();
        foreach (PublishedRow row in PublishedTable.Read("copper-clad-aluminium-wire"))
            rows.Add(row["awg"] + " AWG", row.Number("cca10_lb_per_kft"), row.Number("cca10_ohm_per_kft_20C"));
        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Resistance_and_mass_are_those_of_the_sheet(string size, double poundsPerThousandFeet, double ohmsPerThousandFeet)
    {
        var clad = Conductor.Of(ConductorSize.Of(size), Material.CopperCladAluminium);
        Near.Relative(
            ohmsPerThousandFeet,
            clad.OhmsPerMetreAt20 / Stranding.LayFactor * 304.8,
            RoundingOfTheSheet,
            size + " ohm per 1000 ft");
        Near.Relative(
            poundsPerThousandFeet,
            clad.KilogramsPerMetre / Stranding.LayFactor / 0.45359237 * 304.8,
            RoundingOfTheSheet,
            size + " lb per 1000 ft");
    }
}
