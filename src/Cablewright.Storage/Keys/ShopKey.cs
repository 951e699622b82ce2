using System.Security.Cryptography;

namespace Cablewright.Storage.Keys;

/// <summary>A key of a shop as it is kept: everything but its secret.</summary>
/// <param name="Id">Its public name, part of its text.</param>
/// <param name="Shop">The shop it belongs to.</param>
/// <param name="Scopes">What it may do.</param>
/// <param name="Label">What its maker calls it.</param>
/// <param name="CreatedAt">When it was made.</param>
/// <param name="ExpiresAt">From when on it is refused, if ever.</param>
/// <param name="RevokedAt">When it was revoked, if it was.</param>
public sealed record ShopKey(
    string Id,
    string Shop,
    KeyScopes Scopes,
    string? Label,
    DateTimeOffset CreatedAt,
    DateTimeOffset? ExpiresAt,
    DateTimeOffset? RevokedAt)
{
    private readonly byte[] secretHash = [];

    internal static ShopKey Of(KeyRow row) =>
        new(row.Id, row.Shop, row.Scopes, row.Label, row.CreatedAt, row.ExpiresAt, row.RevokedAt, row.SecretHash);

    private ShopKey(
        string id, string shop, KeyScopes scopes, string? label, DateTimeOffset createdAt, DateTimeOffset? expiresAt,
        DateTimeOffset? revokedAt, byte[] secretHash)
        : this(id, shop, scopes, label, createdAt, expiresAt, revokedAt) => this.secretHash = secretHash;

    /// <summary>Whether it may be used now.</summary>
    public bool IsValidAt(DateTimeOffset now) => RevokedAt is null && (ExpiresAt is null || now < ExpiresAt);

    /// <summary>Compares in constant time.</summary>
    internal bool HasSecret(string secret) => CryptographicOperations.FixedTimeEquals(secretHash, KeyText.Hash(secret));
}
