using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Audits;

public class ConductorAuditTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const string Address = "/v1/conductor-audits";

    private const string UnderGauge = """
        {
          "units": "metric",
          "claim": { "size": "4 AWG", "material": "copper" },
          "strands": { "count": 1568, "countUncertainty": "0.5 %", "diameter": "0.12 mm", "diameterUncertainty": "0.001 mm" },
          "resistance": { "resistance": "4.96 mOhm", "length": "5 m", "temperature": "20 C", "temperatureUncertainty": "1 K" },
          "mass": { "mass": "32.2 g", "massUncertainty": "0.2 g", "length": "20 cm", "lengthUncertainty": "1 mm" }
        }
        """;

    /// <summary>1568 strands of 0.12 mm are 17.73 mm², 83.8 % of 4 AWG (21.15 mm²): area by its definition.</summary>
    [Fact]
    public async Task A_cable_under_its_label_is_found_out()
    {
        Answer answer = await service.PostTo(Address, UnderGauge);
        Assert.Equal(200, answer.Status);
        Assert.Equal("undersized", (string)answer.Json["verdict"]!);
        JsonNode strands = answer.Json["areas"]!.AsArray().Single(area => (string)area!["way"]! == "strands")!;
        Assert.Equal(1568 * Math.PI / 4 * 0.12 * 0.12, (double)strands["areaMm2"]!["estimate"]!, 0.001);
        Assert.Equal(16.2, (double)answer.Json["shortfallPercent"]!["estimate"]!, 0.6);
        Assert.Equal("5 AWG", (string)answer.Json["soldAsGauge"]!);
        Assert.True((bool)answer.Json["canBeCopper"]!);
        Assert.Contains(answer.Json["findings"]!.AsArray(), finding => (string)finding!["code"]! == "cable.undersized");
        Assert.NotEmpty(answer.Json["safetyNotes"]!.AsArray());
        Assert.DoesNotContain("null", answer.Text);
    }

    [Fact]
    public async Task Request_and_answer_are_valid()
    {
        Assert.Empty(ContractSchemas.Faults("BenchReport", JsonNode.Parse(UnderGauge)));
        Assert.Empty(ContractSchemas.Faults("ConductorAudit", (await service.PostTo(Address, UnderGauge)).Json));
        JsonNode least = JsonNode.Parse("""{ "mass": { "mass": "3 oz", "length": "1 ft" } }""")!;
        Assert.Empty(ContractSchemas.Faults("BenchReport", least));
        Answer answer = await service.PostTo(Address, least.ToJsonString());
        Assert.Equal(200, answer.Status);
        Assert.Empty(ContractSchemas.Faults("ConductorAudit", answer.Json));
        Assert.Null(answer.Json["verdict"]);
    }

    [Fact]
    public async Task The_published_example_is_answered()
    {
        JsonNode contract = (await service.Get("/openapi/v1.json")).Json;
        JsonNode body = contract["paths"]![Address]!["post"]!["requestBody"]!["content"]!["application/json"]!;
        Answer answer = await service.PostTo(Address, body["example"]!.ToJsonString());
        Assert.Equal(200, answer.Status);
    }

    [Theory]
    [InlineData("""{}""", "", "audit.nothing-measured")]
    [InlineData("""{ "ruleset": "1999.1", "mass": { "mass": "3 oz", "length": "1 ft" } }""", "/ruleset", "ruleset.unknown")]
    [InlineData(
        """{ "claim": { "size": "fat" }, "mass": { "mass": "3 oz", "length": "1 ft" } }""", "/claim/size", "size.unreadable")]
    [InlineData("""{ "mass": { "mass": "3 V", "length": "1 ft" } }""", "/mass/mass", "quantity.wrong-unit")]
    [InlineData("""{ "strands": { "count": 0, "diameter": "0.1 mm" } }""", "/strands/count", "number.out-of-range")]
    public async Task A_faulty_report_is_told_all_its_faults(string body, string pointer, string code)
    {
        Answer answer = await service.PostTo(Address, body);
        Assert.Equal(422, answer.Status);
        Assert.Contains((pointer, code), answer.Faults);
        Assert.Empty(ContractSchemas.Faults("Problem", answer.Json));
    }

    [Theory]
    [InlineData("""{ "mass": { "mass": 3, "length": "1 ft" } }""")]
    [InlineData("""{ "weight": { "mass": "3 oz", "length": "1 ft" } }""")]
    [InlineData("""{ "mass": { "length": "1 ft" } }""")]
    public async Task A_report_of_another_shape_is_refused(string body) =>
        Assert.Equal(400, (await service.PostTo(Address, body)).Status);
}
