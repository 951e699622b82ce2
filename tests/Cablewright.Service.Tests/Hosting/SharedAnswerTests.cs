using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Hosting;

/// <summary>
/// An answer that a cache may give to others (<c>public</c>, RFC 9111, 5.2.2.9) says nothing of the request that it was made for.
/// </summary>
public class SharedAnswerTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const string CorrelationId = "X-Correlation-Id";
    private const string Quick = "/v1/assessments/quick?ratedOutput=1000+W&length=16+ft";

    private static readonly JsonNode Contract = JsonNode.Parse(File.ReadAllText(Repository.Contract))!;

    [Theory]
    [InlineData(Quick)]
    [InlineData("/v1/reference/conductors")]
    [InlineData("/v1/reference/fuses")]
    [InlineData("/v1/reference/batteries")]
    [InlineData("/v1/reference/sources")]
    [InlineData("/v1/rulesets")]
    [InlineData("/v1/rulesets/2026.2")]
    [InlineData("/openapi/v1.json")]
    public async Task A_shared_answer_names_no_request(string address)
    {
        Answer first = await service.Get(address, (CorrelationId, "mine"));
        Answer again = await service.Get(address, (CorrelationId, "yours"), ("If-None-Match", first.Headers["ETag"]));
        Assert.Equal((200, 304), (first.Status, again.Status));
        foreach (Answer answer in new[] { first, again })
        {
            Assert.StartsWith("public", answer.Headers["Cache-Control"]);
            Assert.False(answer.Headers.ContainsKey(CorrelationId));
            Assert.DoesNotContain("mine", answer.Text.Split('"'));
        }
    }

    [Fact]
    public async Task Any_other_answer_names_its_request()
    {
        string key = $"Bearer {await service.Key("shared")}";
        foreach (Answer answer in new[]
        {
            await service.Post(Builds.Small, headers: (CorrelationId, "mine")),
            await service.Get("/v1/shops/shared/kits", (CorrelationId, "mine"), ("Authorization", key)),
            await service.Get(Quick + "&lenght=1", (CorrelationId, "mine")),
            await service.Get("/v1/rulesets/none", (CorrelationId, "mine")),
        })
        {
            Assert.Equal("mine", answer.Headers[CorrelationId]);
            Assert.DoesNotContain("public", answer.Headers["Cache-Control"]);
        }
    }

    /// <summary>Each answer that can be told to be the same has its tag, its 304 and the header that asks for it.</summary>
    [Fact]
    public void The_contract_says_so()
    {
        JsonNode[] reads = [.. Contract["paths"]!.AsObject().Select(path => path.Value!["get"]).OfType<JsonNode>()];
        JsonNode[] tagged = [.. reads.Where(read => HasHeader(read, "200", "ETag"))];
        Assert.NotEmpty(tagged);
        Assert.All(tagged, read =>
        {
            Assert.True(HasHeader(read, "304", "ETag"));
            Assert.Contains(read["parameters"]!.AsArray(), parameter => (string)parameter!["name"]! == "If-None-Match");
            Assert.Equal(read["security"] is not null, HasHeader(read, "200", CorrelationId));
            Assert.Equal(read["security"] is not null, HasHeader(read, "304", CorrelationId));
            Assert.True(HasHeader(read, "400", CorrelationId));
        });
        Assert.All(reads.Except(tagged), read => Assert.Null(read["responses"]!["304"]));
    }

    private static bool HasHeader(JsonNode operation, string status, string name) =>
        operation["responses"]![status]!["headers"]?[name] is not null;
}
