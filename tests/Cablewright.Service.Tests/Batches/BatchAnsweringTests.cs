using System.Text.Json.Nodes;
using Cablewright.Service.Batches;
using Serilog;

namespace Cablewright.Service.Tests.Batches;

public class BatchAnsweringTests
{
    [Fact]
    public void A_failure_of_the_service_concerns_one_build_and_is_told_without_its_reason()
    {
        using var log = new LoggerConfiguration().CreateLogger();
        var answering = new BatchAnswering(_ => throw new InvalidOperationException("inside"), "the-request", log);
        JsonNode answer = JsonNode.Parse(answering.Answer(BuildText.OnLine(4, "{}"u8.ToArray())))!;
        Assert.Equal((4, 500), ((int)answer["line"]!, (int)answer["status"]!));
        Assert.Equal(
            ("service.failed", "the-request"), ((string)answer["problem"]!["code"]!, (string)answer["problem"]!["traceId"]!));
        Assert.DoesNotContain("inside", answer.ToJsonString());
    }
}
