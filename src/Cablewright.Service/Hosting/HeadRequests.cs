namespace Cablewright.Service.Hosting;

/// <summary>Answers HEAD wherever GET is answered: the same headers without the body (RFC 9110, 9.3.2).</summary>
internal static class HeadRequests
{
    /// <summary>Lets a HEAD request pass as a GET whose body goes nowhere.</summary>
    public static async Task Apply(HttpContext context, RequestDelegate next)
    {
        if (!HttpMethods.IsHead(context.Request.Method))
        {
            await next(context);
            return;
        }

        Stream body = context.Response.Body;
        context.Request.Method = HttpMethods.Get;
        context.Response.Body = Stream.Null;
        try
        {
            await next(context);
        }
        finally
        {
            context.Response.Body = body;
            context.Request.Method = HttpMethods.Head;
        }
    }
}
