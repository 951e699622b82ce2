using Microsoft.EntityFrameworkCore;

namespace Cablewright.Storage.Shops;

/// <summary>Makes and lists shops.</summary>
/// <param name="database">Where they are kept.</param>
/// <param name="clock">The time.</param>
public sealed class ShopStore(Database database, TimeProvider clock)
{
    /// <summary>Makes a shop. <c>false</c>: it is there already.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<bool> AddAsync(string id, CancellationToken cancellation) => database.Run(async store =>
    {
        if (await store.Shops.FindAsync([id], cancellation) is not null) return false;
        store.Shops.Add(new ShopRow { Id = id, CreatedAt = clock.GetUtcNow() });
        await store.SaveChangesAsync(cancellation);
        return true;
    });

    /// <summary>The ids of all shops, sorted.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<IReadOnlyList<string>> ListAsync(CancellationToken cancellation) => database.Run<IReadOnlyList<string>>(
        async store => await store.Shops.Select(shop => shop.Id).Order().ToListAsync(cancellation));
}
