using System.Text.RegularExpressions;
using Serilog.Context;

namespace Cablewright.Service.Hosting;

/// <summary>
/// Names each request, in the log, in the answer's header and in a problem's <c>traceId</c>; but not in an answer that a cache
/// gives to others, whose requests have other names.
/// </summary>
internal static partial class Correlation
{
    public const string HeaderName = "X-Correlation-Id";

    private const string LogProperty = "CorrelationId";

    /// <summary>Takes the caller's name for the request where it is harmless, else makes one.</summary>
    public static async Task Apply(HttpContext context, RequestDelegate next)
    {
        string? offered = context.Request.Headers[HeaderName];
        string id = offered is not null && Harmless().IsMatch(offered) ? offered : Guid.NewGuid().ToString("n");
        context.TraceIdentifier = id;
        context.Response.OnStarting(() =>
        {
            bool isShared = context.Response.GetTypedHeaders().CacheControl is { Public: true };
            if (!isShared) context.Response.Headers[HeaderName] = id;
            return Task.CompletedTask;
        });
        using (LogContext.PushProperty(LogProperty, id)) await next(context);
    }

    [GeneratedRegex("^[A-Za-z0-9._-]{1,64}\\z", RegexOptions.CultureInvariant)]
    private static partial Regex Harmless();
}
