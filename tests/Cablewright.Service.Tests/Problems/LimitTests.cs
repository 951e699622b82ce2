using System.Text.Json.Nodes;
using Cablewright.Contract;
using Cablewright.Engine.Builds;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Problems;

public class LimitTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const string WithoutKey = "items.too-many-without-key";

    /// <summary>The sizes are stated twice, since contract and engine do not know each other.</summary>
    [Fact]
    public void What_needs_no_key_is_what_the_engine_budgets_as_usual() => Assert.Equal(
        (WorkBudgets.UsualAmplifiers, WorkBudgets.UsualRuns, WorkBudgets.UsualBatteries),
        (ContractLimits.AmplifiersWithoutKey, ContractLimits.RunsWithoutKey, ContractLimits.BatteriesWithoutKey));

    [Theory]
    [InlineData(0, 200)]
    [InlineData(1, 413)]
    public async Task A_body_holds_256_KB_and_not_a_byte_more(int over, int status)
    {
        string padding = new(' ', ContractLimits.BodyBytes + over - Builds.Small.Length);
        Answer answer = await service.Post(Builds.Small + padding);
        Assert.Equal(status, answer.Status);
        if (status != 200) ProblemAssertions.IsProblem(answer, 413, "body.too-large");
    }

    [Theory]
    [InlineData(16, "value.wrong-type")]
    [InlineData(17, "json.too-deep")]
    public async Task A_body_nests_16_deep_and_no_deeper(int depth, string code)
    {
        Answer answer = await service.Post(new string('[', depth) + new string(']', depth));
        ProblemAssertions.IsProblem(answer, 400, "request.not-understood");
        Assert.Contains(answer.Faults, fault => fault.Code == code);
    }

    [Theory]
    [InlineData("/amplifiers", ContractLimits.Amplifiers)]
    [InlineData("/runs", ContractLimits.Runs)]
    [InlineData("/vehicle/batteries", ContractLimits.Batteries)]
    [InlineData("/vehicle/capacitors", ContractLimits.Capacitors)]
    [InlineData("/vehicle/alternator/outputPoints", ContractLimits.OutputPoints)]
    [InlineData("/vehicle/batteries/0/polarisation", ContractLimits.Polarisations)]
    [InlineData("/junctions", ContractLimits.Junctions)]
    [InlineData("/sizing/sizes", ContractLimits.Sizes)]
    public async Task A_list_holds_as_many_as_the_contract_says(string pointer, int most)
    {
        Assert.DoesNotContain((pointer, "items.too-many"), (await PostList(pointer, most)).Faults);
        Answer tooMany = await PostList(pointer, most + 1);
        ProblemAssertions.IsProblem(tooMany, 422, "build.faulty");
        Assert.Contains((pointer, "items.too-many"), tooMany.Faults);
        Assert.Contains(
            $"{most}",
            tooMany.Json["errors"]!.AsArray().First(error => (string)error!["pointer"]! == pointer)!["accepted"]!.ToString());
    }

    [Theory]
    [InlineData("/amplifiers", ContractLimits.AmplifiersWithoutKey, ContractLimits.Amplifiers)]
    [InlineData("/runs", ContractLimits.RunsWithoutKey, ContractLimits.Runs)]
    [InlineData("/vehicle/batteries", ContractLimits.BatteriesWithoutKey, ContractLimits.Batteries)]
    public async Task Without_a_key_it_holds_fewer(string pointer, int most, int withKey)
    {
        Assert.DoesNotContain((pointer, WithoutKey), (await PostList(pointer, most)).Faults);
        Answer tooMany = await PostList(pointer, most + 1);
        ProblemAssertions.IsProblem(tooMany, 422, "build.faulty");
        JsonNode fault = tooMany.Json["errors"]!.AsArray().Single(error => (string)error!["pointer"]! == pointer)!;
        Assert.Equal(
            (WithoutKey, $"at most {most}; with a shop's key at most {withKey}"),
            ((string)fault["code"]!, (string)fault["accepted"]!));
        string key = await service.Key("limits");
        Assert.DoesNotContain(
            (pointer, WithoutKey), (await PostList(pointer, withKey, ("Authorization", $"Bearer {key}"))).Faults);
    }

    [Theory]
    [InlineData("/v1/assessments/comparisons", """{ "builds": [ {0}, {0} ] }""", "/builds/1/runs")]
    [InlineData("/v1/kit-checks", """{ "build": {0}, "kit": { "name": "a", "parts": [ { "kind": "ties" } ] } }""", "/build/runs")]
    public async Task A_build_within_a_request_holds_no_more(string address, string around, string pointer)
    {
        Answer answer = await service.PostTo(address, around.Replace("{0}", Of("/runs", ContractLimits.RunsWithoutKey + 1)));
        Assert.Contains((pointer, WithoutKey), answer.Faults);
    }

    [Fact]
    public async Task A_line_of_a_batch_holds_no_more()
    {
        string line = JsonNode.Parse(Of("/runs", ContractLimits.RunsWithoutKey + 1))!.ToJsonString();
        JsonNode answer = Assert.Single((await service.PostBatch(line, "application/x-ndjson")).Lines);
        Assert.Contains(WithoutKey, answer["problem"]!["errors"]!.AsArray().Select(error => (string)error!["code"]!));
    }

    [Fact]
    public async Task At_most_100_faults_of_the_content_are_listed()
    {
        Answer answer = await service.Post(Builds.With(build => build["runs"] = new JsonArray([.. Enumerable.Range(0, 90).Select(
            _ => JsonNode.Parse("""{ "id": "a b", "from": "starter", "to": "bass", "length": "0 m" }"""))])));
        ProblemAssertions.IsProblem(answer, 422, "build.faulty");
        (string, string)[] faults = [.. answer.Faults];
        Assert.Equal(101, faults.Length);
        Assert.Equal(("", "errors.more"), faults[^1]);
    }

    [Theory]
    [InlineData("/amplifiers")]
    [InlineData("/runs")]
    public async Task A_build_has_at_least_one(string pointer) =>
        Assert.Contains((pointer, "items.too-few"), (await PostList(pointer, 0)).Faults);

    [Theory]
    [InlineData(40, false)]
    [InlineData(41, true)]
    public async Task An_id_has_at_most_40_characters(int length, bool refused)
    {
        Answer answer = await service.Post(Builds.With(build => build["runs"]![0]!["id"] = new string('r', length)));
        Assert.Equal(refused ? 422 : 200, answer.Status);
    }

    /// <summary>Always refused, since a second unknown ruleset goes with it: the list alone is under test.</summary>
    private Task<Answer> PostList(string pointer, int count, params (string, string)[] headers) =>
        service.Post(Of(pointer, count), headers: headers);

    private static string Of(string pointer, int count) => Builds.With(build =>
    {
        build["ruleset"] = "1999.1";
        JsonArray items = [.. Enumerable.Range(0, count).Select(number => Item(pointer, number))];
        if (pointer == "/vehicle/alternator/outputPoints")
            build["vehicle"]!["alternator"] = new JsonObject { ["outputPoints"] = items };
        else if (pointer == "/vehicle/batteries/0/polarisation") build["vehicle"]!["batteries"]![0]!["polarisation"] = items;
        else if (pointer.StartsWith("/vehicle/")) build["vehicle"]![pointer["/vehicle/".Length..]] = items;
        else if (pointer == "/sizing/sizes") build["sizing"] = new JsonObject { ["sizes"] = items };
        else build[pointer[1..]] = items;
    });

    private static JsonNode Item(string pointer, int number) => pointer switch
    {
        "/sizing/sizes" => JsonValue.Create("4 AWG")!,
        "/runs" => new JsonObject { ["id"] = $"r{number}", ["from"] = "starter", ["to"] = "bass", ["length"] = "3 ft" },
        "/vehicle/capacitors" => new JsonObject { ["at"] = "bass", ["capacitance"] = "1 F" },
        "/vehicle/alternator/outputPoints" => new JsonObject { ["speed"] = $"{1500 + number} rpm", ["current"] = "50 A" },
        "/vehicle/batteries/0/polarisation" => new JsonObject { ["resistance"] = "1 mOhm", ["timeConstant"] = "1 s" },
        "/amplifiers" => new JsonObject { ["id"] = $"a{number}", ["ratedOutput"] = "10 W" },
        _ => new JsonObject { ["id"] = $"x{number}" },
    };
}
