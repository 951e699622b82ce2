using Cablewright.Contract.Audits;
using Cablewright.Reports.Audits;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Rulesets;
using Cablewright.Service.Validation;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Audits;

/// <summary><c>POST /v1/conductor-audits</c>: measurements of a cable in, what it truly is out.</summary>
internal static class PostConductorAudit
{
    public static Operation Operation => new(
        "auditConductor", Tag.Audits, "Find a cable's true size and metal",
        "From strands, resistance or mass, each with how far off it may be: area and gauge with their bounds, the metals that "
        + "the measurements allow, the shortfall against the label, and what the cable is rated for. A verdict is given only "
        + "where the whole interval supports it.")
    {
        Body = RequestBody.Of(AnswerJson.Shapes.BenchReport, () => new BenchReport
        {
            Claim = new CableClaim { Size = "4 AWG", Material = Material.Copper },
            Strands = new StrandMeasurement { Count = 1568, Diameter = "0.12 mm", DiameterUncertainty = "0.002 mm" },
            Resistance = new ResistanceMeasurement { Resistance = "4.97 mOhm", Length = "5 m", Temperature = "21 C" },
            Mass = new MassMeasurement { Mass = "32.2 g", Length = "20 cm", LengthUncertainty = "1 mm" },
        }),
        Problems = [ProblemKinds.Faulty],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapPost("/v1/conductor-audits", Answer).DescribedAs<ConductorAudit>(Operation);

    private static Task<IResult> Answer(HttpRequest request, CancellationToken cancellation) =>
        JsonBody.Answer(request, AnswerJson.Shapes.BenchReport, Audit, cancellation);

    private static IResult Audit(BenchReport report)
    {
        IReadOnlyList<Fault> faults = Validators.FaultsOf(report);
        if (faults.Count > 0) return FaultyRequest.Answer(ProblemKinds.Faulty, faults);
        ConductorAudit audit = CableAuditor.Audit(BenchMapping.ToEngine(report), RulesetCheck.Named(report.Ruleset));
        return TaggedAnswer.Of(audit, AnswerJson.Shapes.ConductorAudit);
    }
}
