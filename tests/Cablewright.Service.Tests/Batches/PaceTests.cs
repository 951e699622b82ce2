using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Hosting;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Batches;

/// <summary>A batch is no way round the limit for callers without a key.</summary>
public sealed class PaceTests
{
    private const int PerMinute = 3;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Builds_beyond_the_limit_wait_their_turn()
    {
        string build = JsonNode.Parse(Builds.Small)!.ToJsonString();
        var process = new ServiceProcess();
        process.Environment["Cablewright__AnonymousRequestsPerMinute"] = $"{PerMinute}";
        await process.InitializeAsync();
        try
        {
            using var talk = new Conversation(process.Address, "pace");
            for (int line = 0; line <= PerMinute; line++) await talk.Say(build);
            for (int line = 0; line < PerMinute; line++)
                Assert.Contains("\"status\":200", await talk.Hear().WaitAsync(Patience));
            Task<string?> next = talk.Hear();
            await Assert.ThrowsAsync<TimeoutException>(() => next.WaitAsync(TimeSpan.FromSeconds(2)));
            Assert.Contains("\"status\":200", await next.WaitAsync(Patience));
        }
        finally
        {
            await process.DisposeAsync();
        }
    }
}
