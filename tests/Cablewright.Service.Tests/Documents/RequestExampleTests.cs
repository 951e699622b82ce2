using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Documents;

public class RequestExampleTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task The_example_in_the_contract_can_be_posted_as_it_stands()
    {
        JsonNode example = await ExampleOf("/v1/assessments", "application/json");
        Assert.Empty(ContractSchemas.Faults("Build", example));
        Assert.Equal(200, (await service.Post(example.ToJsonString())).Status);
    }

    [Theory]
    [InlineData("application/json")]
    [InlineData("application/x-ndjson")]
    public async Task So_can_those_of_the_batch(string form)
    {
        JsonNode example = await ExampleOf("/v1/assessments/batch", form);
        Answer answer = await service.PostBatch(example.ToJsonString(), form, ("Accept", "application/x-ndjson"));
        Assert.Equal(200, (int)Assert.Single(answer.Lines)["status"]!);
    }

    private static async Task<JsonNode> ExampleOf(string path, string form)
    {
        JsonNode contract = JsonNode.Parse(await File.ReadAllTextAsync(Repository.Contract))!;
        return contract["paths"]![path]!["post"]!["requestBody"]!["content"]![form]!["example"]!;
    }
}
