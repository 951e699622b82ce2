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
        return new ProblemAnswer(ProblemKinds.ForStatus(http.Response.StatusCode)).ExecuteAsync(http);
    }

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
