namespace Cablewright.Storage.Keys;

/// <summary>One key of a shop; of its secret only the hash.</summary>
internal sealed class KeyRow
{
    public required string Id { get; set; }

    public required string Shop { get; set; }

    public required byte[] SecretHash { get; set; }

    public KeyScopes Scopes { get; set; }

    public string? Label { get; set; }

    public DateTimeOffset CreatedAt { get; set; }

    public DateTimeOffset? ExpiresAt { get; set; }

    public DateTimeOffset? RevokedAt { get; set; }
}
