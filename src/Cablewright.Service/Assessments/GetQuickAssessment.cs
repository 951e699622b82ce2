using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Service.Answers;
using Cablewright.Service.Computing;
using Cablewright.Service.Documents;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Assessments;

/// <summary><c>GET /v1/assessments/quick</c>: one amplifier at one distance, from a query string.</summary>
internal static class GetQuickAssessment
{
    public static Operation Operation => new(
        "assessQuick", Tag.Assessments, "Assess one amplifier at one distance",
        "The same computation for one amplifier, fed from one battery over one run. Of the amplifier at least the rated output "
        + "or its own fuses are given. The answer also carries the full build that it stood for, ready to edit and post. "
        + AnswerForms.Description)
    {
        IsDrawn = true,
        Computes = true,
        IsCacheable = true,
        Query = QuickQuery.Parameters,
        Problems = [ProblemKinds.FaultyBuild],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/v1/assessments/quick", Answer).DescribedAs<Assessment>(Operation);

    private static async Task<IResult> Answer(HttpContext context, Computations computations, CancellationToken cancellation)
    {
        (IReadOnlyDictionary<string, string> values, IReadOnlyList<Fault> unread) = QuickQuery.Read(context.Request.QueryString);
        if (unread.Count > 0) return FaultyRequest.Answer(ProblemKinds.NotUnderstood, unread);

        Build build = QuickBuild.Of(values);
        (Assessment? assessment, ProblemAnswer? problem) = await computations.Run(
            context, computation => Answering.Answer(build, computation, AtItsParameter), cancellation);
        return assessment is null
            ? problem!
            : await AssessmentAnswer.Of(
                context,
                build,
                assessment,
                new JsonAnswer(
                    AnswerJson.Write(assessment with { Build = build }, AnswerJson.Shapes.Assessment),
                    assessment.Id,
                    Caching.Shared));
    }

    private static Fault AtItsParameter(Fault fault) =>
        QuickQuery.Parameters.FirstOrDefault(parameter => parameter.Pointer == fault.Pointer) is { } parameter
            ? fault with { Pointer = "/" + parameter.Name }
            : fault;
}
