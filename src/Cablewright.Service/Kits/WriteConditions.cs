using Cablewright.Storage.Kits;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace Cablewright.Service.Kits;

/// <summary>Reads <c>If-Match</c> and <c>If-None-Match</c> of a write (RFC 9110, 13.1).</summary>
internal static class WriteConditions
{
    /// <summary>A tag that no kit has: what cannot be read, or is weak, matches nothing.</summary>
    private const string Nothing = "";

    /// <summary>The condition; <c>If-None-Match</c> means only that the kit must not be there.</summary>
    public static KitCondition Of(HttpRequest request)
    {
        StringValues match = request.Headers.IfMatch;
        return new(match.Count == 0 ? null : TagsOf(match), request.Headers.IfNoneMatch == EntityTagHeaderValue.Any.ToString());
    }

    private static string[] TagsOf(StringValues match)
    {
        if (!EntityTagHeaderValue.TryParseStrictList(match, out IList<EntityTagHeaderValue>? tags)) return [Nothing];
        return tags.Contains(EntityTagHeaderValue.Any)
            ? []
            : [.. tags.Select(tag => tag.IsWeak ? Nothing : tag.Tag.Value![1..^1])];
    }
}
