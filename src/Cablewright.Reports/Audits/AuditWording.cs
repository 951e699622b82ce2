using Cablewright.Contract.Assessments;
using Cablewright.Engine.Audits;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Reference;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;
using BenchReport = Cablewright.Engine.Audits.BenchReport;

namespace Cablewright.Reports.Audits;

/// <summary>Puts what an audit found into words.</summary>
internal sealed class AuditWording(
    BenchReport report, MetalReading metal, AuditJudgement judged, Bench bench, Ruleset ruleset)
{
    private readonly Speech speech = new(report.Units);

    /// <summary>The findings, the worst first.</summary>
    public IReadOnlyList<Finding> Findings() =>
        [.. new[] { OtherMetal(), Undersized(), Contradiction(), NotCopper(), MayBeUndersized(), MetalNotTold() }
            .OfType<Finding>().OrderByDescending(finding => finding.Severity)];

    private string SoldAs
    {
        get
        {
            ConductorSize? gauge = TrueSize.LargestGaugeFor(metal.AreaMm2.Estimate, ruleset);
            ConductorSize? metric = TrueSize.LargestMetricFor(metal.AreaMm2.Estimate, ruleset);
            string sizes = string.Join(" or ", new[] { gauge, metric }.OfType<ConductorSize>());
            return sizes.Length == 0 ? "below every size known here" : $"{sizes}, {metal.Taken.Material.InText()}";
        }
    }

    private Finding? Undersized() => judged.Size is not ClaimCheck.Broken ? null : OfSize(
        AuditCodes.Undersized,
        Severity.Fail,
        Areas().And(new Params
        {
            ["material"] = metal.Taken.Material.InText(),
            ["gauge"] = CableWords.Gauge(metal.AreaMm2.Estimate),
            ["shortShare"] = judged.Shortfall!.Value.Estimate,
        }),
        $"count it as {SoldAs}, and choose its fuse by that");

    private Finding? MayBeUndersized() => judged.Size is not ClaimCheck.Open ? null : OfSize(
        AuditCodes.MayBeUndersized,
        Severity.Caution,
        Areas().And(new Params { ["limitMm2"] = judged.LimitMm2 }),
        "measure more sharply, a longer piece and at a known temperature; until then count it as "
        + (TrueSize.LargestGaugeFor(metal.AreaMm2.Least, ruleset)?.Label ?? "too small"));

    private Params Areas() => new()
    {
        ["claimedSize"] = report.ClaimedSize!.Label,
        ["areaMm2"] = metal.AreaMm2.Estimate,
        ["leastMm2"] = metal.AreaMm2.Least,
        ["mostMm2"] = metal.AreaMm2.Most,
    };

    private Finding OfSize(string code, Severity severity, Params values, string remedy) => new()
    {
        Code = code,
        Severity = severity,
        Pointer = "/claim/size",
        Message = speech.Text("finding." + code, values),
        Params = values.OrNone,
        Measured = metal.AreaMm2.Estimate,
        Limit = judged.LimitMm2,
        Unit = "mm2",
        Rule = ruleset.Audit.LeastOfClaim.Id,
        Source = SizeSource,
        Remedy = remedy,
        Workings = Workings() + $"; limit {Phrase.Number(judged.LimitMm2)} mm2",
    };

    private string SizeSource => report.ClaimedSize is { IsMetric: true } metric
        ? ReferenceTables.SourceOf(metric).Source
        : ruleset.Audit.LeastOfClaim.Citation;

    private Finding? OtherMetal() => judged.Metal is not ClaimCheck.Broken ? null : OfMetal(
        AuditCodes.OtherMetal,
        Severity.Fail,
        "/claim/material",
        Possible().And(new Params { ["claimedMaterial"] = report.ClaimedMaterial!.Value.InText() }),
        $"count it as {SoldAs}; it conducts like copper of {Phrase.Number(metal.CopperEquivalentMm2)} mm2");

    private Finding? NotCopper() => report.ClaimedMaterial is not null || metal.CanBeCopper is not false ? null : OfMetal(
        AuditCodes.NotCopper,
        Severity.Caution,
        "",
        Possible(),
        $"count it as {SoldAs}; it conducts like copper of {Phrase.Number(metal.CopperEquivalentMm2)} mm2");

    private Finding? Contradiction() => metal.IsConsistent ? null : OfMetal(
        AuditCodes.Contradiction,
        Severity.Caution,
        "",
        [],
        "measure again; weigh the bare metal without its insulation, and state how far off each reading may be");

    private Finding? MetalNotTold()
    {
        if (!metal.IsConsistent || judged.Metal is not ClaimCheck.Open) return null;
        return OfMetal(
            AuditCodes.MetalNotTold,
            Severity.Info,
            "/claim/material",
            metal.IsTested ? Possible() : [],
            "measure two of strands, resistance and mass, or all three; a cut strand shows a silver core where it is clad",
            metal.IsTested ? "" : ".untested");
    }

    private Params Possible() => new() { ["possible"] = Param.Of(metal.Possible.Select(material => material.InText())) };

    private Finding OfMetal(
        string code, Severity severity, string pointer, Params values, string remedy, string variant = "")
    {
        return new Finding
        {
            Code = code,
            Severity = severity,
            Pointer = pointer,
            Message = speech.Text("finding." + code + variant, values),
            Params = values.OrNone,
            Rule = ruleset.Audit.Metal.Id,
            Source = $"{ruleset.Audit.Metal.Citation}; {metal.Taken.Source}",
            Remedy = remedy,
            Workings = Workings(),
        };
    }

    /// <summary>Each way's formula with its numbers, for the metal that is taken and, where two ways meet, for copper.</summary>
    private string Workings()
    {
        string own = Ways(metal.Taken, metal.Areas);
        if (metal.Taken.Material is Material.Copper || !metal.IsTested) return own;
        MetalRange copper = MetalRange.Of(Material.Copper);
        return $"{own}; as copper: {Ways(copper, AreaFinder.ByEachWay(bench, copper))}";
    }

    private string Ways(MetalRange range, IReadOnlyList<AreaByWay> areas) =>
        string.Join("; ", areas.Select(area => Formula(area.Way, range) + " = " + Area(area.AreaMm2)));

    private string Formula(AuditWay way, MetalRange range)
    {
        double lay = bench.Lay.Estimate;
        return way switch
        {
            AuditWay.Strands =>
                $"A = n pi d^2 / 4 = {N(bench.StrandCount!.Value.Estimate)} x pi x ({N(bench.StrandMillimetres.Estimate)} mm)^2 "
                + "/ 4",
            AuditWay.Resistance =>
                $"A = rho k l (1 + alpha (T - 20)) / R = {N(range.Properties.ResistivityOhmMm2PerMetre)} ohm mm2/m x {N(lay)} x "
                + $"{N(bench.ResistanceMetres.Estimate)} m x {N(range.Properties.TemperatureFactor(bench.Celsius.Estimate))} / "
                + Phrase.Milliohms(bench.Ohms!.Value.Estimate),
            _ =>
                $"A = m / (D k l) = {N(bench.Kilograms!.Value.Estimate * 1000)} g / "
                + $"({N(range.Properties.DensityKilogramsPerCubicMetre / 1000)} g/cm3 x {N(lay)} x "
                + $"{N(bench.MassMetres.Estimate)} m)",
        };
    }

    private static string N(double value) => Phrase.Number(value);

    private static string Area(Interval area) =>
        $"{N(area.Estimate)} mm2 ({N(area.Least)} to {N(area.Most)})";
}
