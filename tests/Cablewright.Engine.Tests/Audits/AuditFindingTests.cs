using Cablewright.Contract.Assessments;
using Cablewright.Engine.Audits;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;
using ConductorAudit = Cablewright.Contract.Audits.ConductorAudit;
using TrueAmpacity = Cablewright.Contract.Audits.TrueAmpacity;

namespace Cablewright.Engine.Tests.Audits;

/// <summary>Each finding of an audit on one side of its limit and not on the other; limits worked out by hand.</summary>
public class AuditFindingTests
{
    /// <summary>4 AWG is 21.1506 mm²; 98 % of it, 20.7276 mm², must be there.</summary>
    private const double LimitMm2 = 20.7276;

    /// <summary>Resistivity of 100 % copper times the lay factor: a metre of 21.1506 mm² has 0.83147 milliohm.</summary>
    private const double OhmMm2 = 1.02 / 58;

    public static TheoryData<string> Codes => [.. AuditCodes.All.Select(code => code.Code)];

    private static (BenchReport Must, BenchReport MustNot) PairOf(string code) => code switch
    {
        // 0.1 % of the diameter is 0.2 % of the area: the upper bound meets the limit at 0.998 of it.
        "cable.undersized" => (Area(LimitMm2 * 0.9975), Area(LimitMm2 * 0.9985)),
        "cable.may-be-undersized" => (Area(LimitMm2), Area(LimitMm2 * 1.0025)),
        // As copper by resistance; the strands say how much: 1 / 0.98 of the copper's area is within lay and purity, 1.12 not.
        "cable.other-metal" => (Ratio(1.5, Material.Copper), Ratio(1.0, Material.Copper)),
        "cable.not-copper" => (Ratio(1.5, null), Ratio(1.0, null)),
        "cable.metal-not-told" => (Area(25).Claiming("4 AWG", Material.Copper), Ratio(1.0, Material.Copper)),
        "cable.measurements-disagree" => (Ratio(1.25, Material.Copper), Ratio(1.0, Material.Copper)),
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "no pair"),
    };

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_finding_stands_on_one_side_of_its_limit_and_not_on_the_other(string code)
    {
        (BenchReport must, BenchReport mustNot) = PairOf(code);
        Finding found = Assert.Single(OnTheBench.Audit(must).Findings, finding => finding.Code == code);
        Assert.DoesNotContain(OnTheBench.Audit(mustNot).Findings, finding => finding.Code == code);
        Assert.All(
            [found.Message, found.Rule, found.Source, found.Remedy, found.Workings],
            text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.Contains(RulesetLibrary.Newest.Figures, figure => figure.Id == found.Rule);
        Assert.Equal(found.Measured is null, found.Unit is null);
    }

    [Fact]
    public void What_is_not_stated_is_assumed_and_listed()
    {
        ConductorAudit audit = OnTheBench.Audit(new BenchReport
        {
            Resistance = new ResistanceMeasurement(new Reading(0.001), new Reading(1)),
        });
        Assert.Equal(
            [
                "/claim/material", "/insulationRating", "/layFactor", "/resistance/lengthUncertainty",
                "/resistance/resistanceUncertainty", "/resistance/temperature", "/resistance/temperatureUncertainty",
            ],
            audit.Assumptions.Select(assumption => assumption.Pointer).Order(StringComparer.Ordinal));
    }

    /// <summary>33 CFR 183.425 table 5: 4 AWG, 105 °C, 160 A at 30 °C; at 40 °C times sqrt(65/75).</summary>
    [Fact]
    public void A_true_size_bears_what_the_table_says()
    {
        ConductorAudit audit = OnTheBench.Audit(Area(21.15064) with { InsulationCelsius = 105 });
        TrueAmpacity cabin = audit.Ampacities.Single(bears => bears.SurroundingsCelsius == 40);
        Assert.Equal(160 * Math.Sqrt(65.0 / 75), cabin.AmpacityAmps!.Value, 0.01);
        Assert.True(cabin.LeastAmpacityAmps < cabin.AmpacityAmps);
    }

    [Fact]
    public void Nothing_measured_is_refused() => Assert.Throws<ArgumentException>(() => OnTheBench.Audit(new BenchReport()));

    private static BenchReport Area(double areaMm2) => new BenchReport
    {
        Strands = OnTheBench.Strands(100, Math.Sqrt(areaMm2 / 100 * 4 / Math.PI)),
    }.Claiming("4 AWG");

    /// <summary>A true 4 AWG by its strands whose resistance is that of copper times a factor.</summary>
    private static BenchReport Ratio(double factor, Material? claimed) => Area(21.15064).Claiming("4 AWG", claimed) with
    {
        Resistance = OnTheBench.Resistance(OhmMm2 / 21.15064 * factor, 1),
    };
}
