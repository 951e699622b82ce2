using Cablewright.Service.Answers;
using Cablewright.Service.Json;
using Microsoft.Extensions.Primitives;

namespace Cablewright.Service.Batches;

/// <summary>How a batch, or its answer, is laid out.</summary>
/// <param name="MediaType">Its media type.</param>
/// <param name="Start">What stands before the first item.</param>
/// <param name="Between">What stands between two items.</param>
/// <param name="AfterEach">What stands after each item.</param>
/// <param name="End">What stands after the last item.</param>
internal sealed record BatchForm(string MediaType, string Start, string Between, string AfterEach, string End)
{
    /// <summary>One JSON array.</summary>
    public static readonly BatchForm Array = new(JsonAnswer.ContentType, "[", ",", "", "]");

    /// <summary>One JSON text a line.</summary>
    public static readonly BatchForm Lines = new(JsonMediaType.Lines, "", "", "\n", "");

    /// <summary>The form that a request's header announces, if it is one of these and uncompressed.</summary>
    public static BatchForm? Announced(HttpRequest request)
    {
        if (request.Headers.ContentEncoding.Count > 0) return null;
        if (JsonMediaType.AnnouncesLines(request.ContentType)) return Lines;
        return JsonMediaType.Announces(request.ContentType) ? Array : null;
    }

    /// <summary>The form that a caller wants the answer in: the one it sent, unless it prefers the other.</summary>
    public static BatchForm Wanted(StringValues accept, BatchForm sent)
    {
        BatchForm other = sent == Lines ? Array : Lines;
        return ContentNegotiation.Quality(accept, other.MediaType) > ContentNegotiation.Quality(accept, sent.MediaType)
            ? other
            : sent;
    }
}
