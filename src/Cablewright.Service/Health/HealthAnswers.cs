using Cablewright.Contract.Health;
using Cablewright.Engine;
using Cablewright.Service.Answers;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Health;

/// <summary><c>GET /health/live</c> and <c>GET /health/ready</c>.</summary>
internal static class HealthAnswers
{
    /// <summary>The process answers.</summary>
    public static IResult Live() => Report("live");

    /// <summary>The process computes what it should; found out once, at the start.</summary>
    public static IResult Ready() =>
        ReferenceBuild.GivesItsKnownAnswer.Value ? Report("ready") : new ProblemAnswer(ProblemKinds.NotReady);

    private static JsonAnswer Report(string status) => new JsonAnswer(
        AnswerJson.Write(
            new HealthReport { Status = status, EngineVersion = Assessor.EngineVersion }, AnswerJson.Shapes.HealthReport),
        tag: null,
        cacheControl: "no-store");
}
