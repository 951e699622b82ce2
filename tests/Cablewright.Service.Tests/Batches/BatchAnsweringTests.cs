using System.Text;
using System.Text.Json.Nodes;
using Cablewright.Service.Batches;
using Cablewright.Service.Problems;
using Cablewright.Service.Tests.Support;
using Serilog;

namespace Cablewright.Service.Tests.Batches;

public class BatchAnsweringTests
{
    private static readonly ProblemOrigin Origin = new("the-request", "https://cablewright.example/docs/problems/");

    private static readonly BuildText Line = BuildText.OnLine(4, Encoding.UTF8.GetBytes(Builds.Small));

    [Fact]
    public async Task A_failure_of_the_service_concerns_one_build_and_is_told_without_its_reason()
    {
        using var log = new LoggerConfiguration().CreateLogger();
        var answering = new BatchAnswering((_, _) => throw new InvalidOperationException("inside"), Origin, log);
        JsonNode answer = JsonNode.Parse(await answering.Answer(Line, CancellationToken.None))!;
        Assert.Equal((4, 500), ((int)answer["line"]!, (int)answer["status"]!));
        Assert.Equal(
            ("service.failed", "the-request"), ((string)answer["problem"]!["code"]!, (string)answer["problem"]!["traceId"]!));
        Assert.DoesNotContain("inside", answer.ToJsonString());
    }

    [Fact]
    public async Task A_caller_who_is_gone_is_no_failure()
    {
        using var stop = new CancellationTokenSource();
        using var log = new LoggerConfiguration().CreateLogger();
        var answering = new BatchAnswering(
            async (_, cancellation) =>
            {
                await stop.CancelAsync();
                throw new OperationCanceledException(cancellation);
            },
            Origin,
            log);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => answering.Answer(Line, stop.Token));
    }
}
