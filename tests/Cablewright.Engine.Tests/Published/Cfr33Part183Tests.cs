using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: 33 CFR 183.425 table 5, allowable amperage of single copper conductors at 30 °C, and its note 1, factors for engine
/// spaces at 50 °C. The table's 200 °C column is left out: no vehicle cable here is rated so.
/// </summary>
public class Cfr33Part183Tests
{
    private const int HottestColumn = 125;

    public static TheoryData<string, int, double> Rows()
    {
        var rows = new TheoryData<string, int, double>();
        foreach (PublishedRow row in PublishedTable.Read("33-cfr-183-425-table-5")
            .Where(row => row.Number("insulation_temp_c") <= HottestColumn))
            rows.Add(row["awg"] + " AWG", (int)row.Number("insulation_temp_c"), row.Number("allowable_a"));
        return rows;
    }

    public static TheoryData<int, double> EngineSpaceFactors()
    {
        var factors = new TheoryData<int, double>();
        foreach (PublishedRow row in PublishedTable.Read("33-cfr-183-425-engine-space"))
            factors.Add((int)row.Number("insulation_temp_c"), row.Number("value"));
        return factors;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Ampacity_at_30_degrees_is_the_table_itself(string size, int insulationCelsius, double amps)
    {
        AmpacityFigures figures = Of(size, Material.Copper, insulationCelsius, 30);
        Assert.Equal(amps, figures.LimitAmps, 9);
        Assert.Equal(amps, figures.TableAmps!.Value, 9);
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Cooler_surroundings_earn_nothing(string size, int insulationCelsius, double amps) =>
        Assert.Equal(amps, Of(size, Material.Copper, insulationCelsius, 10).LimitAmps, 9);

    /// <summary>
    /// The factor at 105 °C (0.85) was read; the others are from memory. The engine's square root meets all within 0.01.
    /// </summary>
    [Theory]
    [MemberData(nameof(EngineSpaceFactors))]
    public void Engine_spaces_at_50_degrees_leave_the_share_of_note_1(int insulationCelsius, double factor)
    {
        double share =
            Of("4 AWG", Material.Copper, insulationCelsius, 50).LimitAmps
                / Of("4 AWG", Material.Copper, insulationCelsius, 30).LimitAmps;
        Near.Absolute(factor, share, 0.01, $"{insulationCelsius} C");
    }

    /// <summary>
    /// The heat balance knows nothing of the table, and comes within 20 % of it for 8 AWG and larger at every rating, and for
    /// smaller sizes from 90 °C up. Small sizes at 60 to 80 °C are held down by code and not by heat: steps of 5 A, a 60 °C
    /// column that repeats the ratings of branch fuses, and a 75 °C column that repeats the 60 °C one. There the balance only has
    /// to lie above the table.
    /// </summary>
    [Theory]
    [MemberData(nameof(Rows))]
    public void The_heat_balance_agrees_with_the_table_within_20_percent(string size, int insulationCelsius, double amps)
    {
        double balance = Of(size, Material.Copper, insulationCelsius, 30).HeatBalanceAmps;
        if (IsHeldDownByCode(size, insulationCelsius)) Assert.InRange(balance, amps, 1.7 * amps);
        else Near.Relative(amps, balance, 0.20, $"{size}, {insulationCelsius} C");
    }

    private static bool IsHeldDownByCode(string size, int insulationCelsius) =>
        insulationCelsius < 90 && !ConductorSize.Of(size).IsLargerThan(ConductorSize.Of("10 AWG"));

    private static AmpacityFigures Of(string size, Material material, double insulationCelsius, double airCelsius) =>
        Ampacity.Of(Conductor.Of(ConductorSize.Of(size), material), insulationCelsius, airCelsius, 1, RulesetLibrary.Newest);
}
