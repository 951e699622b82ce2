using System.Data.Common;
using System.Diagnostics;
using Cablewright.Service.Tests.Stores;
using Cablewright.Service.Tests.Support;
using Npgsql;

namespace Cablewright.Service.Tests.Faults;

/// <summary>A write to a database that keeps it waiting: given up in time, as a whole, and repeated as it was.</summary>
public class DeadlineTests
{
    private const string Kits = "/v1/shops/late/kits/";

    /// <summary>Far beyond the deadline that is set here, and well below what the drivers' own limits would come to.</summary>
    private static readonly TimeSpan Late = TimeSpan.FromSeconds(8);

    private static readonly (string, string) Deadline = ("Timeout", "00:00:01");

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_lock_that_is_not_given_up_ends_a_write_and_nothing_else(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        await using CatalogueService service = await CatalogueService.Start(database, Deadline);
        string key = (await service.Key("late")).Text;
        string tag = (await service.Send(HttpMethod.Put, Kits + "kept", key, SomeKit.Named("before"))).Headers["ETag"];

        await using (DbConnection other = database.Open())
        {
            await other.OpenAsync();
            await using DbTransaction held = await other.BeginTransactionAsync();
            await using DbCommand touch = other.CreateCommand();
            touch.Transaction = held;
            touch.CommandText = """
                UPDATE revisions SET "Value" = "Value";
                UPDATE shops SET "CreatedAt" = "CreatedAt";
                """;
            await touch.ExecuteNonQueryAsync();

            var waited = Stopwatch.StartNew();
            Task<Answer>[] writes =
            [
                .. Enumerable.Range(0, 40).Select(
                    number => service.Send(HttpMethod.Put, Kits + number, key, SomeKit.Named("late"))),
                service.Send(HttpMethod.Put, Kits + "kept", key, SomeKit.Named("after"), ("If-Match", tag)),
                service.Send(HttpMethod.Delete, Kits + "kept", key),
                service.Send(HttpMethod.Post, "/v1/assessments?record=true", key, Builds.Small),
            ];
            Assert.Equal(200, (await service.Send(HttpMethod.Get, Kits + "kept", key)).Status);
            Assert.All(await Task.WhenAll(writes), IsUnavailable);
            Assert.InRange(waited.Elapsed, TimeSpan.Zero, Late);
        }

        Answer repeated = await service.Send(HttpMethod.Put, Kits + "kept", key, SomeKit.Named("after"), ("If-Match", tag));
        Assert.Equal(200, repeated.Status);
        Answer page = await service.Send(HttpMethod.Get, Kits.TrimEnd('/'), key);
        Assert.Equal(["kept"], page.Json["kits"]!.AsArray().Select(kit => (string)kit!["sku"]!));
        Assert.Equal(201, (await service.Send(HttpMethod.Post, "/v1/assessments?record=true", key, Builds.Small)).Status);
    }

    [Theory]
    [OnPostgres]
    public async Task A_server_that_stands_still_is_given_up_and_found_again(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        var server = new NpgsqlConnectionStringBuilder(database.Connection);
        await using Relay relay = new(server.Host!, server.Port);
        (server.Host, server.Port, server.Pooling) = ("127.0.0.1", relay.Port, true);
        await using CatalogueService service = await CatalogueService.Start(database, server.ConnectionString, Deadline);
        string key = (await service.Key("late")).Text;
        string tag = (await service.Send(HttpMethod.Put, Kits + "kept", key, SomeKit.Named("before"))).Headers["ETag"];

        relay.Freeze();
        var waited = Stopwatch.StartNew();
        IsUnavailable(await service.Send(HttpMethod.Put, Kits + "kept", key, SomeKit.Named("after"), ("If-Match", tag)));
        IsUnavailable(await service.Send(HttpMethod.Delete, "/v1/assessments/asm_0", key));
        Assert.InRange(waited.Elapsed, TimeSpan.Zero, Late);
        Assert.Equal(200, (await service.Send(HttpMethod.Get, Kits + "kept", key)).Status);

        relay.Thaw();
        await Eventually.Answers(
            200, () => service.Send(HttpMethod.Put, Kits + "kept", key, SomeKit.Named("after"), ("If-Match", tag)));
    }

    private static void IsUnavailable(Answer answer)
    {
        ProblemAssertions.IsProblem(answer, 503, "catalogue.unavailable");
        Assert.InRange(int.Parse(answer.Headers["Retry-After"]), 1, 60);
    }
}
