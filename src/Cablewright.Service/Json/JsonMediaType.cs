using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace Cablewright.Service.Json;

/// <summary>Which <c>Content-Type</c> headers announce a body that <see cref="ShapeReader"/> can read.</summary>
public static class JsonMediaType
{
    /// <summary>A JSON text a line.</summary>
    public const string Lines = "application/x-ndjson";

    /// <summary>Whether it is <c>application/json</c> or <c>application/*+json</c>, with no character set but UTF-8.</summary>
    public static bool Announces(string? contentType) =>
        MediaTypeHeaderValue.TryParse(contentType, out MediaTypeHeaderValue? type)
        && Is(type.Type, "application")
        && (Is(type.SubType, "json") || Is(type.Suffix, "json"))
        && IsUtf8(type);

    /// <summary>Whether it is <c>application/x-ndjson</c>: a JSON text a line, with no character set but UTF-8.</summary>
    public static bool AnnouncesLines(string? contentType) =>
        MediaTypeHeaderValue.TryParse(contentType, out MediaTypeHeaderValue? type)
        && Is(type.MediaType, Lines)
        && IsUtf8(type);

    private static bool IsUtf8(MediaTypeHeaderValue type) =>
        !type.Charset.HasValue || Is(HeaderUtilities.RemoveQuotes(type.Charset), "utf-8");

    private static bool Is(StringSegment given, string word) => given.Equals(word, StringComparison.OrdinalIgnoreCase);
}
