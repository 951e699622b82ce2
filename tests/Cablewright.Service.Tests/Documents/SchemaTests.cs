using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Examples;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Documents;

/// <summary>
/// Real requests and answers against the committed schemas, and broken ones too: a schema must tell the two apart.
/// </summary>
public class SchemaTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    public static TheoryData<string> Examples => [.. ExampleFiles.Names];

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task An_example_and_its_answer_are_valid(string name)
    {
        Assert.Empty(ContractSchemas.Faults("Build", JsonNode.Parse(ExampleFiles.Request(name))));
        Assert.Empty(ContractSchemas.Faults("Assessment", (await service.Post(ExampleFiles.Request(name))).Json));
    }

    [Theory]
    [InlineData("/v1/assessments/quick?ratedOutput=1000%20W&length=16%20ft", "Assessment")]
    [InlineData("/v1/reference/conductors", "ConductorReference")]
    [InlineData("/v1/reference/fuses", "FuseReference")]
    [InlineData("/v1/reference/batteries", "BatteryReference")]
    [InlineData("/v1/reference/sources", "SourceReference")]
    [InlineData("/v1/rulesets", "RulesetList")]
    [InlineData("/v1/rulesets/2026.2", "RulesetDetail")]
    [InlineData("/health/live", "HealthReport")]
    [InlineData("/health/ready", "HealthReport")]
    [InlineData("/nowhere", "Problem")]
    [InlineData("/v1/assessments", "Problem")]
    [InlineData("/v1/assessments/quick?lenght=16", "Problem")]
    public async Task An_answer_is_valid(string address, string shape) =>
        Assert.Empty(ContractSchemas.Faults(shape, (await service.Get(address)).Json));

    [Theory]
    [InlineData("")]
    [InlineData("[1,2")]
    [InlineData("{\"runs\":[{\"length\":16}],\"units\":null}")]
    [InlineData("{\"amplifiers\":[],\"runs\":[]}")]
    public async Task A_problem_is_valid(string body) =>
        Assert.Empty(ContractSchemas.Faults("Problem", (await service.Post(body)).Json));

    [Theory]
    [InlineData("16 ft")]
    [InlineData("4.9 m")]
    [InlineData(" 490cm ")]
    [InlineData("16 ft 6 in")]
    public void A_length_that_is_read_is_valid(string length) =>
        AssertBuild(build => build["runs"]![0]!["length"] = length, isValid: true);

    [Theory]
    [InlineData("4 AWG")]
    [InlineData("AWG 4")]
    [InlineData("0 awg")]
    [InlineData("00 AWG")]
    [InlineData("25 mm2")]
    [InlineData("2.5mm²")]
    [InlineData("2.5 sq mm")]
    public void A_size_that_is_read_is_valid(string size) =>
        AssertBuild(build => build["runs"]![0]!["conductor"]!["size"] = size, isValid: true);

    [Theory]
    [InlineData("/amplifiers", "null")]
    [InlineData("/amplifiers/0/id", "null")]
    [InlineData("/runs/0/from", "null")]
    [InlineData("/units", "\"imperial\"")]
    [InlineData("/unit", "\"us\"")]
    [InlineData("/amplifiers", "[]")]
    [InlineData("/amplifiers/0/id", "\"two words\"")]
    [InlineData("/amplifiers/0/ratedOutput", "500")]
    [InlineData("/amplifiers/0/ratedOutput", "\"500\"")]
    [InlineData("/amplifiers/0/ratedOutput", "\"500 V\"")]
    [InlineData("/amplifiers/0/ratedOutput", "\"1,000 W\"")]
    [InlineData("/amplifiers/0/amplifierClass", "\"d\"")]
    [InlineData("/runs/0/lenght", "\"3 ft\"")]
    [InlineData("/runs/0/length", "\"12 ft 3\"")]
    [InlineData("/runs/0/length", "\"12ft3in\"")]
    [InlineData("/runs/0/conductor/size", "\"4\"")]
    [InlineData("/runs/0/conductor/material", "0")]
    [InlineData("/runs/0/conductor/count", "9")]
    [InlineData("/runs/0/conductor/count", "1.5")]
    [InlineData("/runs/0/fuse/fitted", "\"no\"")]
    [InlineData("/limits", "{\"maxDrop\":\"3 A\"}")]
    [InlineData("/limits", "{\"engineOffTime\":\"2 hours\"}")]
    [InlineData("/vehicle/alternator", "{\"pulleyRatio\":6.5}")]
    [InlineData("/vehicle/alternator", "{\"idleSpeed\":\"800 A\"}")]
    [InlineData("/vehicle/alternator", "{\"outputPoints\":[]}")]
    [InlineData("/vehicle/converter", "{\"ratedPower\":1800}")]
    [InlineData("/vehicle/capacitors", "[{\"at\":\"bass\"}]")]
    [InlineData("/vehicle/capacitors", "[{\"at\":\"bass\",\"capacitance\":\"1 f\"}]")]
    [InlineData("/vehicle/batteries/0/peukertExponent", "\"1.2\"")]
    [InlineData("/vehicle/batteries/0/polarisation", "[{\"resistance\":\"3 mOhm\"}]")]
    [InlineData("/runs/0/isolator", "{}")]
    [InlineData("/runs/0/isolator", "{\"kind\":\"switch\"}")]
    [InlineData("/sizing", "{\"sizes\":[\"4 AWG\",\"fat\"]}")]
    public async Task A_broken_request_is_invalid_and_refused(string pointer, string value)
    {
        void Break(JsonNode build)
        {
            string[] path = pointer.Split('/')[1..];
            JsonNode at = path[..^1].Aggregate(
                build, (node, step) => int.TryParse(step, out int index) ? node[index]! : node[step]!);
            at[path[^1]] = JsonNode.Parse(value);
        }

        AssertBuild(Break, isValid: false);
        Assert.True((await service.Post(Builds.With(Break))).Status is 400 or 422);
    }

    [Theory]
    [InlineData("amplifiers")]
    [InlineData("runs")]
    public void A_request_without_a_required_member_is_invalid(string member) =>
        AssertBuild(build => build.AsObject().Remove(member), isValid: false);

    private static void AssertBuild(Action<JsonNode> change, bool isValid)
    {
        IReadOnlyList<string> faults = ContractSchemas.Faults("Build", JsonNode.Parse(Builds.With(change)));
        Assert.True(faults.Count == 0 == isValid, string.Join('\n', faults));
    }
}
