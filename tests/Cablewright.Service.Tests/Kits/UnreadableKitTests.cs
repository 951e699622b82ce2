using System.Text;
using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Hosting;
using Cablewright.Service.Tests.Stores;
using Cablewright.Service.Tests.Support;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Tests.Kits;

/// <summary>A release that starts on rows which a later one wrote, or which were damaged.</summary>
public class UnreadableKitTests
{
    private const string Kits = "/v1/shops/rows/kits";

    private static readonly string[] Unreadable = ["broken", "cut", "faulty", "flipped", "word"];

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task What_cannot_be_read_stands_in_no_other_kit_s_way(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        string key = await Fill(database);
        await using CatalogueService service = await CatalogueService.Start(database);

        Assert.Equal(200, (await service.Send(HttpMethod.Get, $"{Kits}/plain", key)).Status);
        Answer later = await service.Send(HttpMethod.Get, $"{Kits}/later", key);
        Assert.Equal((200, "of a later release"), (later.Status, (string)later.Json["weather"]!));
        foreach (string sku in Unreadable)
        {
            Answer answer = await service.Send(HttpMethod.Get, $"{Kits}/{sku}", key);
            ProblemAssertions.IsProblem(answer, 409, "kit.unreadable");
            Assert.Contains(sku, (string)answer.Json["detail"]!);
        }

        Answer page = await service.Send(HttpMethod.Get, Kits, key);
        Assert.Empty(ContractSchemas.Faults("KitPage", page.Json));
        Assert.Equal(["later", "plain"], page.Json["kits"]!.AsArray().Select(kit => (string)kit!["sku"]!));
        Assert.Equal(Unreadable, Texts(page, "unreadable"));
        Answer pageOfOne = await service.Send(HttpMethod.Get, Kits + "?limit=1", key);
        Assert.Equal(["broken"], Texts(pageOfOne, "unreadable"));
        Assert.Empty(pageOfOne.Json["kits"]!.AsArray());
        Assert.NotNull(pageOfOne.Json["next"]);

        Answer matches = await service.Send(
            HttpMethod.Post, "/v1/kit-matches", key, $$"""{ "build": {{Builds.Small}}, "shop": "rows" }""");
        Assert.Empty(ContractSchemas.Faults("KitMatches", matches.Json));
        Assert.Equal(Unreadable, Texts(matches, "unreadable"));
        Assert.Equal(["later", "plain"], matches.Json["kits"]!.AsArray().Select(kit => (string)kit!["sku"]!).Order());
        Assert.Equal(200, (await Check(service, key, "later")).Status);
        ProblemAssertions.IsProblem(await Check(service, key, "flipped"), 409, "kit.unreadable");
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_kit_that_cannot_be_read_is_put_again_or_deleted(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        string key = await Fill(database);
        await using CatalogueService service = await CatalogueService.Start(database);

        Answer broken = await service.Send(HttpMethod.Get, $"{Kits}/flipped", key);
        Answer put = await service.Send(
            HttpMethod.Put, $"{Kits}/flipped", key, SomeKit.Named("flipped"), ("If-Match", broken.Headers["ETag"]));
        Assert.Equal((200, broken.Headers["ETag"]), (put.Status, put.Headers["ETag"]));
        Assert.Equal(put.Body, (await service.Send(HttpMethod.Get, $"{Kits}/flipped", key)).Body);
        Assert.Equal(204, (await service.Send(HttpMethod.Delete, $"{Kits}/cut", key)).Status);
    }

    [Fact]
    public async Task The_log_tells_of_it_once()
    {
        await using TestDatabase database = await TestDatabase.Make(Store.Sqlite);
        string key = await Fill(database);
        var process = new ServiceProcess();
        foreach ((string name, string value) in database.Settings("__")) process.Environment[name] = value;
        await process.InitializeAsync();
        try
        {
            process.Client.DefaultRequestHeaders.Authorization = new("Bearer", key);
            await Eventually.True(async () => (int)(await process.Client.GetAsync($"{Kits}/flipped")).StatusCode == 409);
            using HttpResponseMessage again = await process.Client.GetAsync($"{Kits}/flipped");
            string tag = again.Headers.ETag!.Tag.Trim('"');
            await process.Post(Builds.Small, "after-it");
            Assert.Single(await process.LogOf("after-it"));
            string line = Assert.Single(await process.LogOf(tag));
            Assert.DoesNotContain("flipped", line);
        }
        finally
        {
            await process.DisposeAsync();
        }
    }

    /// <summary>A shop's kits, put by this release and then changed where they are kept.</summary>
    private static async Task<string> Fill(TestDatabase database)
    {
        await using CatalogueService service = await CatalogueService.Start(database);
        string key = (await service.Key("rows")).Text;
        foreach (string sku in Unreadable.Concat(["later", "plain"]))
            await service.Send(HttpMethod.Put, $"{Kits}/{sku}", key, SomeKit.Named(sku));
        byte[] kit = (await service.Send(HttpMethod.Get, $"{Kits}/flipped", key)).Body;

        await Keep(database, "later", Changed(kit, root => root["weather"] = "of a later release", "later"));
        await Keep(database, "word", Changed(kit, root => root["parts"]![0]!["kind"] = "of a later release", "word"));
        await Keep(database, "faulty", Changed(kit, root => root["parts"]![0]!["length"] = "5000 ft", "faulty"));
        await Keep(database, "broken", Encoding.UTF8.GetBytes("{ \"name\""));
        byte[] flipped = [.. kit];
        flipped[kit.AsSpan().IndexOf("79.9"u8)]++;
        await database.Execute("""UPDATE kits SET "Body" = @0 WHERE "Sku" = 'flipped'""", flipped);
        await database.Execute("""UPDATE kits SET "Body" = @0 WHERE "Sku" = 'cut'""", Array.Empty<byte>());
        return key;
    }

    private static byte[] Changed(byte[] kit, Action<JsonNode> change, string sku)
    {
        JsonNode root = JsonNode.Parse(kit)!;
        root["sku"] = sku;
        change(root);
        return Encoding.UTF8.GetBytes(root.ToJsonString());
    }

    private static Task<int> Keep(TestDatabase database, string sku, byte[] body) => database.Execute(
        """UPDATE kits SET "Body" = @0, "Tag" = @1 WHERE "Sku" = @2""", body, StoredKit.TagOf(body), sku);

    private static Task<Answer> Check(CatalogueService service, string key, string sku) => service.Send(
        HttpMethod.Post, "/v1/kit-checks", key, $$"""{ "build": {{Builds.Small}}, "shop": "rows", "sku": "{{sku}}" }""");

    private static string[] Texts(Answer answer, string member) =>
        [.. answer.Json[member]!.AsArray().Select(text => (string)text!)];
}
