using System.Net;
using System.Text;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Batches;

/// <summary>Alone, since memory is counted for the whole process.</summary>
[CollectionDefinition(nameof(MemoryTests), DisableParallelization = true)]
public class Alone;

[Collection(nameof(MemoryTests))]
public class MemoryTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const int Warm = 2_000;
    private const int Count = 20_000;
    private const int LineBytes = 2_000;

    /// <summary>What is kept of each line would show: 18,000 lines are 36 MB.</summary>
    [Fact]
    public async Task What_is_held_does_not_grow_with_the_count_of_lines()
    {
        using HttpClient client = service.CreateClient();
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/assessments/batch") { Content = new ManyLines() };
        using HttpResponseMessage response = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead);
        using var answers = new StreamReader(await response.Content.ReadAsStreamAsync());
        long before = 0;
        for (int heard = 1; heard <= Count; heard++)
        {
            Assert.NotNull(await answers.ReadLineAsync());
            if (heard == Warm) before = GC.GetTotalMemory(forceFullCollection: true);
        }

        long growth = GC.GetTotalMemory(forceFullCollection: true) - before;
        Assert.Null(await answers.ReadLineAsync());
        Assert.True(growth < (Count - Warm) * LineBytes / 8, $"{growth} bytes more are held");
    }

    private sealed class ManyLines : HttpContent
    {
        private static readonly byte[] Line = Encoding.UTF8.GetBytes("{}".PadRight(LineBytes - 1) + "\n");

        public ManyLines() => Headers.ContentType = new("application/x-ndjson");

        protected override async Task SerializeToStreamAsync(Stream stream, TransportContext? context)
        {
            for (int sent = 0; sent < Count; sent++) await stream.WriteAsync(Line);
        }

        protected override bool TryComputeLength(out long length)
        {
            length = 0;
            return false;
        }
    }
}
