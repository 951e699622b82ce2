using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Service.Answers;
using Cablewright.Service.Computing;
using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Records;
using Cablewright.Storage.Keys;

namespace Cablewright.Service.Assessments;

/// <summary><c>POST /v1/assessments</c>: one build in, one assessment out.</summary>
internal static class PostAssessment
{
    public static Operation Operation => new(
        "assessBuild", Tag.Assessments, "Assess a build",
        "Checks every conductor and fuse that is given and chooses every one that is left out. A failing build is answered with "
        + "200: the question was answered. Quantities are text with a unit; "
        + "an answer's numbers carry their unit in the member's name. "
        + "The same build, ruleset and release always give the same bytes. All faults of a request are listed at once. "
        + "With record=true and a shop's key that may write records the answer, and the build with it, is kept unchanged until "
        + "the shop deletes it: 201 where it is new, 200 where the shop has it already. A shop may have so many records, of so "
        + "many bytes together; beyond that 409 says how many. " + AnswerForms.Description)
    {
        IsDrawn = true,
        Computes = true,
        Statuses = [StatusCodes.Status200OK, StatusCodes.Status201Created],
        Scope = KeyScopes.RecordsWrite,
        IsKeyOptional = true,
        Query = [RecordKeeping.Parameter],
        Body = RequestBody.Of(AnswerJson.Shapes.Build, () => QuickBuild.Example),
        Problems = [ProblemKinds.FaultyBuild, ProblemKinds.RecordsFull],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapPost("/v1/assessments", Answer).DescribedAs<Assessment>(Operation);

    private static Task<IResult> Answer(HttpContext context, Computations computations, CancellationToken cancellation)
    {
        (bool isRecorded, ProblemAnswer? problem) = RecordKeeping.IsAsked(context);
        return problem is not null
            ? Task.FromResult<IResult>(problem)
            : JsonBody.Answer(
                context.Request,
                AnswerJson.Shapes.Build,
                build => Assess(context, computations, build, isRecorded, cancellation),
                cancellation);
    }

    private static async Task<IResult> Assess(
        HttpContext context, Computations computations, Build build, bool isRecorded, CancellationToken cancellation)
    {
        (Assessment? assessment, ProblemAnswer? problem) = await computations.Run(
            context, computation => Answering.Answer(build, computation), cancellation);
        if (assessment is null) return problem!;
        return isRecorded
            ? await RecordKeeping.Keep(context, assessment, build, cancellation)
            : await AssessmentAnswer.Of(
                context,
                build,
                assessment,
                new JsonAnswer(AnswerJson.Write(assessment, AnswerJson.Shapes.Assessment), assessment.Id, Caching.AskAgain));
    }
}
