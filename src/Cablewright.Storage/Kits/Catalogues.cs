using Cablewright.Storage.Keys;
using Microsoft.EntityFrameworkCore;

namespace Cablewright.Storage.Kits;

/// <summary>Holds the current <see cref="Catalogue"/> and brings it up to date.</summary>
/// <param name="database">Where it comes from.</param>
/// <param name="settings">How old it may become.</param>
/// <param name="clock">The time.</param>
public sealed class Catalogues(Database database, StorageSettings settings, TimeProvider clock) : IDisposable
{
    private readonly SemaphoreSlim _one = new(1);
    private State? _state;

    /// <summary>The newest state read, however old; <c>null</c> before the first.</summary>
    public Catalogue? Newest => _state?.Catalogue;

    /// <summary>The newest state, if it was compared with the database a short while ago.</summary>
    public Catalogue? Fresh =>
        _state is { } state && clock.GetElapsedTime(state.ReadAt) <= settings.MaxAge ? state.Catalogue : null;

    /// <summary>Reads what has changed since the last time.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public async Task RefreshAsync(CancellationToken cancellation)
    {
        await _one.WaitAsync(cancellation);
        try
        {
            long readAt = clock.GetTimestamp();
            _state = new(await database.Run(store => Read(store, Newest ?? Catalogue.Empty, cancellation)), readAt);
        }
        finally
        {
            _one.Release();
        }
    }

    /// <summary>The same; without the database the state stays as it is, and grows old.</summary>
    public async Task TryRefreshAsync(CancellationToken cancellation)
    {
        try
        {
            await RefreshAsync(cancellation);
        }
        catch (StorageUnavailableException)
        {
            // The next poll tries again.
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _one.Dispose();

    /// <summary>A counter that went back is a backup that was restored: nothing known holds then.</summary>
    private static async Task<Catalogue> Read(StoreContext store, Catalogue known, CancellationToken cancellation)
    {
        long counter = await store.Revisions.Where(row => row.Id == RevisionRow.OfKits)
            .Select(row => row.Value)
            .SingleAsync(cancellation);
        if (counter < known.Revision) known = Catalogue.Empty;
        List<KitRow> changed = await store.Kits.AsNoTracking()
            .Where(kit => kit.Revision > known.Revision)
            .OrderBy(kit => kit.Revision)
            .ToListAsync(cancellation);
        List<KeyRow> keys = await store.Keys.AsNoTracking().ToListAsync(cancellation);
        return known.With(changed, keys.Select(ShopKey.Of));
    }

    private sealed record State(Catalogue Catalogue, long ReadAt);
}
