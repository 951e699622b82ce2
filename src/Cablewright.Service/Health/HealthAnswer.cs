using Cablewright.Contract.Health;
using Cablewright.Engine;
using Cablewright.Service.Answers;

namespace Cablewright.Service.Health;

/// <summary>The answer to a health check that finds nothing wrong.</summary>
internal static class HealthAnswer
{
    /// <summary>Says what the service is.</summary>
    public static JsonAnswer Of(string status) => new(
        AnswerJson.Write(
            new HealthReport { Status = status, EngineVersion = Release.EngineVersion }, AnswerJson.Shapes.HealthReport),
        tag: null,
        cacheControl: "no-store");
}
