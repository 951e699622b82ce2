using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: the inferred-zero form (T0 + t)/(T0 + 20) that cable standards print, copper 234.5 and aluminium 228.1 °C (a figure of
/// 238.1 for aluminium is a misprint found in one handbook). The engine uses the coefficient form.
/// </summary>
public class TemperatureFactorTests
{
    public static TheoryData<double, double, double> Rows()
    {
        var rows = new TheoryData<double, double, double>();
        foreach (PublishedRow row in PublishedTable.Read("temperature-factors"))
            rows.Add(row.Number("temp_C"), row.Number("cu_R_over_R20_T0_234.5"), row.Number("al_R_over_R20_T0_228.1"));
        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Resistance_rises_with_temperature_as_published(double celsius, double copper, double aluminium)
    {
        Near.Relative(copper, MaterialProperties.Of(Material.Copper).TemperatureFactor(celsius), 2e-4, "copper");
        Near.Relative(copper, MaterialProperties.Of(Material.TinnedCopper).TemperatureFactor(celsius), 2e-4, "tinned copper");
        Near.Relative(aluminium, MaterialProperties.Of(Material.Aluminium).TemperatureFactor(celsius), 2e-4, "aluminium");
    }
}
