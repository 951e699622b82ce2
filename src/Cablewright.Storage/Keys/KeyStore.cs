using Microsoft.EntityFrameworkCore;

namespace Cablewright.Storage.Keys;

/// <summary>Makes, lists and revokes the keys of shops.</summary>
/// <param name="database">Where they are kept.</param>
/// <param name="clock">The time.</param>
public sealed class KeyStore(Database database, TimeProvider clock)
{
    /// <summary>A new key; its text is shown this once and can never be read again. <c>null</c>: there is no such shop.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<(string Text, ShopKey Key)?> AddAsync(
        string shop, KeyScopes scopes, string? label, DateTimeOffset? expiresAt, CancellationToken cancellation) =>
        database.Write<(string, ShopKey)?>(async (store, inTime) =>
        {
            if (await store.Shops.FindAsync([shop], inTime) is null) return null;
            (string text, string id, byte[] hash) = KeyText.Make();
            var row = new KeyRow
            {
                Id = id,
                Shop = shop,
                SecretHash = hash,
                Scopes = scopes,
                Label = label,
                CreatedAt = clock.GetUtcNow(),
                ExpiresAt = expiresAt,
            };
            store.Keys.Add(row);
            await store.SaveChangesAsync(inTime);
            return (text, ShopKey.Of(row));
        }, cancellation);

    /// <summary>The keys of one shop, revoked and expired ones too; <c>null</c>: there is no such shop.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<IReadOnlyList<ShopKey>?> ListAsync(string shop, CancellationToken cancellation) =>
        database.Read<IReadOnlyList<ShopKey>?>(async (store, inTime) =>
        {
            if (await store.Shops.FindAsync([shop], inTime) is null) return null;
            List<KeyRow> rows = await store.Keys.AsNoTracking()
                .Where(key => key.Shop == shop)
                .OrderBy(key => key.Id)
                .ToListAsync(inTime);
            return [.. rows.Select(ShopKey.Of)];
        }, cancellation);

    /// <summary>Revokes a key for ever; a second time changes nothing. <c>false</c>: there is no such key.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<bool> RevokeAsync(string id, CancellationToken cancellation) => database.Write(async (store, inTime) =>
    {
        if (await store.Keys.FindAsync([id], inTime) is not { } row) return false;
        row.RevokedAt ??= clock.GetUtcNow();
        await store.SaveChangesAsync(inTime);
        return true;
    }, cancellation);
}
