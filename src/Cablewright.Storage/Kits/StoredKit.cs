using System.Security.Cryptography;

namespace Cablewright.Storage.Kits;

/// <summary>
/// A kit as it is kept: the bytes alone. What they say is not looked at here, so that a row that this release cannot read
/// stands in nobody's way.
/// </summary>
/// <param name="Sku">The shop's number for it.</param>
/// <param name="Body">The JSON that is answered.</param>
/// <param name="Tag">What identifies these very bytes: their SHA-256.</param>
public sealed record StoredKit(string Sku, ReadOnlyMemory<byte> Body, string Tag)
{
    /// <summary>Whether the bytes are those that were put.</summary>
    public bool IsSound => TagOf(Body.Span) == Tag;

    /// <summary>The tag of a body.</summary>
    public static string TagOf(ReadOnlySpan<byte> body) => Convert.ToHexStringLower(SHA256.HashData(body));
}
