using Cablewright.Service.Tests.Support;
using static Cablewright.Service.Tests.Hosting.RawConnection;

namespace Cablewright.Service.Tests.Hosting;

public sealed class BodyBudgetTests
{
    private const int Arrays = 4;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>Each of which 300 KB have come takes 512 KB; of 1 MB arrays have 768 KB.</summary>
    [Fact]
    public async Task Arrays_that_are_held_in_memory_leave_room_for_single_builds()
    {
        string half = Post("/v1/assessments/batch", "Content-Length: 400000", "[" + new string(' ', 300_000));
        var process = new ServiceProcess();
        process.Environment["Cablewright__BodyMegabytes"] = "1";
        await process.InitializeAsync();
        try
        {
            Task<(int Status, string Head)>[] held =
                [.. Enumerable.Range(0, Arrays).Select(_ => SendForHead(process.Address, half))];
            (int status, string head) = await await Task.WhenAny(held).WaitAsync(Patience);
            Assert.Equal(503, status);
            Assert.Contains("\r\nRetry-After: 2\r\n", head);
            Assert.Equal(200, (await process.Post(Builds.Small, "small")).Status);
        }
        finally
        {
            await process.DisposeAsync();
        }
    }
}
