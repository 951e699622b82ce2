using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;

namespace Cablewright.Service.Answers;

/// <summary>
/// An answer, as JSON unless it says otherwise, with a strong entity tag; a caller of GET or HEAD that already has it is told so.
/// The framework's own answer of bytes would hold <c>If-Match</c> and <c>If-None-Match</c> of a write, which was carried out by
/// then, against the tag too.
/// </summary>
/// <param name="body">The answer as UTF-8.</param>
/// <param name="tag">What identifies these very bytes, where that is worth knowing.</param>
/// <param name="cacheControl">How long it may be kept.</param>
internal sealed class JsonAnswer(ReadOnlyMemory<byte> body, string? tag, string cacheControl) : IResult
{
    public const string ContentType = "application/json";

    /// <summary>The status of the answer.</summary>
    public int Status { get; init; } = StatusCodes.Status200OK;

    /// <summary>Where what was made can be fetched: its path on this service.</summary>
    public string? Location { get; init; }

    /// <summary>Its media type, where it is another form of the same answer.</summary>
    private string Form { get; init; } = ContentType;

    /// <summary>The same answer in another form, with a tag of its own.</summary>
    public JsonAnswer As(string form, byte[] other) => new(other, Convert.ToHexStringLower(SHA256.HashData(other)), cacheControl)
    {
        Status = Status,
        Location = Location,
        Form = form,
    };

    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        HttpResponse response = httpContext.Response;
        response.Headers.CacheControl = cacheControl;
        if (tag is not null && IsKnown(httpContext.Request, response, tag))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return Task.CompletedTask;
        }

        response.StatusCode = Status;
        if (Location is not null) response.Headers.Location = httpContext.Request.PathBase + Location;
        response.ContentType = Form;
        response.ContentLength = body.Length;
        return response.Body.WriteAsync(body, httpContext.RequestAborted).AsTask();
    }

    private static bool IsKnown(HttpRequest request, HttpResponse response, string tag)
    {
        var entityTag = new EntityTagHeaderValue('"' + tag + '"');
        response.Headers.ETag = entityTag.ToString();
        return HttpMethods.IsGet(request.Method)
            && EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch, out IList<EntityTagHeaderValue>? tags)
            && tags.Any(
                candidate =>
                    candidate.Equals(EntityTagHeaderValue.Any) || candidate.Compare(entityTag, useStrongComparison: false));
    }
}
