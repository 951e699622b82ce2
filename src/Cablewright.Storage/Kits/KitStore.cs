using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Cablewright.Storage.Kits;

/// <summary>Writes kits. Reading is done from <see cref="Catalogues"/>.</summary>
/// <param name="database">Where they are kept.</param>
/// <param name="catalogues">What is told of each write.</param>
/// <param name="settings">How much a shop may keep, and how long a write may take.</param>
/// <param name="clock">The time.</param>
public sealed class KitStore(Database database, Catalogues catalogues, StorageSettings settings, TimeProvider clock)
{
    /// <summary>
    /// Keeps a kit, new or in place of the one with that number, if the condition holds. Where it is already so, a condition
    /// on the state before is held to have been met: the caller repeats a write whose answer was lost (RFC 9110, 13.1.1).
    /// </summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<KitWrite> PutAsync(
        string shop, string sku, byte[] body, KitCondition condition, CancellationToken cancellation) =>
        Write(shop, sku, async (store, row, inTime) =>
        {
            string tag = StoredKit.TagOf(body);
            if (row?.Tag == tag && row.Body.AsSpan().SequenceEqual(body) && !condition.IfAbsent) return KitWrite.Unchanged;
            if (!condition.Holds(row?.Tag)) return KitWrite.ConditionFailed;
            if (row?.Tag is not null && condition.IfMatch is null) return KitWrite.ConditionMissing;
            if (await Refusal(store, shop, row, body.Length, inTime) is { } refusal) return refusal;

            KitWrite outcome = row?.Tag is null ? KitWrite.Created : KitWrite.Replaced;
            if (row is null) store.Kits.Add(row = new KitRow { Shop = shop, Sku = sku });
            (row.Body, row.Tag) = (body, tag);
            await Stamp(store, row, inTime);
            return outcome;
        }, cancellation);

    /// <summary>Deletes a kit if the condition holds.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task<KitWrite> DeleteAsync(string shop, string sku, KitCondition condition, CancellationToken cancellation) =>
        Write(shop, sku, async (store, row, inTime) =>
        {
            if (row?.Tag is null) return KitWrite.Missing;
            if (!condition.Holds(row.Tag)) return KitWrite.ConditionFailed;
            (row.Body, row.Tag) = (null, null);
            await Stamp(store, row, inTime);
            return KitWrite.Deleted;
        }, cancellation);

    /// <summary>
    /// Reads and writes in one transaction, which begins by locking the counter: of two writers the second sees what the first
    /// did. What is left of the time goes into showing this instance what it wrote.
    /// </summary>
    private async Task<KitWrite> Write(
        string shop, string sku, Func<StoreContext, KitRow?, CancellationToken, Task<KitWrite>> write,
        CancellationToken cancellation)
    {
        long begun = clock.GetTimestamp();
        KitWrite outcome = await database.Write(
            async (store, inTime) =>
            {
                await using IDbContextTransaction transaction = await store.Database.BeginTransactionAsync(inTime);
                await store.Revisions.Where(row => row.Id == RevisionRow.OfKits)
                    .ExecuteUpdateAsync(row => row.SetProperty(counter => counter.Value, counter => counter.Value + 1), inTime);
                KitWrite outcome = await write(store, await store.Kits.FindAsync([shop, sku], inTime), inTime);
                if (outcome is not (KitWrite.Created or KitWrite.Replaced or KitWrite.Deleted)) return outcome;
                await store.SaveChangesAsync(inTime);
                await transaction.CommitAsync(inTime);
                return outcome;
            },
            cancellation);
        await catalogues.TryRefreshAsync(settings.Timeout - clock.GetElapsedTime(begun), cancellation);
        return outcome;
    }

    private async Task Stamp(StoreContext store, KitRow row, CancellationToken cancellation)
    {
        row.Revision = await store.Revisions.Where(counter => counter.Id == RevisionRow.OfKits)
            .Select(counter => counter.Value)
            .SingleAsync(cancellation);
        row.ChangedAt = clock.GetUtcNow();
    }

    /// <summary>
    /// Why the shop may not keep this besides what it keeps; a kit that becomes no larger may always be replaced.
    /// </summary>
    private async Task<KitWrite?> Refusal(StoreContext store, string shop, KitRow? row, int bytes, CancellationToken cancellation)
    {
        int growth = bytes - (row?.Body?.Length ?? 0);
        bool isNew = row?.Tag is null;
        if (!isNew && growth <= 0) return null;
        var kept = await store.Kits.Where(kit => kit.Shop == shop && kit.Tag != null)
            .GroupBy(kit => kit.Shop)
            .Select(kits => new { Count = kits.Count(), Bytes = kits.Sum(kit => (long)kit.Body!.Length) })
            .SingleOrDefaultAsync(cancellation);
        if (isNew && kept?.Count >= settings.KitsPerShop) return KitWrite.TooMany;
        return (kept?.Bytes ?? 0) + growth > settings.KitBytesPerShop ? KitWrite.TooLarge : null;
    }
}
