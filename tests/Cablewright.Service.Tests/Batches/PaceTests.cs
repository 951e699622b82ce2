using Cablewright.Service.Computing;
using Cablewright.Service.Tests.Hosting;

namespace Cablewright.Service.Tests.Batches;

/// <summary>A batch is no way round the limit for callers without a key.</summary>
public sealed class PaceTests
{
    private const int Lines = 4;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>With what the request itself and the first lines cost; the next is paid for after a fifth of a minute.</summary>
    [Fact]
    public async Task Builds_beyond_the_limit_wait_their_turn()
    {
        var process = new ServiceProcess();
        process.Environment["Cablewright__AnonymousWorkPerMinute"] = $"{(1 + Lines) * WorkBuckets.EachRequest}";
        await process.InitializeAsync();
        try
        {
            using var talk = new Conversation(process.Address, "pace");
            for (int line = 0; line <= Lines; line++) await talk.Say("{}");
            for (int line = 0; line < Lines; line++)
                Assert.Contains("\"status\":400", await talk.Hear().WaitAsync(Patience));
            Task<string?> next = talk.Hear();
            await Assert.ThrowsAsync<TimeoutException>(() => next.WaitAsync(TimeSpan.FromSeconds(2)));
            Assert.Contains("\"status\":400", await next.WaitAsync(Patience));
        }
        finally
        {
            await process.DisposeAsync();
        }
    }
}
