using Cablewright.Service.Tests.Stores;
using Cablewright.Service.Tests.Support;
using Npgsql;

namespace Cablewright.Service.Tests.Faults;

public class OutageTests
{
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
        Answer old = await Until(() => service.Send(HttpMethod.Get, Address, key), answer => Age(answer) >= 2);
        Assert.Equal((200, before.Text), (old.Status, old.Text));
        Assert.True(Age(await service.Send(HttpMethod.Get, "/v1/shops/lost/kits", key)) >= 2);
        IsUnavailable(await service.Send(HttpMethod.Get, "/v1/shops/lost/kits", key[..^4] + "AAAA"));
        string matches = $$"""{ "build": {{Builds.Small}}, "shop": "lost" }""";
        string check = $$"""{ "build": {{Builds.Small}}, "shop": "lost", "sku": "one" }""";
        Assert.True(Age(await service.Send(HttpMethod.Post, "/v1/kit-matches", key, matches)) >= 2);
        Assert.True(Age(await service.Send(HttpMethod.Post, "/v1/kit-checks", key, check)) >= 2);
        Assert.Equal(200, (await service.Send(HttpMethod.Post, "/v1/assessments", null, Builds.Small)).Status);
        Assert.Equal(200, (await service.Send(HttpMethod.Post, "/v1/assessments", key, Builds.Small)).Status);
        Assert.Equal(200, (await service.Send(HttpMethod.Get, "/health/ready", null)).Status);

        outage.End();
        Answer after = await Until(() => service.Send(HttpMethod.Get, Address, key), answer => Age(answer) < 2);
        Assert.Equal(before.Body, after.Body);
        Assert.Equal(200, (await service.Send(HttpMethod.Post, "/v1/kit-matches", key, matches)).Status);
        Assert.Equal(200, (await service.Send(HttpMethod.Post, "/v1/kit-checks", key, check)).Status);
        Assert.Equal(201, (await service.Send(HttpMethod.Put, "/v1/shops/lost/kits/three", key, SomeKit.Named("new"))).Status);
        Assert.Equal(record.Body, (await service.Send(HttpMethod.Get, record.Headers["Location"], key)).Body);
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task Keys_are_believed_for_a_while_only(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        await using Outage outage = new(database);
        await using CatalogueService service = await CatalogueService.Start(
            database, outage.Connection, ("KeysTrustedFor", "00:00:03"));
        string key = (await service.Key("lost")).Text;
        outage.Begin();
        Task<Answer> Ask() => service.Send(HttpMethod.Get, "/v1/shops/lost/kits", key);
        IsUnavailable(await Eventually.Answers(503, Ask));
        Assert.Equal(200, (await service.Send(HttpMethod.Post, "/v1/assessments", key, Builds.Small)).Status);
        outage.End();
        await Eventually.Answers(200, Ask);
    }

    /// <summary>Nothing that the database holds, such as a table without its row, ends the process.</summary>
    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_turn_that_fails_in_any_way_is_followed_by_another(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        await using CatalogueService service = await CatalogueService.Start(database);
        string key = (await service.Key("turn")).Text;
        await database.Execute("DELETE FROM revisions");
        Task<Answer> Read() => service.Send(HttpMethod.Get, "/v1/shops/turn/kits", key);
        await Until(Read, answer => Age(answer) >= 2);

        await database.Execute("INSERT INTO revisions VALUES (1, 7)");
        await Until(Read, answer => Age(answer) < 2);
        Assert.Equal(201, (await service.Send(HttpMethod.Put, "/v1/shops/turn/kits/one", key, SomeKit.Named("kit"))).Status);
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
        Answer read = await Eventually.Answers(200, () => other.Send(HttpMethod.Get, Address, key));
        Assert.Equal(written.Body, read.Body);
        Assert.Equal(written.Headers["Catalogue-Revision"], read.Headers["Catalogue-Revision"]);
        await other.Send(HttpMethod.Delete, Address, key);
        await Eventually.Answers(404, () => one.Send(HttpMethod.Get, Address, key));
    }

    private static void IsUnavailable(Answer answer)
    {
        ProblemAssertions.IsProblem(answer, 503, "catalogue.unavailable");
        Assert.InRange(int.Parse(answer.Headers["Retry-After"]), 1, 60);
    }

    private static int Age(Answer answer)
    {
        Assert.Equal(200, answer.Status);
        return int.Parse(answer.Headers["Age"]);
    }

    private static async Task<Answer> Until(Func<Task<Answer>> ask, Predicate<Answer> isRight)
    {
        Answer? answer = null;
        await Eventually.True(async () => isRight(answer = await ask()));
        return answer!;
    }

    /// <summary>
    /// Takes the database away: an SQLite file by moving its folder, a PostgreSQL server by cutting the way to it.
    /// </summary>
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
            Connection =
                new NpgsqlConnectionStringBuilder(database.Connection) { Host = "127.0.0.1", Port = port }.ConnectionString;
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
