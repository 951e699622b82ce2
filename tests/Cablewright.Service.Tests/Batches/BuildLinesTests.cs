using System.IO.Pipelines;
using System.Text;
using Cablewright.Service.Batches;

namespace Cablewright.Service.Tests.Batches;

public class BuildLinesTests
{
    [Fact]
    public async Task Lines_are_the_same_however_they_are_cut_on_the_way()
    {
        const string Text = "\ufeff{\"a\":1}\r\n\n{\"b\":\"é\"}\n \t \r\n17\r\nlast";
        string[] expected = ["1 {\"a\":1}", "3 {\"b\":\"é\"}", "5 17", "6 last"];
        for (int size = 1; size <= Text.Length + 4; size++)
            Assert.Equal(expected, await Read(Encoding.UTF8.GetBytes(Text), size));
    }

    [Theory]
    [InlineData(1_000)]
    [InlineData(262_144)]
    [InlineData(262_145)]
    [InlineData(262_146)]
    [InlineData(4_000_000)]
    public async Task A_line_that_is_too_large_is_told_once_and_the_next_one_is_read(int size)
    {
        byte[] text = Encoding.UTF8.GetBytes($"1\n{new string('x', 1_000_000)}\r\n\n4\n{new string('x', 262_145)}");
        Assert.Equal(["1 1", "2 too large", "4 4", "5 too large"], await Read(text, size));
    }

    private static async Task<IReadOnlyList<string>> Read(byte[] text, int size)
    {
        var pipe = new Pipe(new PipeOptions(pauseWriterThreshold: 0));
        var lines = new BuildLines(pipe.Reader);
        Task<List<string>> reading = lines.Read().Select(Told).ToListAsync().AsTask();
        foreach (byte[] piece in text.Chunk(size)) await pipe.Writer.WriteAsync(piece);
        await pipe.Writer.CompleteAsync();
        return await reading;
    }

    private static string Told(BuildText build) =>
        $"{build.Line} {(build.IsTooLarge ? "too large" : Encoding.UTF8.GetString(build.Utf8.Span))}";
}
