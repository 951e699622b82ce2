using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Cablewright.Storage.Records;

/// <summary>How keeping a record ended.</summary>
public enum RecordWrite
{
    /// <summary>A new record is kept.</summary>
    Created,

    /// <summary>The shop has it already; what is kept stays as it is.</summary>
    Unchanged,

    /// <summary>The shop has as many records as it may have.</summary>
    TooMany,

    /// <summary>The shop's records have as many bytes as they may have.</summary>
    TooLarge,
}

/// <summary>Keeps recorded assessments, each unchanged until its shop deletes it.</summary>
/// <param name="database">Where they are kept.</param>
/// <param name="settings">How much a shop may keep.</param>
/// <param name="clock">The time.</param>
public sealed class RecordStore(Database database, StorageSettings settings, TimeProvider clock)
{
    /// <summary>Keeps a record.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<RecordWrite> AddAsync(string shop, string id, byte[] body, CancellationToken cancellation) => database.Write(
        async (store, inTime) =>
        {
            await using IDbContextTransaction transaction = await store.Database.BeginTransactionAsync(inTime);

            // Locks the shop: those who record for it at once neither make the same record twice nor exceed the quota together.
            await store.Shops.Where(row => row.Id == shop)
                .ExecuteUpdateAsync(row => row.SetProperty(kept => kept.CreatedAt, kept => kept.CreatedAt), inTime);
            if (await store.Records.AnyAsync(record => record.Id == id, inTime)) return RecordWrite.Unchanged;
            var kept = await store.Records.Where(record => record.Shop == shop)
                .GroupBy(record => record.Shop)
                .Select(records => new { Count = records.Count(), Bytes = records.Sum(record => (long)record.Body.Length) })
                .SingleOrDefaultAsync(inTime);
            if (kept?.Count >= settings.RecordsPerShop) return RecordWrite.TooMany;
            if ((kept?.Bytes ?? 0) + body.Length > settings.RecordBytesPerShop) return RecordWrite.TooLarge;

            store.Records.Add(new RecordRow { Id = id, Shop = shop, Body = body, CreatedAt = clock.GetUtcNow() });
            await store.SaveChangesAsync(inTime);
            await transaction.CommitAsync(inTime);
            return RecordWrite.Created;
        },
        cancellation);

    /// <summary>The record's bytes, or <c>null</c> where the shop has no such record.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<byte[]?> FindAsync(string shop, string id, CancellationToken cancellation) => database.Read(
        (store, inTime) => store.Records
            .Where(record => record.Id == id && record.Shop == shop)
            .Select(record => record.Body)
            .SingleOrDefaultAsync(inTime),
        cancellation);

    /// <summary>Deletes a record. <c>false</c>: the shop has no such record.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<bool> DeleteAsync(string shop, string id, CancellationToken cancellation) => database.Write(
        async (store, inTime) => await store.Records
            .Where(record => record.Id == id && record.Shop == shop)
            .ExecuteDeleteAsync(inTime) > 0,
        cancellation);
}
