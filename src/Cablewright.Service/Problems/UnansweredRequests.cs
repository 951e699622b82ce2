using Cablewright.Service.Json;
using Cablewright.Storage;
using Microsoft.AspNetCore.Diagnostics;

namespace Cablewright.Service.Problems;

/// <summary>Gives a problem as the answer where the pipeline ended without a body or with an exception.</summary>
internal static class UnansweredRequests
{
    /// <summary>For a status that came without a body, such as 404 from routing.</summary>
    public static Task OnEmptyAnswer(StatusCodeContext context)
    {
        HttpContext http = context.HttpContext;
        ProblemKind kind = ProblemKinds.ForStatus(http.Response.StatusCode);
        ProblemAnswer answer = kind == ProblemKinds.NotFound ? NothingAt(http.Request.Path) : new ProblemAnswer(kind);
        return answer.ExecuteAsync(http);
    }

    private static ProblemAnswer NothingAt(PathString path) => ProblemAnswer.NotFound(
        $"Nothing is served at {Excerpt.Of(path.Value ?? "")}. The addresses are listed in /openapi/v1.json.");

    /// <summary>For an exception: the server's own refusals keep their status, anything else is a fault of the service.</summary>
    public static Task OnException(HttpContext http)
    {
        Exception? error = http.Features.Get<IExceptionHandlerFeature>()?.Error;
        ProblemKind kind = error switch
        {
            BadHttpRequestException refusal => ProblemKinds.ForStatus(refusal.StatusCode),
            StorageUnavailableException => ProblemKinds.CatalogueUnavailable,
            _ => ProblemKinds.Failed,
        };
        return new ProblemAnswer(kind).ExecuteAsync(http);
    }
}
