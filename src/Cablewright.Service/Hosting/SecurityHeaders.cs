namespace Cablewright.Service.Hosting;

/// <summary>Headers that every answer carries.</summary>
internal static class SecurityHeaders
{
    /// <summary>Sets them before anything else can answer.</summary>
    public static Task Apply(HttpContext context, RequestDelegate next)
    {
        context.Response.Headers.XContentTypeOptions = "nosniff";
        return next(context);
    }
}
