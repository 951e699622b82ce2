using System.Text.Json.Nodes;
using Cablewright.Service.Problems;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Documents;

/// <summary>
/// The committed contract is the service's own. <c>dotnet build src/Cablewright.Service -t:RefreshContract</c> writes it anew.
/// </summary>
public class ContractFileTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private static readonly JsonNode Contract = JsonNode.Parse(File.ReadAllText(Repository.Contract))!;

    private static readonly string[] AlwaysPossible = ["400", "405", "406", "500"];

    public static TheoryData<string> Shapes => [.. Contract["components"]!["schemas"]!.AsObject().Select(shape => shape.Key)];

    [Fact]
    public async Task The_committed_contract_is_the_one_that_is_served()
    {
        Answer served = await service.Get("/openapi/v1.json");
        Assert.Equal(200, served.Status);
        string committed = await File.ReadAllTextAsync(Repository.Contract);
        Assert.True(
            committed == served.Text,
            "openapi/cablewright.v1.json is not what the service publishes; run: "
            + "dotnet build src/Cablewright.Service -t:RefreshContract");
    }

    [Fact]
    public void It_is_OpenAPI_3_1() => Assert.StartsWith("3.1.", (string)Contract["openapi"]!);

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Every_member_has_a_description_and_an_example(string name)
    {
        JsonNode shape = Contract["components"]!["schemas"]![name]!;
        Assert.False(string.IsNullOrWhiteSpace((string?)shape["description"]));
        foreach ((string member, JsonNode? schema) in shape["properties"]?.AsObject() ?? [])
        {
            JsonNode leaf = schema!["items"] ?? schema;
            Assert.False(string.IsNullOrWhiteSpace((string?)schema["description"]), $"{name}.{member} has no description");
            Assert.True(
                (leaf["oneOf"]?[0] ?? leaf)["$ref"] is not null || leaf["examples"] is JsonArray { Count: > 0 },
                $"{name}.{member} has no example");
            if (TypesOf(leaf).Any(type => type is "number" or "integer"))
                Assert.True(leaf["x-unit"] is not null, $"{name}.{member} has no unit");
        }
    }

    [Theory]
    [InlineData("Build")]
    [InlineData("Vehicle")]
    [InlineData("Run")]
    [InlineData("Fuse")]
    [InlineData("OutputPoint")]
    [InlineData("Converter")]
    [InlineData("Capacitor")]
    [InlineData("Polarisation")]
    [InlineData("Isolator")]
    [InlineData("BenchReport")]
    [InlineData("StrandMeasurement")]
    [InlineData("ResistanceMeasurement")]
    [InlineData("MassMeasurement")]
    [InlineData("CableClaim")]
    [InlineData("KitCheck")]
    [InlineData("Kit")]
    [InlineData("KitPart")]
    public void A_request_holds_nothing_unknown(string name) =>
        Assert.False((bool)Contract["components"]!["schemas"]![name]!["additionalProperties"]!);

    [Fact]
    public void Every_operation_says_all_that_a_caller_needs()
    {
        foreach (JsonNode operation in Operations())
        {
            Assert.Matches("^[a-z][A-Za-z]+$", (string)operation["operationId"]!);
            Assert.NotEmpty(operation["tags"]!.AsArray());
            Assert.False(string.IsNullOrWhiteSpace((string?)operation["summary"]));
            Assert.False(string.IsNullOrWhiteSpace((string?)operation["description"]));
            JsonObject responses = operation["responses"]!.AsObject();
            Assert.Empty(AlwaysPossible.Except(responses.Select(response => response.Key)));
            Assert.Contains(responses, response => response.Key[0] == '2');
            foreach ((string status, JsonNode? response) in responses.Where(response => response.Key[0] is '4' or '5'))
            {
                Assert.Equal(
                    "#/components/schemas/Problem",
                    (string)response!["content"]!["application/problem+json"]!["schema"]!["$ref"]!);
                Assert.Contains("`", (string)response["description"]!);
            }
        }

        Assert.Equal(
            Operations().Count(), Operations().Select(operation => (string)operation["operationId"]!).Distinct().Count());
    }

    [Fact]
    public void Every_code_is_listed()
    {
        string overview = (string)Contract["info"]!["description"]!;
        string[] codes =
        [
            .. ProblemKinds.All.Select(kind => kind.Code),
            .. FaultKinds.All.Select(kind => kind.Code),
            .. Engine.Designs.FindingCodes.All.Select(code => code.Code),
        ];
        Assert.NotEmpty(Engine.Designs.FindingCodes.All);
        Assert.All(codes, code => Assert.Contains($"`{code}`", overview));
    }

    [Fact]
    public async Task The_pages_that_show_it_load_nothing_from_elsewhere()
    {
        Answer page = await service.Get("/docs/index.html");
        Assert.Equal(200, page.Status);
        Assert.DoesNotContain("http://", page.Text);
        Assert.DoesNotContain("https://", page.Text);
        string script = (await service.Get("/docs/index.js")).Text;
        Assert.Contains("/openapi/v1.json", script);
        Assert.Contains("\"validatorUrl\":\"none\"", script);
        Assert.Equal(301, (await service.Get("/docs")).Status);
    }

    /// <summary>The JSON types that a schema allows: a list where <c>null</c> is one of them.</summary>
    private static IEnumerable<string> TypesOf(JsonNode schema) => schema["type"] switch
    {
        JsonArray types => types.Select(type => (string)type!),
        { } type => [(string)type!],
        null => [],
    };

    private static IEnumerable<JsonNode> Operations() =>
        Contract["paths"]!.AsObject().SelectMany(path => path.Value!.AsObject().Select(operation => operation.Value!));
}
