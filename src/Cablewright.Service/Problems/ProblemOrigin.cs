using Microsoft.AspNetCore.Http.Extensions;

namespace Cablewright.Service.Problems;

/// <summary>What a problem says of the request that it answers.</summary>
/// <param name="TraceId">Names the request.</param>
/// <param name="Pages">The address of the pages of problems, by which the caller reaches them.</param>
internal sealed record ProblemOrigin(string TraceId, string Pages)
{
    /// <summary>That of a request; one of HTTP/1.0 may not say which host it means.</summary>
    public static ProblemOrigin Of(HttpContext context)
    {
        HttpRequest request = context.Request;
        return new ProblemOrigin(
            context.TraceIdentifier,
            request.Host.HasValue
                ? UriHelper.BuildAbsolute(request.Scheme, request.Host, request.PathBase, ProblemPages.Path)
                : request.PathBase + ProblemPages.Path);
    }
}
