using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>Source: time-current gates of ISO 8820-3 type C and E blades for 32 V, as maker sheets print them.</summary>
public class OpeningGateTests
{
    /// <summary>Several sheets print the same gate: each is put once.</summary>
    public static TheoryData<string, double, string, string> Gates()
    {
        var gates = new TheoryData<string, double, string, string>();
        foreach (PublishedRow row in PublishedTable.Read("iso-8820-3-gates")
            .DistinctBy(row => (row["family"], row["percent_of_rating"], row["min_open_s"], row["max_open_s"])))
            gates.Add(row["family"], row.Number("percent_of_rating"), row["min_open_s"], row["max_open_s"]);
        return gates;
    }

    [Theory]
    [MemberData(nameof(Gates))]
    public void At_a_gate_the_times_are_the_printed_ones(string family, double percent, string shortest, string longest)
    {
        TimeCurrentBand band = Band(family);
        if (longest.Length > 0) Assert.Equal(Number(longest), band.SlowestSeconds(percent / 100));
        else Assert.Null(band.SlowestSeconds(percent / 100));
        if (shortest.Length > 0) Assert.True(band.FastestSeconds(percent / 100) >= Number(shortest), $"{family} {percent} %");
        if (shortest.Length > 0 && longest.Length > 0) Assert.Equal(Number(shortest), band.FastestSeconds(percent / 100));
    }

    [Fact]
    public void Both_blade_types_have_gates() =>
        Assert.Equal(
            ["blade-c", "blade-e"], PublishedTable.Read("iso-8820-3-gates").Select(row => row["family"]).Distinct().Order());

    /// <summary>Opening is certain from 135 % on: at 110 % a blade holds for 100 h, and no longest time is printed.</summary>
    [Theory]
    [InlineData("blade-c")]
    [InlineData("blade-e")]
    public void Below_135_percent_no_opening_is_certain(string family)
    {
        Assert.Null(Band(family).SlowestSeconds(1.10));
        Assert.Null(Band(family).SlowestSeconds(1.349));
        Assert.NotNull(Band(family).SlowestSeconds(1.35));
        Assert.True(Band(family).IsRead);
    }

    /// <summary>
    /// Halfway between 200 and 350 % on the scale of the sheets' charts: √(2 · 3.5) = 2.6458 times, √(5 · 0.5) = 1.5811 s and
    /// √(0.15 · 0.08) = 0.10954 s.
    /// </summary>
    [Fact]
    public void Between_two_gates_it_goes_straight_on_logarithmic_scales()
    {
        double share = Math.Sqrt(2 * 3.5);
        Near.Relative(1.5811, Band("blade-c").SlowestSeconds(share)!.Value, 1e-4, "slow edge, s");
        Near.Relative(0.10954, Band("blade-c").FastestSeconds(share), 1e-4, "fast edge, s");
    }

    private static TimeCurrentBand Band(string family) =>
        RulesetLibrary.Newest.FuseFamilies.All.Single(other => other.Name.Word() == family).TimeCurrentBand;

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
