using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Documents;

public class RequestExampleTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task The_example_in_the_contract_can_be_posted_as_it_stands()
    {
        JsonNode contract = JsonNode.Parse(await File.ReadAllTextAsync(Repository.Contract))!;
        JsonNode example =
            contract["paths"]!["/v1/assessments"]!["post"]!["requestBody"]!["content"]!["application/json"]!["example"]!;
        Assert.Empty(ContractSchemas.Faults("Build", example));
        Assert.Equal(200, (await service.Post(example.ToJsonString())).Status);
    }
}
