using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Stores;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Kits;

/// <summary>Kits that a shop keeps here, held against builds.</summary>
public class ShopKitTests(CatalogueServices services) : IClassFixture<CatalogueServices>
{
    private const string Checks = "/v1/kit-checks";
    private const string Matches = "/v1/kit-matches";

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_kept_kit_is_checked_as_it_is_when_it_is_sent(string store)
    {
        CatalogueService service = services[store];
        string key = (await service.Key("checks")).Text;
        JsonNode sent = await ExampleOf(service, Checks);
        Answer put = await Put(service, key, "checks", sent["kit"]!, "AK-150");
        JsonNode named = new JsonObject
        {
            ["build"] = sent["build"]!.DeepClone(),
            ["shop"] = "checks",
            ["sku"] = "AK-150",
        };
        Assert.Empty(ContractSchemas.Faults("KitCheck", named));

        Answer byNumber = await service.Send(HttpMethod.Post, Checks, key, named.ToJsonString());
        Answer inline = await service.Send(HttpMethod.Post, Checks, null, sent.ToJsonString());
        Assert.Equal((200, 200), (byNumber.Status, inline.Status));
        Assert.Empty(ContractSchemas.Faults("KitAnswer", byNumber.Json));
        Assert.Equal(put.Headers["Catalogue-Revision"], byNumber.Headers["Catalogue-Revision"]);
        Assert.Equal(put.Headers["Catalogue-Revision"], byNumber.Json["revision"]!.ToJsonString());
        Assert.False(inline.Headers.ContainsKey("Catalogue-Revision"));
        JsonObject kept = byNumber.Json.AsObject();
        kept.Remove("revision");
        Assert.True(JsonNode.DeepEquals(inline.Json, kept));
    }

    [Theory]
    [OnSqlite]
    public async Task A_check_names_one_kit(string store)
    {
        CatalogueService service = services[store];
        string key = (await service.Key("names")).Text;
        JsonNode sent = await ExampleOf(service, Checks);
        async Task<Answer> Ask(Action<JsonObject> change)
        {
            JsonObject asked = sent.DeepClone().AsObject();
            change(asked);
            return await service.Send(HttpMethod.Post, Checks, key, asked.ToJsonString());
        }

        Answer both = await Ask(asked => asked["sku"] = "one");
        Assert.Equal([("/kit", "kit.twice")], both.Faults);
        Answer none = await Ask(asked => asked.Remove("kit"));
        Assert.Equal([("", "kit.missing")], none.Faults);
        Answer half = await Ask(asked => (asked["shop"], _) = ("names", asked.Remove("kit")));
        Assert.Equal([("", "kit.missing")], half.Faults);
        Answer gone = await Ask(asked => (asked["shop"], asked["sku"], _) = ("names", "gone", asked.Remove("kit")));
        Assert.Equal([("/sku", "kit.sku-unknown")], gone.Faults);
        Assert.All([both, none, half, gone], answer => ProblemAssertions.IsProblem(answer, 422, "request.faulty"));
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_shop_s_kits_that_serve_come_first_cheapest_first_page_by_page(string store)
    {
        CatalogueService service = services[store];
        string shop = "matches" + store.ToLowerInvariant(), key = (await service.Key(shop)).Text;
        JsonNode example = (await ExampleOf(service, Checks))["kit"]!;
        (string Sku, double? Price, string Gauge)[] kits =
            [("dear", 200, "1/0 AWG"), ("cheap", 90, "1/0 AWG"), ("unpriced", null, "1/0 AWG"), ("thin", 20, "10 AWG")];
        foreach ((string sku, double? price, string gauge) in kits)
        {
            JsonObject kit = example.DeepClone().AsObject();
            if (price is null) kit.Remove("price");
            else kit["price"] = price;
            kit["parts"]![0]!["size"] = gauge;
            await Put(service, key, shop, kit, sku);
        }

        JsonObject asked = (await ExampleOf(service, Matches)).AsObject();
        asked["shop"] = shop;
        Assert.Empty(ContractSchemas.Faults("KitMatchRequest", asked));
        Answer all = await service.Send(HttpMethod.Post, Matches, key, asked.ToJsonString());
        Assert.Equal(200, all.Status);
        Assert.Empty(ContractSchemas.Faults("KitMatches", all.Json));
        Assert.Equal(["cheap", "dear", "unpriced", "thin"], Skus(all));
        Assert.Equal((3, 0, 1, 0),
            (Number(all, "serving"), Number(all, "servingWithChange"), Number(all, "notServing"), Number(all, "untried")));
        Assert.Contains(
            all.Json["kits"]![3]!["findings"]!.AsArray(), finding => (string)finding!["code"]! == "kit.wire-thin");
        Assert.Equal(all.Headers["Catalogue-Revision"], all.Json["revision"]!.ToJsonString());

        List<string> paged = [];
        asked["limit"] = 3;
        for (JsonNode? next = ""; next is not null;)
        {
            Answer page = await service.Send(HttpMethod.Post, Matches, key, asked.ToJsonString());
            paged.AddRange(Skus(page));
            next = page.Json["next"];
            asked["after"] = next?.DeepClone();
        }

        Assert.Equal(Skus(all), paged);
    }

    [Theory]
    [OnSqlite]
    public async Task A_match_tells_every_fault(string store)
    {
        CatalogueService service = services[store];
        string key = (await service.Key("faults")).Text;
        JsonObject asked = (await ExampleOf(service, Matches)).AsObject();
        asked["shop"] = "faults";
        asked["limit"] = 0;
        asked["after"] = "bm9uZQ";
        asked["build"]!["runs"]![0]!["length"] = "500 m";
        Answer answer = await service.Send(HttpMethod.Post, Matches, key, asked.ToJsonString());
        ProblemAssertions.IsProblem(answer, 422, "request.faulty");
        Assert.Equal(
            [
                ("/after", "kit.cursor-unknown"), ("/build/runs/0/length", "quantity.too-large"),
                ("/limit", "number.out-of-range"),
            ],
            answer.Faults.Order());
    }

    [Fact]
    public async Task A_shop_without_kits_has_none_that_serve()
    {
        CatalogueService service = services[Store.Sqlite];
        string key = (await service.Key("empty")).Text;
        JsonObject asked = (await ExampleOf(service, Matches)).AsObject();
        asked["shop"] = "empty";
        Answer answer = await service.Send(HttpMethod.Post, Matches, key, asked.ToJsonString());
        Assert.Equal(200, answer.Status);
        Assert.Empty(Skus(answer));
        Assert.NotEmpty(answer.Json["needs"]!.AsArray());
    }

    private static int Number(Answer answer, string member) => (int)answer.Json[member]!;

    private static string[] Skus(Answer answer) => [.. answer.Json["kits"]!.AsArray().Select(kit => (string)kit!["sku"]!)];

    private static Task<Answer> Put(CatalogueService service, string key, string shop, JsonNode kit, string sku)
    {
        JsonObject body = kit.DeepClone().AsObject();
        body["sku"] = sku;
        return service.Send(HttpMethod.Put, $"/v1/shops/{shop}/kits/{sku}", key, body.ToJsonString());
    }

    private static async Task<JsonNode> ExampleOf(CatalogueService service, string address)
    {
        JsonNode contract = (await service.Send(HttpMethod.Get, "/openapi/v1.json", null)).Json;
        return contract["paths"]![address]!["post"]!["requestBody"]!["content"]!["application/json"]!["example"]!.DeepClone();
    }
}
