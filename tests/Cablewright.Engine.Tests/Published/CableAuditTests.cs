using Cablewright.Engine.Audits;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Tests.Audits;
using Cablewright.Vocabulary;
using ConductorAudit = Cablewright.Contract.Audits.ConductorAudit;

namespace Cablewright.Engine.Tests.Published;

/// <summary>The bench audit against published strandings, wire tables and standards; each row of data names its source.</summary>
public class CableAuditTests
{
    private const double Mm2PerCircularMil = Math.PI / 4 * 0.0254 * 0.0254;
    private const double MetresPerThousandFeet = 304.8;
    private const double KilogramsPerPound = 0.45359237;
    private const double MillimetresPerInch = 25.4;

    public static TheoryData<string, string, int, double> Strandings()
    {
        var rows = new TheoryData<string, string, int, double>();
        foreach (PublishedRow row in PublishedTable.Read("strandings"))
            rows.Add(row["family"], row["labelled_size"] + " AWG", (int)row.Number("strands"), row.Number("strand_dia_mm"));
        return rows;
    }

    public static TheoryData<string, double, double, double> Clad()
    {
        var rows = new TheoryData<string, double, double, double>();
        foreach (PublishedRow row in PublishedTable.Read("copper-clad-aluminium-wire"))
            rows.Add(
                "10 %", row.Number("dia_in"), row.Number("cca10_lb_per_kft"), row.Number("cca10_ohm_per_kft_20C"));
        foreach (PublishedRow row in PublishedTable.Read("copper-clad-aluminium-wire-15"))
            rows.Add(
                "15 %", row.Number("dia_in"), row.Number("cca15_lb_per_kft"), row.Number("cca15_ohm_per_kft_20C"));
        return rows;
    }

    public static TheoryData<string, double> Class5()
    {
        var rows = new TheoryData<string, double>();
        foreach (PublishedRow row in PublishedTable.Read("iec-60228-class-5"))
            rows.Add(row["nominal_mm2"] + " mm2", row.Number("plain_max_ohm_per_km_20C"));
        return rows;
    }

    /// <summary>Circular mils are strands times the square of the diameter in mils, by their definition.</summary>
    [Theory]
    [MemberData(nameof(Strandings))]
    public void Strands_give_the_circular_mils_of_their_gauge_and_a_short_label_is_found(
        string family, string label, int strands, double diameterMm)
    {
        ConductorAudit audit = OnTheBench.Audit(
            new BenchReport { Strands = OnTheBench.Strands(strands, diameterMm) }.Claiming(label));
        double circularMils = strands * Math.Pow(diameterMm / 0.0254, 2);
        Near.Relative(circularMils, audit.AreaMm2.Estimate / Mm2PerCircularMil, 1e-9, $"{family} {label}, circular mils");
        double claimed = ConductorSize.Of(label).NominalAreaMm2 / Mm2PerCircularMil;
        Near.Absolute(1 - circularMils / claimed, audit.ShortfallPercent!.Estimate / 100, 1e-9, $"{family} {label}, shortfall");
        double share = circularMils / claimed;
        if (share is > 0.9775 and < 0.9825) return;
        Assert.Equal(share > 0.98 ? AuditVerdict.TrueToClaim : AuditVerdict.Undersized, audit.Verdict);
    }

    [Fact]
    public void Both_sides_of_the_limit_are_among_the_strandings()
    {
        double[] shares = [.. PublishedTable.Read("strandings").Select(row => row.Number("pct_of_awg_area"))];
        Assert.True(shares.Count(share => share > 98.25) > 20);
        Assert.True(shares.Count(share => share < 97.75) > 10);
    }

