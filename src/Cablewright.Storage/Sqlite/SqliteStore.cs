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
    private const int BusySeconds = 5;

    /// <summary>Without a pool, so that a file that was moved away is missed at once and found again when it is back.</summary>
    public static SqliteStore Open(string file, bool mayCreate)
    {
        var connection = new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Mode = mayCreate ? SqliteOpenMode.ReadWriteCreate : SqliteOpenMode.ReadWrite,
            Pooling = false,
            DefaultTimeout = BusySeconds,
            ForeignKeys = true,
        };
        return new(new DbContextOptionsBuilder<SqliteStore>()
            .UseSqlite(connection.ConnectionString)
            .AddInterceptors(Durability.Instance)
            .Options);
    }

    /// <summary>A commit is on the disk before it is acknowledged, a power cut included.</summary>
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
            command.CommandText = "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;";
            return command;
        }
    }
}

/// <summary>For the tool that writes migrations.</summary>
internal sealed class SqliteStoreFactory : IDesignTimeDbContextFactory<SqliteStore>
{
    public SqliteStore CreateDbContext(string[] args) => SqliteStore.Open("design.db", mayCreate: true);
}
