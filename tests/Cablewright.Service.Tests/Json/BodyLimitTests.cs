using System.Text;
using Cablewright.Service.Json;
using Microsoft.AspNetCore.Http;

namespace Cablewright.Service.Tests.Json;

public sealed class BodyLimitTests
{
    [Theory]
    [InlineData(ShapeReader.MostBytes, ShapeOutcome.Read)]
    [InlineData(ShapeReader.MostBytes + 1, ShapeOutcome.TooLarge)]
    public async Task The_limit_holds_without_a_content_length(int bytes, ShapeOutcome outcome)
    {
        Shaped<Sample> shaped = await ShapeReader.ReadAsync(new Trickle(Padded(bytes)), SampleJson.Default.Sample);
        Assert.Equal(outcome, shaped.Outcome);
    }

    [Fact]
    public async Task The_limit_holds_when_the_content_length_lies()
    {
        HttpRequest request = Request(Padded(ShapeReader.MostBytes + 1), contentLength: 10);
        Shaped<Sample> shaped = await ShapeReader.ReadAsync(request, SampleJson.Default.Sample);
        Assert.Equal(ShapeOutcome.TooLarge, shaped.Outcome);
        Assert.Equal((ShapeCodes.TooLarge, "at most 262144 bytes"), (shaped.Faults[0].Code, shaped.Faults[0].Accepted));
    }

    [Fact]
    public async Task A_body_announced_too_large_is_not_read_at_all()
    {
        HttpRequest request = Request(Padded(100), contentLength: ShapeReader.MostBytes + 1);
        Assert.Equal(ShapeOutcome.TooLarge, (await ShapeReader.ReadAsync(request, SampleJson.Default.Sample)).Outcome);
        Assert.Equal(0, request.Body.Position);
    }

    [Fact]
    public async Task Reading_stops_soon_after_the_limit()
    {
        MemoryStream endless = new(Padded(10_000_000));
        await ShapeReader.ReadAsync(endless, SampleJson.Default.Sample);
        Assert.InRange(endless.Position, ShapeReader.MostBytes, 3 * ShapeReader.MostBytes);
    }

    [Theory]
    [InlineData("application/json", true)]
    [InlineData("Application/JSON; charset=UTF-8", true)]
    [InlineData("application/json; charset=\"utf-8\"", true)]
    [InlineData("application/vnd.example+json", true)]
    [InlineData("application/json; charset=utf-16", false)]
    [InlineData("text/json", false)]
    [InlineData("application/x-ndjson", false)]
    [InlineData("application/x-www-form-urlencoded", false)]
    [InlineData("*/*", false)]
    [InlineData("nonsense", false)]
    [InlineData("", false)]
    [InlineData(null, false)]
    public void Only_JSON_announces_JSON(string? contentType, bool announces) =>
        Assert.Equal(announces, JsonMediaType.Announces(contentType));

    private static byte[] Padded(int bytes) => Encoding.UTF8.GetBytes("{\"vehicle\":{}}".PadRight(bytes));

    private static HttpRequest Request(byte[] body, long contentLength)
    {
        HttpRequest request = new DefaultHttpContext().Request;
        request.Body = new MemoryStream(body);
        request.ContentLength = contentLength;
        return request;
    }

    /// <summary>A stream that gives a few bytes at a time, as a slow network does, and knows no length.</summary>
    private sealed class Trickle(byte[] bytes) : MemoryStream(bytes)
    {
        public override bool CanSeek => false;

        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) =>
            base.ReadAsync(buffer[..Math.Min(buffer.Length, 1460)], cancellationToken);
    }
}
