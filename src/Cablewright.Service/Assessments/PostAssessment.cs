using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Service.Answers;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Assessments;

/// <summary><c>POST /v1/assessments</c>: one build in, one assessment out.</summary>
internal static class PostAssessment
{
    private const string AskAgain = "no-cache";

    /// <summary>Reads, checks and assesses the build.</summary>
    public static async Task<IResult> Answer(HttpRequest request, CancellationToken cancellation)
    {
        if (!IsPlainJson(request)) return new ProblemAnswer(ProblemKinds.UnsupportedMediaType);
        Shaped<Build> body = await ShapeReader.ReadAsync(request, AnswerJson.Shapes.Build, cancellation: cancellation);
        return body.Outcome switch
        {
            ShapeOutcome.Read => Answer(body.Value!),
            ShapeOutcome.TooLarge => FaultyRequest.Answer(ProblemKinds.TooLarge, body.Faults),
            _ => FaultyRequest.Answer(ProblemKinds.NotUnderstood, body.Faults),
        };
    }

    private static IResult Answer(Build build)
    {
        (Assessment? assessment, IReadOnlyList<Fault> faults) = Answering.Answer(build);
        return assessment is null
            ? FaultyRequest.Answer(ProblemKinds.FaultyBuild, faults)
            : new JsonAnswer(AnswerJson.Write(assessment, AnswerJson.Shapes.Assessment), assessment.Id, AskAgain);
    }

    private static bool IsPlainJson(HttpRequest request) =>
        JsonMediaType.Announces(request.ContentType) && request.Headers.ContentEncoding.Count == 0;
}
