using System.Security.Cryptography;
using Cablewright.Contract.Comparisons;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;

namespace Cablewright.Service.Comparisons;

/// <summary><c>POST /v1/assessments/comparisons</c>: two to six builds side by side.</summary>
internal static class PostComparison
{
    private static readonly ContractValidator<ComparisonRequest> Validator = new();

    /// <summary>Reads, checks and compares the builds.</summary>
    public static Task<IResult> Answer(HttpRequest request, CancellationToken cancellation) =>
        JsonBody.Answer(request, AnswerJson.Shapes.ComparisonRequest, Answer, cancellation);

    private static IResult Answer(ComparisonRequest comparison)
    {
        List<Fault> faults = [.. Validator.FaultsOf(comparison)];
        if (faults.Count > 0) return FaultyRequest.Answer(ProblemKinds.FaultyBuild, faults);
        Answered[] answers = [.. comparison.Builds.Select(Answering.Work)];
        for (int i = 0; i < answers.Length; i++)
            faults.AddRange(answers[i].Faults.Select(fault => fault.Below($"/builds/{i}")));
        if (faults.Count > 0) return FaultyRequest.Answer(ProblemKinds.FaultyBuild, faults);
        Comparison result = ComparisonMapping.ToContract(comparison.Builds, answers);
        byte[] body = AnswerJson.Write(result, AnswerJson.Shapes.Comparison);
        return new JsonAnswer(body, "cmp_" + Convert.ToHexStringLower(SHA256.HashData(body)), "no-cache");
    }
}
