using Cablewright.Storage.Keys;
using Microsoft.EntityFrameworkCore;

namespace Cablewright.Storage.Kits;

/// <summary>Holds the current <see cref="Catalogue"/> and brings it up to date.</summary>
/// <param name="database">Where it comes from.</param>
/// <param name="settings">How long its keys are believed.</param>
/// <param name="clock">The time.</param>
public sealed class Catalogues(Database database, StorageSettings settings, TimeProvider clock) : IDisposable
{
    private readonly SemaphoreSlim one = new(1);
    private volatile Catalogue? newest;
    private volatile bool isCurrent;

    /// <summary>The newest state read, however old; <c>null</c> before the first.</summary>
    public Catalogue? Newest => newest;

    /// <summary>Whether the database gave its state when it was last asked.</summary>
    public bool IsCurrent => isCurrent;

    /// <summary>Whether the keys of the newest state may still be believed.</summary>
    public bool IsTrusted => Newest is { } newest && AgeOf(newest) <= settings.KeysTrustedFor;

    /// <summary>How long ago a state was asked for.</summary>
    public TimeSpan AgeOf(Catalogue catalogue) => clock.GetElapsedTime(catalogue.ReadAt);

    /// <summary>Reads what has changed since the last time.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public async Task RefreshAsync(CancellationToken cancellation)
    {
        await one.WaitAsync(cancellation);
        try
        {
            long readAt = clock.GetTimestamp();
            newest = await database.Run(store => Read(store, Newest ?? Catalogue.Empty, readAt, cancellation));
            isCurrent = true;
        }
        catch
        {
            isCurrent = false;
            throw;
        }
        finally
        {
            one.Release();
        }
    }

    /// <summary>The same within a limit; without the database the state stays as it is, and grows old.</summary>
    public async Task TryRefreshAsync(TimeSpan limit, CancellationToken cancellation)
    {
        if (limit <= TimeSpan.Zero) return;
        try
        {
            await Task.Run(() => RefreshAsync(cancellation), cancellation).WaitAsync(limit, cancellation);
        }
        catch (Exception) when (!cancellation.IsCancellationRequested)
        {
            // The next poll tries again, and tells.
        }
    }

    /// <inheritdoc/>
    public void Dispose() => one.Dispose();

    /// <summary>A counter that went back is a backup that was restored: nothing known holds then.</summary>
    private static async Task<Catalogue> Read(
        StoreContext store, Catalogue known, long readAt, CancellationToken cancellation)
    {
        long counter = await store.Revisions.Where(row => row.Id == RevisionRow.OfKits)
            .Select(row => row.Value)
            .SingleAsync(cancellation);
        if (counter < known.Revision) known = Catalogue.Empty;
        List<KitChange> changes = await store.Kits
            .Where(kit => kit.Revision > known.Revision)
            .OrderBy(kit => kit.Revision)
            .Select(kit => new KitChange(kit.Shop, kit.Sku, kit.Body, kit.Tag, kit.Revision))
            .ToListAsync(cancellation);
        List<KeyRow> keys = await store.Keys.AsNoTracking().ToListAsync(cancellation);
        return known.With(changes, keys.Select(ShopKey.Of), readAt);
    }
}
