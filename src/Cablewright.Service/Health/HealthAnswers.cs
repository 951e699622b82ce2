using Cablewright.Contract.Health;
using Cablewright.Engine;
using Cablewright.Service.Answers;
using Cablewright.Service.Problems;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Health;

/// <summary><c>GET /health/live</c> and <c>GET /health/ready</c>.</summary>
internal static class HealthAnswers
{
    /// <summary>The process answers. Asked for nothing else: it must answer where everything else is held up.</summary>
    public static IResult Live() => Report("live");

    /// <summary>
    /// The process computes what it should, found out once, it has read the catalogue once, and it was not told to stop.
    /// </summary>
    public static IResult Ready(Catalogues catalogues, IHostApplicationLifetime lifetime) =>
        ReferenceBuild.GivesItsKnownAnswer.Value
            && catalogues.Newest is not null
            && !lifetime.ApplicationStopping.IsCancellationRequested
                ? Report("ready")
                : new ProblemAnswer(ProblemKinds.NotReady);

    private static JsonAnswer Report(string status) => new JsonAnswer(
        AnswerJson.Write(
            new HealthReport { Status = status, EngineVersion = Release.EngineVersion }, AnswerJson.Shapes.HealthReport),
        tag: null,
        cacheControl: "no-store");
}
