using Cablewright.Contract.Audits;
using Cablewright.Reports.Audits;
using Cablewright.Service.Answers;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;

namespace Cablewright.Service.Audits;

/// <summary><c>POST /v1/conductor-audits</c>: measurements of a cable in, what it truly is out.</summary>
internal static class PostConductorAudit
{
    private static readonly BenchReportValidator Validator = new();

    /// <summary>Reads, checks and audits the measurements.</summary>
    public static Task<IResult> Answer(HttpRequest request, CancellationToken cancellation) =>
        JsonBody.Answer(request, AnswerJson.Shapes.BenchReport, Answer, cancellation);

    private static IResult Answer(BenchReport report)
    {
        IReadOnlyList<Fault> faults = Validator.FaultsOf(report);
        if (faults.Count > 0) return FaultyRequest.Answer(ProblemKinds.Faulty, faults);
        ConductorAudit audit = CableAuditor.Audit(BenchMapping.ToEngine(report), RulesetCheck.Named(report.Ruleset));
        return TaggedAnswer.Of(audit, AnswerJson.Shapes.ConductorAudit);
    }
}
