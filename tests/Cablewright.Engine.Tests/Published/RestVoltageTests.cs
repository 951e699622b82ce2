using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: five public lists of rest voltages, as the table names them. They differ by up to 0.25 V at one state of charge, those
/// of lithium iron phosphate by 1 V when full, since some give what a charger leaves behind and not what is left a day later.
/// </summary>
public class RestVoltageTests
{
    private static readonly RestVoltages Rest = RulesetLibrary.Newest.RestVoltages;

    public static TheoryData<string, double, double, string> Rows()
    {
        var rows = new TheoryData<string, double, double, string>();
        foreach (PublishedRow row in PublishedTable.Read("battery-rest-voltages"))
            rows.Add(row["chemistry"], row.Number("soc_percent"), row.Number("volts"), row["source"]);
        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_rest_voltage_lies_among_those_of_the_published_lists(
        string chemistry, double percent, double volts, string source)
    {
        double engine = Rest.At(Of(chemistry), percent / 100);
        double[] lists = [.. ListsOf(chemistry).Select(list => At(list, percent)).OfType<double>()];
        Assert.InRange(engine, lists.Min() - 1e-9, lists.Max() + 1e-9);
        Near.Absolute(volts, engine, chemistry != "lifepo4" ? 0.25 : percent < 100 ? 0.45 : 1, $"{source}, {percent} %, V");
    }

    /// <summary>From memory, for want of a list that was read: glass mat and gel rest higher than flooded when full.</summary>
    [Theory]
    [InlineData(Chemistry.Agm)]
    [InlineData(Chemistry.Gel)]
    public void Sealed_lead_acid_rests_within_0_3_volts_of_flooded_and_above_it_when_full(Chemistry chemistry)
    {
        for (double state = 0; state <= 1; state += 0.05)
            Near.Absolute(
                Rest.At(Chemistry.Flooded, state), Rest.At(chemistry, state), 0.3, $"{chemistry} at {state}, V");
        Assert.True(Rest.At(chemistry, 1) > Rest.At(Chemistry.Flooded, 1));
    }

    [Fact]
    public void A_fuller_battery_never_rests_lower() => Assert.All(Enum.GetValues<Chemistry>(), chemistry =>
    {
        for (double state = 0.01; state <= 1; state += 0.01)
            Assert.True(Rest.At(chemistry, state) > Rest.At(chemistry, state - 0.01), $"{chemistry} at {state}");
    });

    private static Chemistry Of(string word) => Enum.GetValues<Chemistry>().Single(chemistry => chemistry.Word() == word);

    private static IEnumerable<(double Percent, double Volts)[]> ListsOf(string chemistry) =>
        PublishedTable.Read("battery-rest-voltages").Where(row => row["chemistry"] == chemistry).GroupBy(row => row["source"])
            .Select(list => list.Select(row => (row.Number("soc_percent"), row.Number("volts"))).Order().ToArray());

    /// <summary>Straight between a list's points; <c>null</c> beyond them.</summary>
    private static double? At((double Percent, double Volts)[] list, double percent)
    {
        if (percent < list[0].Percent || percent > list[^1].Percent) return null;
        (double Percent, double Volts) above = list.First(point => point.Percent >= percent);
        (double Percent, double Volts) below = list.Last(point => point.Percent <= percent);
        return above == below
            ? above.Volts
            : below.Volts + (above.Volts - below.Volts) * (percent - below.Percent) / (above.Percent - below.Percent);
    }
}
