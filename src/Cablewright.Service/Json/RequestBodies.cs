using Cablewright.Service.Hosting;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Json;

/// <summary>Reads whole request bodies into memory, within what is set aside for all of them, and each within its time.</summary>
internal sealed class RequestBodies(LoadSettings settings)
{
    private readonly BodyBudget budget = new(settings.BodyMegabytes * 1024L * 1024);

    /// <summary>A body, or why it was not read; neither where it has more bytes than allowed.</summary>
    public async Task<(WholeBody? Body, ProblemAnswer? Refusal)> Read(
        HttpRequest request, int mostBytes, CancellationToken cancellation)
    {
        if (request.ContentLength > mostBytes) return (null, null);
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        patience.CancelAfter(TimeSpan.FromSeconds(settings.BodySeconds));
        try
        {
            return (await WholeBody.ReadAsync(request.Body, mostBytes, budget, patience.Token), null);
        }
        catch (BudgetSpentException)
        {
            return (null, Refuse(request, ProblemKinds.Busy));
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            return (null, Refuse(request, ProblemKinds.TimedOut));
        }
        catch (IOException broken) when (!cancellation.IsCancellationRequested)
        {
            return (null, Refuse(request, broken));
        }
    }

    /// <summary>
    /// The answer to a body that could not be read to its end: the server's own refusals keep their status; what it has no status
    /// for, such as a chunk of more bytes than a number holds, breaks the rules of HTTP too.
    /// </summary>
    public static ProblemAnswer Refuse(HttpRequest request, IOException broken) => Refuse(
        request, broken is BadHttpRequestException refusal ? ProblemKinds.ForStatus(refusal.StatusCode) : ProblemKinds.Refused);

    /// <summary>Where the next request begins after such a body is not known, or not worth waiting for.</summary>
    private static ProblemAnswer Refuse(HttpRequest request, ProblemKind kind)
    {
        if (HttpProtocol.IsHttp11(request.Protocol)) request.HttpContext.Response.Headers.Connection = "close";
        return new ProblemAnswer(kind);
    }
}
