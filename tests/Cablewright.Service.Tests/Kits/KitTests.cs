using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Stores;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Kits;

public class KitTests(CatalogueServices services) : IClassFixture<CatalogueServices>
{
    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_kit_is_made_read_replaced_and_deleted(string store)
    {
        CatalogueService service = services[store];
        string key = (await service.Key("north")).Text;
        const string Address = "/v1/shops/north/kits/AK-4";

        Answer made = await service.Send(HttpMethod.Put, Address, key, SomeKit.Named("first"));
        Assert.Equal((201, Address), (made.Status, made.Headers["Location"]));
        Assert.Empty(ContractSchemas.Faults("Kit", made.Json));
        Assert.Equal("AK-4", (string)made.Json["sku"]!);

        Answer read = await service.Send(HttpMethod.Get, Address, key);
        Assert.Equal(made.Body, read.Body);
        Assert.Equal(made.Headers["ETag"], read.Headers["ETag"]);
        Assert.Equal(made.Headers["Catalogue-Revision"], read.Headers["Catalogue-Revision"]);
        Answer known = await service.Send(HttpMethod.Get, Address, key, null, ("If-None-Match", read.Headers["ETag"]));
        Assert.Equal(304, known.Status);

        Answer replaced = await service.Send(
            HttpMethod.Put, Address, key, SomeKit.Named("second"), ("If-Match", read.Headers["ETag"]));
        Assert.Equal(200, replaced.Status);
        Assert.NotEqual(read.Headers["ETag"], replaced.Headers["ETag"]);
        Assert.True(Revision(replaced) > Revision(read));
        Assert.Equal("second", (string)(await service.Send(HttpMethod.Get, Address, key)).Json["name"]!);

        Assert.Equal(204, (await service.Send(HttpMethod.Delete, Address, key)).Status);
        ProblemAssertions.IsProblem(await service.Send(HttpMethod.Get, Address, key), 404, "resource.not-found");
        ProblemAssertions.IsProblem(await service.Send(HttpMethod.Delete, Address, key), 404, "resource.not-found");
        Assert.Equal(201, (await service.Send(HttpMethod.Put, Address, key, SomeKit.Named("third"))).Status);
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_write_depends_on_the_state_that_was_seen(string store)
    {
        CatalogueService service = services[store];
        string key = (await service.Key("careful")).Text;
        const string Address = "/v1/shops/careful/kits/one";
        Task<Answer> Put(string name, params (string, string)[] headers) =>
            service.Send(HttpMethod.Put, Address, key, SomeKit.Named(name), headers);

        ProblemAssertions.IsProblem(await Put("a", ("If-Match", "*")), 412, "condition.failed");
        Assert.Equal(201, (await Put("a", ("If-None-Match", "*"))).Status);
        ProblemAssertions.IsProblem(await Put("b", ("If-None-Match", "*")), 412, "condition.failed");
        ProblemAssertions.IsProblem(await Put("b"), 428, "condition.missing");
        Assert.Equal(200, (await Put("a")).Status);
        ProblemAssertions.IsProblem(await Put("b", ("If-Match", "\"other\"")), 412, "condition.failed");
        ProblemAssertions.IsProblem(await Put("b", ("If-Match", "no tag")), 412, "condition.failed");
        string tag = (await Put("a")).Headers["ETag"];
        ProblemAssertions.IsProblem(await Put("b", ("If-Match", "W/" + tag)), 412, "condition.failed");
        Assert.Equal(200, (await Put("b", ("If-Match", $"\"other\", {tag}"))).Status);
        ProblemAssertions.IsProblem(
            await service.Send(HttpMethod.Delete, Address, key, null, ("If-Match", tag)), 412, "condition.failed");
        Assert.Equal(204, (await service.Send(HttpMethod.Delete, Address, key, null, ("If-Match", "*"))).Status);
    }

    /// <summary>A caller whose answer was lost cannot know whether its write took place.</summary>
    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_write_can_be_repeated_as_it_was(string store)
    {
        CatalogueService service = services[store];
        string key = (await service.Key("again")).Text;
        const string Address = "/v1/shops/again/kits/one";
        Task<Answer> Put(string name, string condition, string tag) =>
            service.Send(HttpMethod.Put, Address, key, SomeKit.Named(name), (condition, tag));

        string tag = (await Put("a", "If-None-Match", "*")).Headers["ETag"];
        ProblemAssertions.IsProblem(await Put("a", "If-None-Match", "*"), 412, "condition.failed");
        Answer replaced = await Put("b", "If-Match", tag), repeated = await Put("b", "If-Match", tag);
        Assert.Equal((200, 200), (replaced.Status, repeated.Status));
        Assert.Equal(replaced.Headers["Catalogue-Revision"], repeated.Headers["Catalogue-Revision"]);
        ProblemAssertions.IsProblem(await Put("c", "If-Match", tag), 412, "condition.failed");
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task Of_many_who_replace_the_same_state_one_wins(string store)
    {
        CatalogueService service = services[store];
        string key = (await service.Key("race")).Text;
        const string Address = "/v1/shops/race/kits/one";
        string tag = (await service.Send(HttpMethod.Put, Address, key, SomeKit.Named("start"))).Headers["ETag"];
        Answer[] answers = await Task.WhenAll(Enumerable.Range(0, 12).Select(
            number => service.Send(HttpMethod.Put, Address, key, SomeKit.Named($"number {number}"), ("If-Match", tag))));
        Answer won = Assert.Single(answers, answer => answer.Status == 200);
        Assert.All(answers.Where(answer => answer != won), answer => Assert.Equal(412, answer.Status));
        Assert.Equal(won.Body, (await service.Send(HttpMethod.Get, Address, key)).Body);
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_list_is_read_a_page_at_a_time_while_kits_come_and_go(string store)
    {
        CatalogueService service = services[store];
        string key = (await service.Key("pages")).Text;
        const string Address = "/v1/shops/pages/kits";
        string[] numbers = ["A", "B", "C", "D", "a", "b", "c_1", "c-1"];
        foreach (string number in numbers)
            await service.Send(HttpMethod.Put, $"{Address}/{number}", key, SomeKit.Named(number));

        List<string> seen = [];
        for (string? after = ""; after is not null;)
        {
            Answer page = await service.Send(HttpMethod.Get, $"{Address}?limit=3{after}", key);
            Assert.Equal(200, page.Status);
            Assert.Empty(ContractSchemas.Faults("KitPage", page.Json));
            Assert.Equal((long)page.Json["revision"]!, Revision(page));
            seen.AddRange(page.Json["kits"]!.AsArray().Select(kit => (string)kit!["sku"]!));
            if (seen.Count == 3) await service.Send(HttpMethod.Delete, $"{Address}/{seen[^1]}", key);
            after = page.Json["next"] is JsonNode next ? $"&after={next}" : null;
        }

        Assert.Equal(numbers.Order(StringComparer.Ordinal), seen);
        Assert.Equal(numbers.Length - 1, (await service.Send(HttpMethod.Get, Address, key)).Json["kits"]!.AsArray().Count);
    }

    [Theory]
    [InlineData("?limit=0", "/limit", "parameter.unreadable")]
    [InlineData("?limit=201", "/limit", "parameter.unreadable")]
    [InlineData("?limit=two", "/limit", "parameter.unreadable")]
    [InlineData("?after=%2F%2F", "/after", "parameter.unreadable")]
    [InlineData("?limit=1&limit=2", "/limit", "parameter.repeated")]
    [InlineData("?limt=1", "/limt", "parameter.unknown")]
    public async Task A_list_refuses_what_it_does_not_know(string query, string pointer, string code)
    {
        CatalogueService service = services[Store.Sqlite];
        Answer answer = await service.Send(HttpMethod.Get, "/v1/shops/asked/kits" + query, (await service.Key("asked")).Text);
        ProblemAssertions.IsProblem(answer, 400, "request.not-understood");
        Assert.Equal([(pointer, code)], answer.Faults);
    }

    [Fact]
    public async Task Every_fault_of_a_kit_is_listed_at_once()
    {
        CatalogueService service = services[Store.Sqlite];
        string key = (await service.Key("faulty")).Text;
        Answer answer = await service.Send(HttpMethod.Put, "/v1/shops/faulty/kits/one", key, """
            {
              "sku": "two", "name": "kit", "price": -1,
              "parts": [
                { "kind": "power-wire", "size": "thick" }, { "kind": "fuse", "ways": 4 },
                { "kind": "ties", "count": 0, "strandCount": 7 }
              ]
            }
            """);
        ProblemAssertions.IsProblem(answer, 422, "request.faulty");
        Assert.Equal(
            [
                ("/currency", "currency.missing"),
                ("/parts/0/length", "part.member-missing"),
                ("/parts/0/size", "size.unreadable"),
                ("/parts/1/rating", "part.member-missing"),
                ("/parts/1/ways", "part.member-foreign"),
                ("/parts/2/count", "number.out-of-range"),
                ("/parts/2/strandCount", "part.member-foreign"),
                ("/price", "number.out-of-range"),
                ("/sku", "kit.sku-differs"),
            ],
            answer.Faults.OrderBy(fault => fault.Pointer, StringComparer.Ordinal));
        ProblemAssertions.IsProblem(
            await service.Send(HttpMethod.Put, "/v1/shops/faulty/kits/two%20words", key, SomeKit.Named("kit")), 422,
            "request.faulty");
        ProblemAssertions.IsProblem(
            await service.Send(HttpMethod.Put, "/v1/shops/faulty/kits/one", key, """{ "nam": "kit" }"""),
            400,
            "request.not-understood");
    }

    [Fact]
    public async Task The_example_in_the_contract_can_be_put_as_it_stands()
    {
        JsonNode contract = JsonNode.Parse(await File.ReadAllTextAsync(Repository.Contract))!;
        JsonNode example = contract["paths"]!["/v1/shops/{shop}/kits/{sku}"]!["put"]!["requestBody"]!["content"]![
            "application/json"]!["example"]!;
        Assert.Empty(ContractSchemas.Faults("Kit", example));
        CatalogueService service = services[Store.Sqlite];
        Answer answer = await service.Send(
            HttpMethod.Put, $"/v1/shops/example/kits/{example["sku"]}", (await service.Key("example")).Text,
            example.ToJsonString());
        Assert.Equal(201, answer.Status);
    }

    private static long Revision(Answer answer) => long.Parse(answer.Headers["Catalogue-Revision"]);
}
