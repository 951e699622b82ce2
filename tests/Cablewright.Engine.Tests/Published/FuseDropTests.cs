using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>Source: drop at rated current and cold resistance of 32 V blades, maker sheets as the table names them.</summary>
public class FuseDropTests
{
    public static TheoryData<string, double, double, double?> Sheets()
    {
        var sheets = new TheoryData<string, double, double, double?>();
        foreach (PublishedRow row in PublishedTable.Read("fuse-drops"))
            sheets.Add(
                row["family"], row.Number("rating_a"), row.Number("drop_at_rating_mv") / 1000,
                row["cold_mohm"].Length > 0 ? row.Number("cold_mohm") / 1000 : null);
        return sheets;
    }

    /// <summary>Hot, at its rating, within a tenth; cold, 1.3 to 1.5 times less.</summary>
    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_blade_drops_what_its_sheet_says(string family, double rating, double volts, double? coldOhms)
    {
        FuseFamily blade = RulesetLibrary.Newest.FuseFamilies.All.Single(each => each.Name.Word() == family);
        Near.Relative(volts, blade.Ohms(rating) * rating, 0.1, "drop at its rating, V");
        if (coldOhms is { } cold) Assert.InRange(blade.Ohms(rating) / cold, 1.2, 1.55);
    }
}
