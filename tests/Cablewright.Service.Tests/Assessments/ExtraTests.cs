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

    /// <summary>4.10 a metre is 1.24968 a foot (0.3048 m), whatever length the price is stated for.</summary>
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
            };
        }))).Json;
        Assert.Equal("4 AWG", (string)answer["runs"]![0]!["conductor"]!["size"]!);
        Assert.Equal(4.10 * 12 * 0.3048, (double)answer["sizing"]!["cost"]!, 0.0001);
        Assert.Equal("EUR", (string)answer["sizing"]!["currency"]!);
    }
}