    /// <summary>Source: Copper Wire Tables (bare solid copper).</summary>
    [Theory]
    [MemberData(nameof(CopperWireTablesTests.Rows), MemberType = typeof(CopperWireTablesTests))]
    public void Solid_copper_of_the_tables_is_recognised_by_its_mass(
        string size, double inches, double circularMils, double poundsPerThousandFeet)
    {
        ConductorAudit audit = OnTheBench.Audit(new BenchReport
        {
            Strands = OnTheBench.Strands(1, inches * MillimetresPerInch),
            Mass = OnTheBench.Mass(poundsPerThousandFeet * KilogramsPerPound, MetresPerThousandFeet),
        }.Claiming(size, Material.Copper));
        Assert.Equal(AuditVerdict.TrueToClaim, audit.Verdict);
        Assert.True(audit.CanBeCopper);
        Near.Relative(8.89, audit.DensityGramsPerCm3!.Estimate, 0.002, size + " density");
        Near.Relative(circularMils, audit.AreaMm2.Estimate / Mm2PerCircularMil, 0.002, size + " circular mils");
        Assert.Equal(size, audit.SoldAsGauge);
    }

    /// <summary>Source: sheet of a maker of wire to ASTM B566, solid wire of 10 and 15 % copper by volume.</summary>
    [Theory]
    [MemberData(nameof(Clad))]
    public void Copper_clad_wire_is_recognised(
        string copper, double inches, double poundsPerThousandFeet, double ohmsPerThousandFeet)
    {
        var strands = OnTheBench.Strands(1, inches * MillimetresPerInch);
        var resistance = OnTheBench.Resistance(ohmsPerThousandFeet, MetresPerThousandFeet);
        var mass = OnTheBench.Mass(poundsPerThousandFeet * KilogramsPerPound, MetresPerThousandFeet, 0.005);
        foreach (BenchReport report in new BenchReport[]
        {
            new() { Strands = strands, Resistance = resistance },
            new() { Strands = strands, Mass = mass },
            new() { Resistance = resistance, Mass = mass },
            new() { Strands = strands, Resistance = resistance, Mass = mass },
        })
        {
            ConductorAudit audit = OnTheBench.Audit(report.Claiming(null, Material.Copper));
            Assert.Equal(AuditVerdict.OtherMetal, audit.Verdict);
            Assert.False(audit.CanBeCopper);
            Assert.True(
                audit.Metals.Single(metal => metal.Material is Material.CopperCladAluminium).Possible, copper + " copper");
            if (report.Strands is null || report.Mass is null) continue;
            Assert.Equal(Material.CopperCladAluminium, audit.Material);
            Assert.DoesNotContain(audit.Metals, metal => metal is { Material: Material.Aluminium, Possible: true });
        }
    }

    /// <summary>Source: IEC 60228 class 5, largest resistance at 20 °C: 6 % less is the size, 6 % more is not.</summary>
    [Theory]
    [MemberData(nameof(Class5))]
    public void A_metric_label_is_judged_by_the_largest_resistance_that_the_standard_allows(string size, double ohmsPerKilometre)
    {
        Assert.Equal(AuditVerdict.TrueToClaim, VerdictAt(0.94));
        Assert.Equal(AuditVerdict.CannotBeTold, VerdictAt(1));
        Assert.Equal(AuditVerdict.Undersized, VerdictAt(1.06));

        AuditVerdict? VerdictAt(double factor) => OnTheBench.Audit(new BenchReport
        {
            Resistance = OnTheBench.Resistance(ohmsPerKilometre * factor / 1000, 1),
        }.Claiming(size)).Verdict;
    }

    /// <summary>The gauge number of each size is its own, from the series' definition (ASTM B258).</summary>
    [Theory]
    [InlineData("22 AWG", 22)]
    [InlineData("8 AWG", 8)]
    [InlineData("1 AWG", 1)]
    [InlineData("1/0 AWG", 0)]
    [InlineData("4/0 AWG", -3)]
    public void A_true_size_has_its_own_gauge_number(string size, double number)
    {
        double diameterMm = Math.Sqrt(4 / Math.PI * ConductorSize.Of(size).NominalAreaMm2);
        ConductorAudit audit = OnTheBench.Audit(new BenchReport { Strands = OnTheBench.Strands(1, diameterMm) });
        Assert.Equal(number, audit.Gauge.Estimate, 1e-9);
        Assert.Null(audit.Verdict);
    }
}
