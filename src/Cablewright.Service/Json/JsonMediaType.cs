using Microsoft.Net.Http.Headers;

namespace Cablewright.Service.Json;

/// <summary>Which <c>Content-Type</c> headers announce a body that <see cref="ShapeReader"/> can read.</summary>
public static class JsonMediaType
{
    /// <summary>Whether it is <c>application/json</c> or <c>application/*+json</c>, in UTF-8 where it names a character set.</summary>
    public static bool Announces(string? contentType) =>
        MediaTypeHeaderValue.TryParse(contentType, out MediaTypeHeaderValue? type)
        && type.Type.Equals("application", StringComparison.OrdinalIgnoreCase)
        && (type.SubType.Equals("json", StringComparison.OrdinalIgnoreCase) || type.Suffix.Equals("json", StringComparison.OrdinalIgnoreCase))
        && (!type.Charset.HasValue || HeaderUtilities.RemoveQuotes(type.Charset).Equals("utf-8", StringComparison.OrdinalIgnoreCase));
}
