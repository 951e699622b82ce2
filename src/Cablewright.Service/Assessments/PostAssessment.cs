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
    public static Task<IResult> Answer(HttpRequest request, CancellationToken cancellation) =>
        JsonBody.Answer(request, AnswerJson.Shapes.Build, Answer, cancellation);

    private static IResult Answer(Build build)
    {
        (Assessment? assessment, IReadOnlyList<Fault> faults) = Answering.Answer(build);
        return assessment is null
            ? FaultyRequest.Answer(ProblemKinds.FaultyBuild, faults)
            : new JsonAnswer(AnswerJson.Write(assessment, AnswerJson.Shapes.Assessment), assessment.Id, AskAgain);
    }
}
