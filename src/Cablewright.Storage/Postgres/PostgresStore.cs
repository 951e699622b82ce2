using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Cablewright.Storage.Postgres;

/// <summary>The store in a PostgreSQL database.</summary>
/// <param name="options">Which database.</param>
internal sealed class PostgresStore(DbContextOptions<PostgresStore> options) : StoreContext(options)
{
    /// <summary>
    /// Short waits, which the operator's own settings override, so that a database that is gone is soon said to be. A command
    /// that is given up ends its connection at once: a server that stands still would not answer the wish to cancel either.
    /// </summary>
    private const string Defaults = "Timeout=5;Command Timeout=10;Cancellation Timeout=-1;";

    public static PostgresStore Open(string connection) =>
        new(new DbContextOptionsBuilder<PostgresStore>().UseNpgsql(Defaults + connection).Options);
}

/// <summary>For the tool that writes migrations.</summary>
internal sealed class PostgresStoreFactory : IDesignTimeDbContextFactory<PostgresStore>
{
    public PostgresStore CreateDbContext(string[] args) => PostgresStore.Open("Host=localhost");
}
