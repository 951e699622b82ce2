using Microsoft.EntityFrameworkCore;

namespace Cablewright.Storage.Shops;

/// <summary>Makes and lists shops.</summary>
/// <param name="database">Where they are kept.</param>
/// <param name="clock">The time.</param>
public sealed class ShopStore(Database database, TimeProvider clock)
{
    /// <summary>Makes a shop. <c>false</c>: it is there already.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<bool> AddAsync(string id, CancellationToken cancellation) => database.Write(async (store, inTime) =>
    {
        if (await store.Shops.FindAsync([id], inTime) is not null) return false;
        store.Shops.Add(new ShopRow { Id = id, CreatedAt = clock.GetUtcNow() });
        await store.SaveChangesAsync(inTime);
        return true;
    }, cancellation);

    /// <summary>The ids of all shops, sorted.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<IReadOnlyList<string>> ListAsync(CancellationToken cancellation) => database.Read<IReadOnlyList<string>>(
        async (store, inTime) => await store.Shops.Select(shop => shop.Id).Order().ToListAsync(inTime), cancellation);
}
