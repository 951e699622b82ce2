using Cablewright.Contract.Health;
using Cablewright.Service.Documents;
using Cablewright.Service.Problems;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Health;

/// <summary><c>GET /health/ready</c>: the service can be used.</summary>
internal static class GetReady
{
    public static Operation Operation => new(
        "askReady", Tag.Health, "Ask whether the service computes correctly",
        "Answers 200 if a built-in reference build gave its known answer when the process started, and the catalogue was read "
        + "once. The database is not asked again for it. 503 as soon as the service was told to stop.")
    {
        Problems = [ProblemKinds.NotReady],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/health/ready", Answer).DescribedAs<HealthReport>(Operation);

    /// <summary>
    /// The process computes what it should, found out once, it has read the catalogue once, and it was not told to stop.
    /// </summary>
    private static IResult Answer(Catalogues catalogues, IHostApplicationLifetime lifetime) =>
        ReferenceBuild.GivesItsKnownAnswer.Value
            && catalogues.Newest is not null
            && !lifetime.ApplicationStopping.IsCancellationRequested
                ? HealthAnswer.Of("ready")
                : new ProblemAnswer(ProblemKinds.NotReady);
}
