using System.Data.Common;
using System.Net.Sockets;
using Cablewright.Storage.Postgres;
using Cablewright.Storage.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Cablewright.Storage;

/// <summary>Opens the configured database, and turns its failures into one exception.</summary>
/// <param name="settings">Which database.</param>
public sealed class Database(StorageSettings settings)
{
    /// <summary>Brings the tables to this release's state; does nothing, and takes no lock, where they are there.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    public Task MigrateAsync(CancellationToken cancellation) => Run(
        async store =>
        {
            if (!(await store.Database.GetPendingMigrationsAsync(cancellation)).Any()) return false;
            await store.Database.MigrateAsync(cancellation);
            return true;
        },
        mayCreate: true);

    /// <summary>Runs work on a context of its own.</summary>
    /// <exception cref="StorageUnavailableException">The database cannot be used.</exception>
    internal Task<T> Run<T>(Func<StoreContext, Task<T>> work) => Run(work, mayCreate: false);

    private async Task<T> Run<T>(Func<StoreContext, Task<T>> work, bool mayCreate)
    {
        try
        {
            await using StoreContext context = Open(mayCreate);
            return await work(context);
        }
        catch (Exception error) when (IsOutage(error) || IsOutage(error.InnerException))
        {
            throw new StorageUnavailableException("The database cannot be used.", error);
        }
    }

    /// <summary>Only the first migration may make a file: one that is gone for a while must not come back empty.</summary>
    private StoreContext Open(bool mayCreate)
    {
        if (settings.PostgreSql is { } connection) return PostgresStore.Open(connection);
        if (mayCreate) Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(settings.SqlitePath))!);
        return SqliteStore.Open(settings.SqlitePath, mayCreate);
    }

    private static bool IsOutage(Exception? error) =>
        error is DbException or DbUpdateException or TimeoutException or SocketException or IOException
            or UnauthorizedAccessException;
}
