using Cablewright.Contract;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Cablewright.Storage.Kits;

/// <summary>Writes kits. Reading is done from <see cref="Catalogues"/>.</summary>
/// <param name="database">Where they are kept.</param>
/// <param name="catalogues">What is told of each write.</param>
/// <param name="clock">The time.</param>
public sealed class KitStore(Database database, Catalogues catalogues, TimeProvider clock)
{
    /// <summary>Keeps a kit, new or in place of the one with that number, if the condition holds.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<KitWrite> PutAsync(
        string shop, string sku, byte[] body, KitCondition condition, CancellationToken cancellation) =>
        Write(shop, sku, async (store, row) =>
        {
            string tag = StoredKit.TagOf(body);
            if (!condition.Holds(row?.Tag)) return KitWrite.ConditionFailed;
            if (row?.Tag == tag) return KitWrite.Unchanged;
            if (row?.Tag is not null && condition.IfMatch is null) return KitWrite.ConditionMissing;
            if (row?.Tag is null && await IsFull(store, shop, cancellation)) return KitWrite.Full;

            KitWrite outcome = row?.Tag is null ? KitWrite.Created : KitWrite.Replaced;
            if (row is null) store.Kits.Add(row = new KitRow { Shop = shop, Sku = sku });
            (row.Body, row.Tag) = (body, tag);
            await Stamp(store, row, cancellation);
            return outcome;
        }, cancellation);

    /// <summary>Deletes a kit if the condition holds.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<KitWrite> DeleteAsync(string shop, string sku, KitCondition condition, CancellationToken cancellation) =>
        Write(shop, sku, async (store, row) =>
        {
            if (row?.Tag is null) return KitWrite.Missing;
            if (!condition.Holds(row.Tag)) return KitWrite.ConditionFailed;
            (row.Body, row.Tag) = (null, null);
            await Stamp(store, row, cancellation);
            return KitWrite.Deleted;
        }, cancellation);

    /// <summary>
    /// Reads and writes in one transaction, which begins by locking the counter: of two writers the second sees what the first did.
    /// </summary>
    private async Task<KitWrite> Write(
        string shop, string sku, Func<StoreContext, KitRow?, Task<KitWrite>> write, CancellationToken cancellation)
    {
        KitWrite outcome = await database.Run(async store =>
        {
            await using IDbContextTransaction transaction = await store.Database.BeginTransactionAsync(cancellation);
            await store.Revisions.Where(row => row.Id == RevisionRow.OfKits)
                .ExecuteUpdateAsync(row => row.SetProperty(counter => counter.Value, counter => counter.Value + 1), cancellation);
            KitWrite outcome = await write(store, await store.Kits.FindAsync([shop, sku], cancellation));
            if (outcome is not (KitWrite.Created or KitWrite.Replaced or KitWrite.Deleted)) return outcome;
            await store.SaveChangesAsync(cancellation);
            await transaction.CommitAsync(cancellation);
            return outcome;
        });
        await catalogues.TryRefreshAsync(cancellation);
        return outcome;
    }

    private async Task Stamp(StoreContext store, KitRow row, CancellationToken cancellation)
    {
        row.Revision = await store.Revisions.Where(counter => counter.Id == RevisionRow.OfKits)
            .Select(counter => counter.Value)
            .SingleAsync(cancellation);
        row.ChangedAt = clock.GetUtcNow();
    }

    private static async Task<bool> IsFull(StoreContext store, string shop, CancellationToken cancellation) =>
        await store.Kits.CountAsync(kit => kit.Shop == shop && kit.Tag != null, cancellation) >= ContractLimits.KitsOfShop;
}
