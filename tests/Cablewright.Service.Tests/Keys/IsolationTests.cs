using Cablewright.Service.Json;
using Cablewright.Service.Tests.Stores;
using Cablewright.Service.Tests.Support;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Tests.Keys;

/// <summary>No shop sees another's, at any call that needs a key.</summary>
public class IsolationTests(CatalogueServices services) : IClassFixture<CatalogueServices>
{
    private static readonly (HttpMethod Method, string Address, KeyScopes Scope)[] Calls =
    [
        (HttpMethod.Get, "/v1/shops/{shop}/kits", KeyScopes.KitsRead),
        (HttpMethod.Get, "/v1/shops/{shop}/kits/one", KeyScopes.KitsRead),
        (HttpMethod.Put, "/v1/shops/{shop}/kits/one", KeyScopes.KitsWrite),
        (HttpMethod.Delete, "/v1/shops/{shop}/kits/one", KeyScopes.KitsWrite),
        (HttpMethod.Get, "/v1/assessments/{id}", KeyScopes.RecordsRead),
        (HttpMethod.Delete, "/v1/assessments/{id}", KeyScopes.RecordsWrite),
        (HttpMethod.Post, "/v1/kit-checks", KeyScopes.KitsRead),
        (HttpMethod.Post, "/v1/kit-matches", KeyScopes.KitsRead),
        (HttpMethod.Post, "/v1/assessments?record=true", KeyScopes.RecordsWrite),
    ];

    [Fact]
    public void Every_call_of_the_contract_that_needs_a_key_is_tested()
    {
        var contract = System.Text.Json.Nodes.JsonNode.Parse(File.ReadAllText(Repository.Contract))!;
        string[] keyed =
        [
            .. contract["paths"]!.AsObject().SelectMany(path => path.Value!.AsObject()
                .Where(operation => operation.Value!["security"] is not null)
                .Select(operation => $"{operation.Key.ToUpperInvariant()} {path.Key}")),
        ];
        Assert.Equal(
            keyed.Order(),
            Calls.Select(call => $"{call.Method} {call.Address.Split('?')[0].Replace("kits/one", "kits/{sku}")}").Order());
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task Another_shop_s_things_look_like_things_that_are_not_there(string store)
    {
        CatalogueService service = services[store];
        string owner = (await service.Key("owner")).Text, stranger = (await service.Key("stranger")).Text;
        await service.Send(HttpMethod.Put, "/v1/shops/owner/kits/one", owner, SomeKit.Named("secret"));
        string record = await Record(service, owner);
        string none = record[..^4] + "0000";

        foreach ((HttpMethod method, string address, _) in Calls.SkipLast(1))
        {
            Answer hidden = await Ask(service, method, address, "owner", record, stranger);
            Answer absent = await Ask(service, method, address, "nobody", none, stranger);
            ProblemAssertions.IsProblem(hidden, 404, "resource.not-found");
            Assert.Equal(Nameless(absent, "nobody", none), Nameless(hidden, "owner", record));
        }

        Assert.Equal(200, (await service.Send(HttpMethod.Get, "/v1/shops/owner/kits/one", owner)).Status);
        Assert.Equal(200, (await service.Send(HttpMethod.Get, $"/v1/assessments/{record}", owner)).Status);
        Assert.NotEqual(record, await Record(service, stranger));
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_call_needs_a_key_that_is_valid_and_may_do_it(string store)
    {
        CatalogueService service = services[store];
        string owner = (await service.Key("gate")).Text;
        string record = await Record(service, owner);
        string expired = (await service.Key("gate", expiresAt: DateTimeOffset.UtcNow.AddSeconds(-1))).Text;
        (string revoked, ShopKey key) = await service.Key("gate");
        await service.Get<KeyStore>().RevokeAsync(key.Id, CancellationToken.None);
        await service.Get<Catalogues>().RefreshAsync(CancellationToken.None);
        string[] refused = [expired, revoked, owner[..^1] + (owner[^1] == 'A' ? 'E' : 'A'), "nonsense", ""];

        foreach ((HttpMethod method, string address, KeyScopes scope) in Calls)
        {
            Answer anonymous = await Ask(service, method, address, "gate", record, null);
            ProblemAssertions.IsProblem(anonymous, 401, "key.missing");
            Assert.Equal("Bearer", anonymous.Headers["WWW-Authenticate"]);
            foreach (string text in refused.SkipLast(1))
                ProblemAssertions.IsProblem(await Ask(service, method, address, "gate", record, text), 401, "key.refused");
            string without = (await service.Key("gate", ScopeWords.All & ~scope)).Text;
            ProblemAssertions.IsProblem(await Ask(service, method, address, "gate", record, without), 403, "key.without-right");
        }
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task Only_the_hash_of_a_secret_is_kept(string store)
    {
        CatalogueService service = services[store];
        (string text, ShopKey key) = await service.Key("hashed");
        Assert.Matches("^cwk_[0-9a-f]{16}_[A-Za-z0-9_-]{43}$", text);
        if (store == Store.Sqlite)
        {
            foreach (string file in Directory.GetFiles(Path.GetDirectoryName(service.Database.SqliteFile)!))
                Assert.DoesNotContain(text[^43..], System.Text.Encoding.Latin1.GetString(await ReadShared(file)));
        }

        Assert.Contains((await service.Get<KeyStore>().ListAsync("hashed", CancellationToken.None))!, kept => kept.Id == key.Id);
        Assert.DoesNotContain(text[^43..], key.ToString());
    }

    private static async Task<byte[]> ReadShared(string file)
    {
        await using FileStream stream = new(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[stream.Length];
        await stream.ReadExactlyAsync(bytes);
        return bytes;
    }

    private static Task<Answer> Ask(
        CatalogueService service, HttpMethod method, string address, string shop, string record, string? key) =>
        service.Send(
            method,
            address.Replace("{shop}", shop).Replace("{id}", record),
            key,
            method == HttpMethod.Put ? SomeKit.Named("kit") : method == HttpMethod.Post ? BodyOf(address, shop) : null);

    private static string BodyOf(string address, string shop) => address switch
    {
        "/v1/kit-checks" => $$"""{ "build": {{Builds.Small}}, "shop": "{{shop}}", "sku": "one" }""",
        "/v1/kit-matches" => $$"""{ "build": {{Builds.Small}}, "shop": "{{shop}}" }""",
        _ => Builds.Small,
    };

    private static async Task<string> Record(CatalogueService service, string key) =>
        (string)(await service.Send(HttpMethod.Post, "/v1/assessments?record=true", key, Builds.Small)).Json["id"]!;

    /// <summary>Without what the caller itself named, and the request's own name.</summary>
    private static string Nameless(Answer answer, string shop, string record) => answer.Text
        .Replace((string)answer.Json["traceId"]!, "")
        .Replace(Excerpt.Of(record), "")
        .Replace($"\\\"{shop}\\\"", "");
}
