using Cablewright.Service.Hosting;
using Cablewright.Service.Problems;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace Cablewright.Service.Answers;

/// <summary>Refuses a request whose <c>Accept</c> allows none of the forms that its endpoint answers in.</summary>
internal static class ContentNegotiation
{
    /// <summary>Lets the request through or answers 406.</summary>
    public static Task Apply(HttpContext context, RequestDelegate next)
    {
        string[] offered = OfferedBy(context.GetEndpoint());
        if (offered.Distinct().Count() > 1) Variance.Add(context.Response, HeaderNames.Accept);
        bool passes = offered.Length == 0 || Allows(context.Request.Headers.Accept, offered);
        return passes ? next(context) : new ProblemAnswer(ProblemKinds.NotAcceptable).ExecuteAsync(context);
    }

    private static string[] OfferedBy(Endpoint? endpoint) =>
        [.. (endpoint?.Metadata.GetOrderedMetadata<IProducesResponseTypeMetadata>() ?? [])
            .Where(answer => answer.StatusCode is >= 200 and < 300)
            .SelectMany(answer => answer.ContentTypes)];

    private static bool Allows(StringValues accept, string[] offered) => offered.Any(form => Quality(accept, form) > 0);

    /// <summary>How much a caller wants a form of the answer, from 0 for not at all to 1; 1 where nothing is said.</summary>
    public static double Quality(StringValues accept, string form)
    {
        if (accept.All(string.IsNullOrWhiteSpace)) return 1;
        return MediaTypeHeaderValue.TryParseList(accept, out IList<MediaTypeHeaderValue>? ranges)
            ? Quality(ranges, new MediaTypeHeaderValue(form))
            : 0;
    }

    /// <summary>The quality of the most specific range that covers the form (RFC 9110, 12.5.1).</summary>
    private static double Quality(IList<MediaTypeHeaderValue> ranges, MediaTypeHeaderValue form) =>
        ranges.Where(range => Covers(range, form))
            .OrderByDescending(range => range.MatchesAllTypes ? 0 : range.MatchesAllSubTypes ? 1 : 2)
            .Select(range => range.Quality ?? 1)
            .FirstOrDefault();

    private static bool Covers(MediaTypeHeaderValue range, MediaTypeHeaderValue form) =>
        range.MatchesAllTypes
        || (range.Type.Equals(form.Type, StringComparison.OrdinalIgnoreCase)
            && (range.MatchesAllSubTypes || range.SubType.Equals(form.SubType, StringComparison.OrdinalIgnoreCase)));
}
