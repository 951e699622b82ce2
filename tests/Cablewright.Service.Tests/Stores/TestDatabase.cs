using Npgsql;

namespace Cablewright.Service.Tests.Stores;

/// <summary>An empty database of its own, and the settings that lead a service to it.</summary>
public sealed class TestDatabase : IAsyncDisposable
{
    private readonly string name = $"cablewright_{Guid.NewGuid():n}";

    private TestDatabase(string store) => Store = store;

    public string Store { get; }

    public string Folder { get; } = Directory.CreateTempSubdirectory("cablewright-").FullName;

    public string SqliteFile => Path.Combine(Folder, "data", "cablewright.db");

    /// <summary>The connection string of the PostgreSQL database, where it is one.</summary>
    public string? Connection => Store == Stores.Store.Sqlite
        ? null
        : new NpgsqlConnectionStringBuilder(Stores.Store.PostgresServer) { Database = name, Pooling = false }.ConnectionString;

    public static async Task<TestDatabase> Make(string store)
    {
        var database = new TestDatabase(store);
        if (database.Connection is not null) await OnServer($"CREATE DATABASE {database.name}");
        return database;
    }

    /// <summary>The settings, with the separator that commands or the environment use.</summary>
    public Dictionary<string, string> Settings(string separator, string? connection = null)
    {
        string prefix = $"Cablewright{separator}Storage{separator}";
        var settings = new Dictionary<string, string>
        {
            [$"{prefix}SqliteFile"] = SqliteFile,
            [$"{prefix}PollInterval"] = "00:00:00.1",
            [$"{prefix}MaxAge"] = "00:00:02",
        };
        if ((connection ?? Connection) is { } postgres) settings[$"{prefix}PostgreSql"] = postgres;
        return settings;
    }

    public async ValueTask DisposeAsync()
    {
        if (Connection is not null) await OnServer($"DROP DATABASE {name} WITH (FORCE)");
        Directory.Delete(Folder, recursive: true);
    }

    private static async Task OnServer(string command)
    {
        await using var connection = new NpgsqlConnection(Stores.Store.PostgresServer);
        await connection.OpenAsync();
        await using var asked = new NpgsqlCommand(command, connection);
        await asked.ExecuteNonQueryAsync();
    }
}
