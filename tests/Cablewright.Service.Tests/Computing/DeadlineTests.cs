using System.Text.Json.Nodes;
using Cablewright.Service.Kits;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Computing;

/// <summary>A service by whose clock the time of every computation is up at once.</summary>
public sealed class HastyService : ServiceFixture
{
    public HastyService() => Clock = new HastyClock();
}

/// <summary>The deadline reaches the engine from every call that computes.</summary>
public class DeadlineTests(HastyService service) : IClassFixture<HastyService>
{
    [Fact]
    public async Task Every_call_that_computes_ends_at_the_deadline()
    {
        (string, string) key = ("Authorization", $"Bearer {await service.Key("demo")}");
        Answer[] answers =
        [
            await service.Post(Builds.Small),
            await service.Get("/v1/assessments/quick?ratedOutput=1000+W&length=16+ft"),
            await service.PostTo("/v1/assessments/comparisons", $$"""{ "builds": [ {{Builds.Small}}, {{Builds.Small}} ] }"""),
            await service.PostTo("/v1/kit-checks", PostKitCheck.Operation.Body!.Example()!.ToJsonString()),
            await service.PostTo("/v1/kit-matches", PostKitMatch.Operation.Body!.Example()!.ToJsonString(), headers: key),
        ];
        Assert.All(answers, answer =>
        {
            ProblemAssertions.IsProblem(answer, 503, "computation.too-long");
            Assert.Equal("10", answer.Headers["Retry-After"]);
        });
    }

    [Fact]
    public async Task In_a_batch_each_line_has_a_deadline_of_its_own()
    {
        string build = JsonNode.Parse(Builds.Small)!.ToJsonString();
        Answer answer = await service.PostBatch($"{build}\n{{}}\n{build}\n", "application/x-ndjson");
        Assert.Equal([503, 400, 503], answer.Lines.Select(line => (int)line["status"]!));
        Assert.Equal("computation.too-long", (string)answer.Lines[0]["problem"]!["code"]!);
    }
}
