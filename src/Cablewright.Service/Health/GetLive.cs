using Cablewright.Contract.Health;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;

namespace Cablewright.Service.Health;

/// <summary><c>GET /health/live</c>: the process answers.</summary>
internal static class GetLive
{
    public static Operation Operation => new(
        "askLive", Tag.Health, "Ask whether the process answers",
        "Answers as long as the process runs, whatever else it does. It is not logged.");

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/health/live", Answer).DescribedAs<HealthReport>(Operation).ShortCircuit();

    /// <summary>Asked for nothing else: it must answer where everything else is held up.</summary>
    private static JsonAnswer Answer() => HealthAnswer.Of("live");
}
