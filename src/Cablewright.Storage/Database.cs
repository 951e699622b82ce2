using System.Data.Common;
using System.Net.Sockets;
using Cablewright.Storage.Postgres;
using Cablewright.Storage.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Cablewright.Storage;

/// <summary>Opens the configured database, and turns its failures into one exception.</summary>
/// <param name="settings">Which database, and how long a caller may be kept waiting for it.</param>
public sealed class Database(StorageSettings settings) : IDisposable
{
    private readonly SqliteFile? file = settings.PostgreSql is null ? new(settings.SqlitePath, settings.Timeout) : null;

    /// <summary>Brings the tables to this release's state; does nothing, and takes no lock, where they are there.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public async Task MigrateAsync(CancellationToken cancellation)
    {
        if (file is null)
        {
            await Guarded(() => Migrate(Open, cancellation));
            return;
        }

        await Guarded(async () =>
        {
            if (file.Exists && !await IsBehind(Open, cancellation)) return false;
            using FileStream turn = await file.PrepareAsync(cancellation);
            return await Migrate(file.OpenOrMake, cancellation);
        });
    }

    /// <summary>Runs work on a context of its own, for as long as it takes: for what no caller waits for.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    internal Task<T> Run<T>(Func<StoreContext, Task<T>> work) => Guarded(async () =>
    {
        file?.Hold();
        await using StoreContext context = Open();
        return await work(context);
    });

    /// <summary>
    /// Reads for a caller within <see cref="StorageSettings.Timeout"/>, connecting included. The work is given up then, and
    /// where it does not heed that, left alone.
    /// </summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used, or not in time.</exception>
    internal Task<T> Read<T>(Func<StoreContext, CancellationToken, Task<T>> work, CancellationToken cancellation) => InTime(
        inTime => Run(store => work(store, inTime)), cancellation);

    /// <summary>The same for a write. What has not begun to commit in time is never committed.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used, or not in time.</exception>
    internal Task<T> Write<T>(Func<StoreContext, CancellationToken, Task<T>> work, CancellationToken cancellation) => InTime(
        async inTime =>
        {
            using IDisposable? turn = file is null ? null : await file.TurnAsync(inTime);
            return await Run(store => work(store, inTime));
        },
        cancellation);

    /// <inheritdoc/>
    public void Dispose() => file?.Dispose();

    /// <summary>
    /// On a thread of its own, since SQLite blocks the one it is called on for as long as the file is locked. The work is told
    /// before the caller is: what begins late, or gets its lock late, then commits nothing any more.
    /// </summary>
    private async Task<T> InTime<T>(Func<CancellationToken, Task<T>> work, CancellationToken cancellation)
    {
        var givenUp = new CancellationTokenSource();
        try
        {
            return await Task.Run(() => work(givenUp.Token), CancellationToken.None).WaitAsync(settings.Timeout, cancellation);
        }
        catch (Exception late) when (late is TimeoutException or OperationCanceledException)
        {
            // Not waited for: a driver may try to reach the server first.
            _ = givenUp.CancelAsync();
            if (cancellation.IsCancellationRequested) throw;
            throw new StorageUnavailableException("The database did not answer in time.", late);
        }
    }

    private StoreContext Open() => settings.PostgreSql is { } connection ? PostgresStore.Open(connection) : file!.Open();

    private static async Task<bool> IsBehind(Func<StoreContext> open, CancellationToken cancellation)
    {
        await using StoreContext store = open();
        return (await store.Database.GetPendingMigrationsAsync(cancellation)).Any();
    }

    private static async Task<bool> Migrate(Func<StoreContext> open, CancellationToken cancellation)
    {
        if (!await IsBehind(open, cancellation)) return false;
        await using StoreContext store = open();
        await store.Database.MigrateAsync(cancellation);
        return true;
    }

    private static async Task<T> Guarded<T>(Func<Task<T>> work)
    {
        try
        {
            return await work();
        }
        catch (Exception error) when (IsOutage(error) || IsOutage(error.InnerException))
        {
            throw new StorageUnavailableException("The database cannot be used.", error);
        }
    }

    private static bool IsOutage(Exception? error) =>
        error is DbException or DbUpdateException or TimeoutException or SocketException or IOException
            or UnauthorizedAccessException;
}
