using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Assessments;

public class ExtraTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task What_is_not_asked_for_is_not_there()
    {
        JsonNode answer = (await service.Post(Builds.Small)).Json;
        Assert.Null(answer["headroom"]);
        Assert.Null(answer["robustness"]);
        Assert.Null(answer["runs"]![0]!["alternatives"]);
    }

    [Fact]
    public async Task What_is_asked_for_is_there()
    {
        JsonNode answer = (await service.Post(Builds.With(build =>
        {
            build["include"] = new JsonArray("alternatives", "headroom", "robustness");
            build["runs"]![0]!["conductor"] = new JsonObject { ["material"] = "copper" };
        }))).Json;
        Assert.True((double)answer["headroom"]!["ratedOutputFactor"]! > 0);
        Assert.Matches("^(pass|caution|fail)$", (string)answer["robustness"]!["verdictAcrossTolerances"]!);
        Assert.NotEmpty(answer["runs"]![0]!["alternatives"]!.AsArray());
        Assert.NotEmpty(answer["sizing"]!["frontier"]!.AsArray());
        Assert.True((bool)answer["sizing"]!["optimal"]!);
    }

    /// <summary>
    /// 4.10 a metre is 1.24968 a foot (0.3048 m), whatever length the price is stated for; a terminal at each end is 1.50.
    /// </summary>
    [Theory]
    [InlineData(4.10, "1 m")]
    [InlineData(1.24968, "1 ft")]
    public async Task A_price_is_for_the_length_that_it_states(double price, string per)
    {
        JsonNode answer = (await service.Post(Builds.With(build =>
        {
            build["runs"]![0]!["conductor"] = new JsonObject { ["material"] = "copper" };
            build["sizing"] = new JsonObject
            {
                ["currency"] = "EUR",
                ["prices"] = new JsonArray(new JsonObject { ["size"] = "4 AWG", ["price"] = price, ["per"] = per }),
                ["terminalPrices"] = new JsonArray(new JsonObject { ["size"] = "4 AWG", ["price"] = 1.5 }),
            };
        }))).Json;
        Assert.Equal("4 AWG", (string)answer["runs"]![0]!["conductor"]!["size"]!);
        Assert.Equal(4.10 * 12 * 0.3048 + 2 * 1.5, (double)answer["sizing"]!["cost"]!, 0.0001);
        Assert.Equal("EUR", (string)answer["sizing"]!["currency"]!);
    }

    /// <summary>
    /// 12 ft and 3 ft with a tenth to spare (common practice, no source) at 4.10 a metre: 15 ft · 0.3048 m/ft · 1.1 · 4.10 =
    /// 20.6197.
    /// </summary>
    [Fact]
    public async Task The_list_of_materials_has_the_stated_prices_and_their_sum()
    {
        JsonNode answer = (await service.Post(Builds.With(build => build["sizing"] = new JsonObject
        {
            ["currency"] = "EUR",
            ["prices"] = new JsonArray(new JsonObject { ["size"] = "4 AWG", ["price"] = 4.10, ["per"] = "1 m" }),
        }))).Json;
        JsonNode[] priced = [.. answer["materials"]!.AsArray().Where(line => line!["price"] is not null)!];
        Assert.Equal([16.4958, 4.12394], priced.Select(line => (double)line["price"]!));
        Assert.All(priced, line => Assert.Equal("EUR", (string)line["currency"]!));
        Assert.Equal(20.6197, (double)answer["materialCost"]!["price"]!);
        Assert.Equal(
            answer["materials"]!.AsArray().Count - priced.Length, (int)answer["materialCost"]!["unpricedLines"]!);
        Assert.Null((await service.Post(Builds.Small)).Json["materialCost"]);
    }
}
