using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Cablewright.Storage.Sqlite;

/// <summary>The store in an SQLite file.</summary>
/// <param name="options">Which file.</param>
internal sealed class SqliteStore(DbContextOptions<SqliteStore> options) : StoreContext(options)
{
    /// <summary>The store in a file.</summary>
    /// <param name="file">Where it is.</param>
    /// <param name="timeout">How long a command waits for another process's lock.</param>
    /// <param name="mayCreate">Whether to make it where it is not there.</param>
    public static SqliteStore Open(string file, TimeSpan timeout, bool mayCreate) =>
        new(new DbContextOptionsBuilder<SqliteStore>()
            .UseSqlite(ConnectionString(file, timeout, mayCreate))
            .AddInterceptors(Durability.Instance)
            .Options);

    /// <summary>Without a pool, so that a file that was moved away is missed at once and found again when it is back.</summary>
    public static string ConnectionString(string file, TimeSpan timeout, bool mayCreate) => new SqliteConnectionStringBuilder
    {
        DataSource = file,
        Mode = mayCreate ? SqliteOpenMode.ReadWriteCreate : SqliteOpenMode.ReadWrite,
        Pooling = false,
        DefaultTimeout = (int)Math.Ceiling(timeout.TotalSeconds),
        ForeignKeys = true,
    }.ConnectionString;

    /// <summary>
    /// A commit is on the disk before it is acknowledged, a power cut included. What is set here must not write: EF also
    /// opens the file to read only, to see whether it is there.
    /// </summary>
    private sealed class Durability : DbConnectionInterceptor
    {
        public static readonly Durability Instance = new();

        public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
        {
            using DbCommand command = Pragmas(connection);
            command.ExecuteNonQuery();
        }

        public override async Task ConnectionOpenedAsync(
            DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
        {
            await using DbCommand command = Pragmas(connection);
            await command.ExecuteNonQueryAsync(cancellationToken);
        }

        private static DbCommand Pragmas(DbConnection connection)
        {
            DbCommand command = connection.CreateCommand();
            command.CommandText = "PRAGMA synchronous = FULL;";
            return command;
        }
    }
}

/// <summary>For the tool that writes migrations.</summary>
internal sealed class SqliteStoreFactory : IDesignTimeDbContextFactory<SqliteStore>
{
    public SqliteStore CreateDbContext(string[] args) => SqliteStore.Open("design.db", TimeSpan.Zero, mayCreate: true);
}
