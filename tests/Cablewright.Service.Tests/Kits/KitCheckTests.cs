using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Kits;

public class KitCheckTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const string Address = "/v1/kit-checks";

    [Fact]
    public async Task The_published_example_is_answered_and_both_are_valid()
    {
        JsonNode asked = await Example();
        Assert.Empty(ContractSchemas.Faults("KitCheck", asked));
        Answer answer = await service.PostTo(Address, asked.ToJsonString());
        Assert.Equal(200, answer.Status);
        Assert.Empty(ContractSchemas.Faults("KitAnswer", answer.Json));
        Assert.Equal("serves", (string)answer.Json["verdict"]!);
        Assert.Equal("1/0 AWG", (string)answer.Json["trial"]!["runs"]![0]!["conductor"]!["size"]!);
        Assert.DoesNotContain("null", answer.Text);
    }

    /// <summary>The trial has the very id and figures that the same build has when it is posted for assessment.</summary>
    [Fact]
    public async Task The_trial_is_an_assessment_like_any_other()
    {
        Answer answer = await service.PostTo(Address, (await Example()).ToJsonString());
        Assert.Matches("^asm_[0-9a-f]{64}$", (string)answer.Json["trial"]!["id"]!);
        Assert.NotEmpty(answer.Json["needs"]!.AsArray());
        Assert.All(
            answer.Json["needs"]!.AsArray().Where(line => line!["cutLengthMetres"] is not null),
            line => Assert.True((double)line!["cutLengthMetres"]! > (double)line["lengthMetres"]!));
    }

    [Fact]
    public async Task A_thin_cable_is_told_with_its_remedy()
    {
        JsonNode asked = await Example();
        asked["kit"]!["parts"]![0]!["size"] = "10 AWG";
        Answer answer = await service.PostTo(Address, asked.ToJsonString());
        Assert.Equal("does-not-serve", (string)answer.Json["verdict"]!);
        JsonNode thin = answer.Json["findings"]!.AsArray().Single(finding => (string)finding!["code"]! == "kit.wire-thin")!;
        Assert.Equal("/kit/parts/0/size", (string)thin["pointer"]!);
        Assert.Contains("AWG", (string)thin["remedy"]!);
    }

    [Fact]
    public async Task Faults_of_build_and_kit_are_told_together()
    {
        JsonNode asked = await Example();
        asked["build"]!["runs"]![0]!["length"] = "500 m";
        asked["kit"]!["parts"]![0]!.AsObject().Remove("size");
        asked["kit"]!.AsObject().Remove("currency");
        asked["kit"]!["parts"]![2]!["rating"] = "9999 A";
        Answer answer = await service.PostTo(Address, asked.ToJsonString());
        Assert.Equal(422, answer.Status);
        Assert.Equal(
            [
                ("/build/runs/0/length", "quantity.too-large"),
                ("/kit/currency", "currency.missing"),
                ("/kit/parts/0/size", "part.member-missing"),
                ("/kit/parts/2/rating", "quantity.too-large"),
            ],
            answer.Faults.Order());
    }

    [Theory]
    [InlineData("currency", "\"euro\"", 422)]
    [InlineData("parts", "[]", 422)]
    [InlineData("price", "-1", 422)]
    [InlineData("price", "\"10 EUR\"", 400)]
    [InlineData("colour", "\"red\"", 400)]
    [InlineData("sku", "\"two words\"", 422)]
    public async Task A_broken_kit_is_refused(string member, string value, int status)
    {
        JsonNode asked = await Example();
        asked["kit"]![member] = JsonNode.Parse(value);
        Answer answer = await service.PostTo(Address, asked.ToJsonString());
        Assert.Equal(status, answer.Status);
        Assert.Empty(ContractSchemas.Faults("Problem", answer.Json));
        Assert.NotEmpty(ContractSchemas.Faults("KitCheck", asked));
    }

    private async Task<JsonNode> Example()
    {
        JsonNode contract = (await service.Get("/openapi/v1.json")).Json;
        return contract["paths"]![Address]!["post"]!["requestBody"]!["content"]!["application/json"]!["example"]!.DeepClone();
    }
}
