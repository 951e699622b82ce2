using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Service.Answers;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Assessments;

/// <summary><c>GET /v1/assessments/quick</c>: one amplifier at one distance, from a query string.</summary>
internal static class QuickAssessment
{
    private const string KeepForAnHour = "public, max-age=3600";

    /// <summary>Reads the query, makes the build it stands for and assesses that.</summary>
    public static IResult Answer(HttpRequest request)
    {
        (IReadOnlyDictionary<string, string> values, IReadOnlyList<Fault> unread) = QuickQuery.Read(request.QueryString);
        if (unread.Count > 0) return FaultyRequest.Answer(ProblemKinds.NotUnderstood, unread);

        Build build = QuickBuild.Of(values);
        (Assessment? assessment, IReadOnlyList<Fault> faults) = Answering.Answer(build);
        return assessment is null
            ? FaultyRequest.Answer(ProblemKinds.FaultyBuild, [.. faults.Select(AtItsParameter)])
            : new JsonAnswer(
                AnswerJson.Write(assessment with { Build = build }, AnswerJson.Shapes.Assessment), assessment.Id, KeepForAnHour);
    }

    private static Fault AtItsParameter(Fault fault) =>
        QuickQuery.Parameters.FirstOrDefault(parameter => parameter.Pointer == fault.Pointer) is { } parameter
            ? fault with { Pointer = "/" + parameter.Name }
            : fault;
}
