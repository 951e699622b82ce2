using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: what parts of each family break at a voltage, scopes of standards and maker data as the table names them.
/// </summary>
public class InterruptingRatingTests
{
    public static TheoryData<string, double, double> Parts()
    {
        var parts = new TheoryData<string, double, double>();
        foreach (PublishedRow row in PublishedTable.Read("interrupting-ratings")
            .DistinctBy(row => (row["family"], row["volts"])))
            parts.Add(row["family"], row.Number("volts"), row.Number("amps"));
        return parts;
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void A_family_breaks_what_its_parts_do_at_their_voltage(string family, double volts, double amps) =>
        Assert.Equal(amps, Family(family).InterruptingAt(volts).Amps);

    /// <summary>
    /// A figure for 58 V holds at 33 V; at 32 V the one for 32 V does; beyond the last one nothing more is known.
    /// </summary>
    [Theory]
    [InlineData(16, 2000)]
    [InlineData(32, 2000)]
    [InlineData(33, 1000)]
    [InlineData(58, 1000)]
    [InlineData(64, 1000)]
    public void Between_two_voltages_the_higher_one_counts(double volts, double amps) =>
        Assert.Equal(amps, Family("strip-sf30").InterruptingAt(volts).Amps);

    /// <summary>
    /// Two flooded batteries of 800 A cold cranking ask for 3000 A (ABYC E-11), and no more than flows: 12.6 V/5 mΩ = 2520 A. A
    /// bolt-in strip for 32 V breaks 2000 A, one for 58 V 1000 A; a link without a listing 2700 A, a listed one for 80 V 6000 A.
    /// </summary>
    [Theory]
    [InlineData(FuseFamilyName.StripSf30, null, 2000.0)]
    [InlineData(FuseFamilyName.StripSf30, 58.0, 1000.0)]
    [InlineData(FuseFamilyName.Anl, null, null)]
    public void A_part_is_judged_at_its_own_voltage(FuseFamilyName family, double? volts, double? limit)
    {
        FuseWish wish = new() { RatingAmps = 80, Family = family, DistanceMetres = 0.1, VoltageRatingVolts = volts };
        Build build = Proved().WithRun("main", run => run with { Fuse = wish })
            .WithBattery("starter", battery => battery with { ColdCrankingAmps = 800 });
        Finding? finding = Assessed.Of(build).Findings.SingleOrDefault(each => each.Code == "fuse.interrupting-rating-unknown");
        Assert.Equal(limit, finding?.Limit);
    }

    private static FuseFamily Family(string word) =>
        RulesetLibrary.Newest.FuseFamilies.All.Single(family => family.Name.Word() == word);
}
