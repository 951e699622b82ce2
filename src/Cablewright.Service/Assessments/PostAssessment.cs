using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Service.Answers;
using Cablewright.Service.Computing;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Records;

namespace Cablewright.Service.Assessments;

/// <summary><c>POST /v1/assessments</c>: one build in, one assessment out.</summary>
internal static class PostAssessment
{
    private const string AskAgain = "no-cache";

    /// <summary>Reads, checks and assesses the build.</summary>
    public static Task<IResult> Answer(HttpContext context, Computations computations, CancellationToken cancellation)
    {
        (bool isRecorded, ProblemAnswer? problem) = RecordAnswers.IsAsked(context);
        return problem is not null
            ? Task.FromResult<IResult>(problem)
            : JsonBody.Answer(
                context.Request,
                AnswerJson.Shapes.Build,
                build => Answer(context, computations, build, isRecorded, cancellation),
                cancellation);
    }

    private static async Task<IResult> Answer(
        HttpContext context, Computations computations, Build build, bool isRecorded, CancellationToken cancellation)
    {
        (Assessment? assessment, ProblemAnswer? problem) = await computations.Run(
            context, computation => Answering.Answer(build, computation), cancellation);
        if (assessment is null) return problem!;
        return isRecorded
            ? await RecordAnswers.Keep(context, assessment, build, cancellation)
            : new JsonAnswer(AnswerJson.Write(assessment, AnswerJson.Shapes.Assessment), assessment.Id, AskAgain);
    }
}
