namespace Cablewright.Service.Hosting;

/// <summary>Headers that every answer carries.</summary>
internal static class SecurityHeaders
{
    /// <summary>Sets them when the answer starts, so that no failure on the way can take them off.</summary>
    public static Task Apply(HttpContext context, RequestDelegate next)
    {
        context.Response.OnStarting(() =>
        {
            context.Response.Headers.XContentTypeOptions = "nosniff";
            return Task.CompletedTask;
        });
        return next(context);
    }
}
