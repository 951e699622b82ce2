using System.Reflection;
using Xunit.Sdk;

namespace Cablewright.Service.Tests.Stores;

/// <summary>Which kinds of database there are to test with.</summary>
public static class Store
{
    public const string Sqlite = "SQLite";
    public const string Postgres = "PostgreSQL";

    /// <summary>Names a PostgreSQL server whose user may make databases; <c>tests/run</c> starts one.</summary>
    public const string PostgresVariable = "CABLEWRIGHT_TEST_POSTGRESQL";

    public static string? PostgresServer => Environment.GetEnvironmentVariable(PostgresVariable);
}

/// <summary>Runs a theory on SQLite.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class OnSqliteAttribute : DataAttribute
{
    public override IEnumerable<object[]> GetData(MethodInfo testMethod) => [[Store.Sqlite]];
}

/// <summary>Runs a theory on PostgreSQL too, or says why it does not.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class OnPostgresAttribute : DataAttribute
{
    public override string Skip
    {
        get => Store.PostgresServer is null
            ? $"{Store.PostgresVariable} names no PostgreSQL server; tests/run starts one and runs this test on it"
            : null!;
        set => throw new NotSupportedException(value);
    }

    public override IEnumerable<object[]> GetData(MethodInfo testMethod) => [[Store.Postgres]];
}
