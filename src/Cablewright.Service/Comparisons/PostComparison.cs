using System.Security.Cryptography;
using Cablewright.Contract.Builds;
using Cablewright.Contract.Comparisons;
using Cablewright.Reports.Assessments;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
using Cablewright.Service.Computing;
using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;

namespace Cablewright.Service.Comparisons;

/// <summary><c>POST /v1/assessments/comparisons</c>: two to six builds side by side.</summary>
internal static class PostComparison
{
    public static Operation Operation => new(
        "compareBuilds", Tag.Assessments, "Put builds side by side",
        "Assesses two to six builds and says where they differ, run by run and amplifier by amplifier, matched by id. What a "
        + "build could `include` by itself has no place here and is refused.")
    {
        Computes = true,
        Body = RequestBody.Of(
            AnswerJson.Shapes.ComparisonRequest,
            () => new ComparisonRequest { Builds = [QuickBuild.Example, QuickBuild.Example with { Name = "another" }] }),
        Problems = [ProblemKinds.FaultyBuild],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapPost("/v1/assessments/comparisons", Answer).DescribedAs<Comparison>(Operation);

    private static Task<IResult> Answer(HttpContext context, Computations computations, CancellationToken cancellation) =>
        JsonBody.Answer(
            context.Request,
            AnswerJson.Shapes.ComparisonRequest,
            comparison => computations.Run(context, computation => Compare(comparison, computation), cancellation),
            cancellation);

    private static IResult Compare(ComparisonRequest comparison, Computation computation)
    {
        List<Fault> faults = [.. Validators.FaultsOf(comparison), .. comparison.Builds.SelectMany(IncludeFaults)];
        if (faults.Count > 0) return FaultyRequest.Answer(ProblemKinds.FaultyBuild, faults);
        Answered[] answers = [.. comparison.Builds.Select(build => Answering.Work(build, computation, comparison.Builds.Count))];
        for (int i = 0; i < answers.Length; i++)
            faults.AddRange(answers[i].Faults.Select(fault => fault.Below($"/builds/{i}")));
        if (faults.Count > 0) return FaultyRequest.Answer(ProblemKinds.FaultyBuild, faults);
        Comparison result = ComparisonWriter.Of(
            [.. answers.Select(answer => answer.Assessment!)], [.. comparison.Builds.Select(build => build.Name)]);
        byte[] body = AnswerJson.Write(result, AnswerJson.Shapes.Comparison);
        return new JsonAnswer(body, "cmp_" + Convert.ToHexStringLower(SHA256.HashData(body)), Caching.AskAgain);
    }

    /// <summary>What is asked for would be worked out at length and shown nowhere.</summary>
    private static IEnumerable<Fault> IncludeFaults(Build build, int index)
    {
        if (build.Include is not null)
            yield return new Fault(
                $"/builds/{index}/include",
                ComparisonCodes.Include,
                "a comparison has no place for what a build includes",
                null,
                "no include; ask for it with POST /v1/assessments");
    }
}
