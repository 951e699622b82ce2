using Cablewright.Contract.Health;
using Cablewright.Engine;
using Cablewright.Service.Answers;
using Cablewright.Service.Problems;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Health;

/// <summary><c>GET /health/live</c> and <c>GET /health/ready</c>.</summary>
internal static class HealthAnswers
{
    /// <summary>The process answers.</summary>
    public static IResult Live() => Report("live");

    /// <summary>The process computes what it should, found out once, and it has read the catalogue once.</summary>
    public static IResult Ready(Catalogues catalogues) =>
        ReferenceBuild.GivesItsKnownAnswer.Value && catalogues.Newest is not null ? Report("ready") : new ProblemAnswer(ProblemKinds.NotReady);

    private static JsonAnswer Report(string status) => new JsonAnswer(
        AnswerJson.Write(
            new HealthReport { Status = status, EngineVersion = Assessor.EngineVersion }, AnswerJson.Shapes.HealthReport),
        tag: null,
        cacheControl: "no-store");
}
