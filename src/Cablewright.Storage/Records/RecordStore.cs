using Microsoft.EntityFrameworkCore;

namespace Cablewright.Storage.Records;

/// <summary>Keeps recorded assessments, each unchanged until its shop deletes it.</summary>
/// <param name="database">Where they are kept.</param>
/// <param name="clock">The time.</param>
public sealed class RecordStore(Database database, TimeProvider clock)
{
    /// <summary>Keeps a record. <c>false</c>: the shop has it already; what is kept stays as it is.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public async Task<bool> AddAsync(string shop, string id, byte[] body, CancellationToken cancellation)
    {
        if (await FindAsync(shop, id, cancellation) is not null) return false;
        try
        {
            return await database.Run(async store =>
            {
                store.Records.Add(new RecordRow { Id = id, Shop = shop, Body = body, CreatedAt = clock.GetUtcNow() });
                await store.SaveChangesAsync(cancellation);
                return true;
            });
        }
        catch (StorageUnavailableException)
        {
            // Another request may have recorded the same in between.
            if (await FindAsync(shop, id, cancellation) is null) throw;
            return false;
        }
    }

    /// <summary>The record's bytes, or <c>null</c> where the shop has no such record.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<byte[]?> FindAsync(string shop, string id, CancellationToken cancellation) => database.Run(
        store => store.Records
            .Where(record => record.Id == id && record.Shop == shop)
            .Select(record => record.Body)
            .SingleOrDefaultAsync(cancellation));

    /// <summary>Deletes a record. <c>false</c>: the shop has no such record.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<bool> DeleteAsync(string shop, string id, CancellationToken cancellation) => database.Run(
        async store => await store.Records
            .Where(record => record.Id == id && record.Shop == shop)
            .ExecuteDeleteAsync(cancellation) > 0);
}
