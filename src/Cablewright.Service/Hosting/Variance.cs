using Microsoft.Net.Http.Headers;

namespace Cablewright.Service.Hosting;

/// <summary>
/// Names in <c>Vary</c> the headers that an answer hangs on (RFC 9110, 12.5.5). The framework does so only where a request has
/// them; a cache must know it of the answers to other requests too.
/// </summary>
internal static class Variance
{
    /// <summary>Compression hangs on one header, and on another what browsers are told of, where there are any.</summary>
    public static void Use(WebApplication app)
    {
        string[] fields = BrowserCallers.AreListed(app.Configuration)
            ? [HeaderNames.AcceptEncoding, HeaderNames.Origin]
            : [HeaderNames.AcceptEncoding];
        app.Use((context, next) =>
        {
            context.Response.OnStarting(() =>
            {
                foreach (string field in fields) Add(context.Response, field);
                return Task.CompletedTask;
            });
            return next(context);
        });
    }

    /// <summary>Adds one header's name.</summary>
    public static void Add(HttpResponse response, string field)
    {
        if (!response.Headers.GetCommaSeparatedValues(HeaderNames.Vary).Contains(field, StringComparer.OrdinalIgnoreCase))
            response.Headers.AppendCommaSeparatedValues(HeaderNames.Vary, field);
    }
}
