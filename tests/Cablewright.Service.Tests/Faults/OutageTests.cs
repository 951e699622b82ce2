using System.Diagnostics;
using Cablewright.Service.Tests.Stores;
using Cablewright.Service.Tests.Support;
using Npgsql;

namespace Cablewright.Service.Tests.Faults;

public class OutageTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task Without_its_database_it_computes_on_and_the_catalogue_comes_back_by_itself(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        await using Outage outage = new(database);
        await using CatalogueService service = await CatalogueService.Start(database, outage.Connection);
        string key = (await service.Key("lost")).Text;
        const string Address = "/v1/shops/lost/kits/one";
        Answer before = await service.Send(HttpMethod.Put, Address, key, SomeKit.Named("kept"));
        Answer record = await service.Send(HttpMethod.Post, "/v1/assessments?record=true", key, Builds.Small);
        Assert.Equal((201, 201), (before.Status, record.Status));

        outage.Begin();
        IsUnavailable(await service.Send(HttpMethod.Put, "/v1/shops/lost/kits/two", key, SomeKit.Named("lost")));
        IsUnavailable(await service.Send(HttpMethod.Post, "/v1/assessments?record=true", key, Builds.Small));
        IsUnavailable(await service.Send(HttpMethod.Get, record.Headers["Location"], key));
        IsUnavailable(await Until(() => service.Send(HttpMethod.Get, Address, key), status => status != 200));
        IsUnavailable(await service.Send(HttpMethod.Get, "/v1/shops/lost/kits", key));
        IsUnavailable(await service.Send(HttpMethod.Get, "/v1/shops/lost/kits", key[..^4] + "AAAA"));
        string matches = $$"""{ "build": {{Builds.Small}}, "shop": "lost" }""";
        string check = $$"""{ "build": {{Builds.Small}}, "shop": "lost", "sku": "one" }""";
        IsUnavailable(await service.Send(HttpMethod.Post, "/v1/kit-matches", key, matches));
        IsUnavailable(await service.Send(HttpMethod.Post, "/v1/kit-checks", key, check));
        Assert.Equal(200, (await service.Send(HttpMethod.Post, "/v1/assessments", null, Builds.Small)).Status);
        Assert.Equal(200, (await service.Send(HttpMethod.Post, "/v1/assessments", key, Builds.Small)).Status);
        Assert.Equal(200, (await service.Send(HttpMethod.Get, "/health/ready", null)).Status);

        outage.End();
        Answer after = await Until(() => service.Send(HttpMethod.Get, Address, key), status => status == 200);
        Assert.Equal(before.Body, after.Body);
        Assert.Equal(200, (await service.Send(HttpMethod.Post, "/v1/kit-matches", key, matches)).Status);
        Assert.Equal(200, (await service.Send(HttpMethod.Post, "/v1/kit-checks", key, check)).Status);
        Assert.Equal(201, (await service.Send(HttpMethod.Put, "/v1/shops/lost/kits/three", key, SomeKit.Named("new"))).Status);
        Assert.Equal(record.Body, (await service.Send(HttpMethod.Get, record.Headers["Location"], key)).Body);
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task Two_instances_agree_within_seconds(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        await using CatalogueService one = await CatalogueService.Start(database), other = await CatalogueService.Start(database);
        string key = (await one.Key("both")).Text;
        const string Address = "/v1/shops/both/kits/one";
        Answer written = await one.Send(HttpMethod.Put, Address, key, SomeKit.Named("shared"));
        Answer read = await Until(() => other.Send(HttpMethod.Get, Address, key), status => status == 200);
        Assert.Equal(written.Body, read.Body);
        Assert.Equal(written.Headers["Catalogue-Revision"], read.Headers["Catalogue-Revision"]);
        await other.Send(HttpMethod.Delete, Address, key);
        await Until(() => one.Send(HttpMethod.Get, Address, key), status => status == 404);
    }

    private static void IsUnavailable(Answer answer)
    {
        ProblemAssertions.IsProblem(answer, 503, "catalogue.unavailable");
        Assert.InRange(int.Parse(answer.Headers["Retry-After"]), 1, 60);
    }

    private static async Task<Answer> Until(Func<Task<Answer>> ask, Predicate<int> isRight)
    {
        for (var waited = Stopwatch.StartNew(); ; await Task.Delay(50))
        {
            Answer answer = await ask();
            if (isRight(answer.Status) || waited.Elapsed > Patience)
            {
                Assert.True(isRight(answer.Status), answer.Text);
                return answer;
            }
        }
    }

    /// <summary>Takes the database away: an SQLite file by moving its folder, a PostgreSQL server by cutting the way to it.</summary>
    private sealed class Outage : IAsyncDisposable
    {
        private readonly TestDatabase database;
        private readonly Relay? relay;
        private readonly int port;

        public Outage(TestDatabase database)
        {
            this.database = database;
            if (database.Connection is null) return;
            var server = new NpgsqlConnectionStringBuilder(database.Connection);
            relay = new Relay(server.Host!, server.Port);
            port = relay.Port;
            Connection = new NpgsqlConnectionStringBuilder(database.Connection) { Host = "127.0.0.1", Port = port }.ConnectionString;
        }

        public string? Connection { get; }

        private string Place => Path.GetDirectoryName(database.SqliteFile)!;

        public void Begin()
        {
            if (relay is not null) relay.Cut();
            else Directory.Move(Place, Place + "-gone");
        }

        public void End()
        {
            if (relay is not null) relay.Mend(port);
            else Directory.Move(Place + "-gone", Place);
        }

        public ValueTask DisposeAsync() => relay?.DisposeAsync() ?? ValueTask.CompletedTask;
    }
}
