namespace Cablewright.Service.Hosting;

/// <summary>Headers that every answer carries.</summary>
internal static class SecurityHeaders
{
    /// <summary>An answer loads nothing but the styles of a job sheet; a drawing has its looks in its attributes.</summary>
    private const string OfAnswers =
        "default-src 'none'; style-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <summary>The pages that show the contract run their own script and ask this service.</summary>
    private const string OfPages =
        "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; base-uri 'none'; form-action 'none'; "
        + "frame-ancestors 'none'";

    /// <summary>Sets them when the answer starts, so that no failure on the way can take them off.</summary>
    public static Task Apply(HttpContext context, RequestDelegate next)
    {
        context.Response.OnStarting(() =>
        {
            IHeaderDictionary headers = context.Response.Headers;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "no-referrer";
            headers.ContentSecurityPolicy = context.GetEndpoint()?.Metadata.GetMetadata<PagePolicy>()?.Text
                ?? (context.Request.Path.StartsWithSegments("/docs") ? OfPages : OfAnswers);
            return Task.CompletedTask;
        });
        return next(context);
    }
}
