using System.Data.Common;
using Microsoft.Data.Sqlite;
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
        };
        if ((connection ?? Connection) is { } postgres) settings[$"{prefix}PostgreSql"] = postgres;
        return settings;
    }

    /// <summary>Runs a command, with values where it says <c>@0</c>, <c>@1</c> and so on.</summary>
    public async Task<int> Execute(string command, params object[] values)
    {
        await using DbConnection connection = Open();
        await connection.OpenAsync();
        await using DbCommand asked = connection.CreateCommand();
        asked.CommandText = command;
        for (int at = 0; at < values.Length; at++)
        {
            DbParameter value = asked.CreateParameter();
            (value.ParameterName, value.Value) = ($"@{at}", values[at]);
            asked.Parameters.Add(value);
        }

        return await asked.ExecuteNonQueryAsync();
    }

    /// <summary>A connection of the test's own, not opened yet.</summary>
    public DbConnection Open() => Connection is { } server
        ? new NpgsqlConnection(server)
        : new SqliteConnection($"Data Source={SqliteFile};Pooling=False");

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
