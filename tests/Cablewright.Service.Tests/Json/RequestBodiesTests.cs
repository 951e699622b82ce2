using System.Text;
using Cablewright.Contract;
using Cablewright.Service.Hosting;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Microsoft.AspNetCore.Http;

namespace Cablewright.Service.Tests.Json;

public sealed class RequestBodiesTests
{
    private const int Most = ContractLimits.BodyBytes;

    private readonly RequestBodies bodies = new(new LoadSettings());

    [Theory]
    [InlineData(Most, true)]
    [InlineData(Most + 1, false)]
    public async Task The_limit_holds_without_a_content_length(int bytes, bool isRead)
    {
        (WholeBody? body, ProblemAnswer? refusal) = await Read(bodies, new Trickle(Padded(bytes)), null);
        using (body) Assert.Equal(isRead, body?.Bytes.Length == bytes);
        Assert.Null(refusal);
    }

    [Fact]
    public async Task The_limit_holds_when_the_content_length_lies() =>
        Assert.Equal((null, null), await Read(bodies, new MemoryStream(Padded(Most + 1)), contentLength: 10));

    [Fact]
    public async Task A_body_announced_too_large_is_not_read_at_all()
    {
        MemoryStream sent = new(Padded(100));
        Assert.Equal((null, null), await Read(bodies, sent, Most + 1));
        Assert.Equal(0, sent.Position);
    }

    [Fact]
    public async Task Reading_stops_soon_after_the_limit()
    {
        MemoryStream endless = new(Padded(10_000_000));
        await Read(bodies, endless, null);
        Assert.InRange(endless.Position, Most, 3 * Most);
    }

    [Fact]
    public async Task A_body_that_takes_too_long_is_given_up()
    {
        (WholeBody? body, ProblemAnswer? refusal) = await Read(
            new RequestBodies(new LoadSettings { BodySeconds = 0.05 }), new Stalled(), null);
        Assert.Null(body);
        Assert.Equal((408, "request.timed-out"), Told(refusal));
    }

    /// <summary>Of 1 MB three quarters are for bodies that may be large: one of 600 KB leaves no room for another.</summary>
    [Fact]
    public async Task All_bodies_together_take_up_no_more_than_is_set_aside_and_small_ones_have_a_share_of_their_own()
    {
        var narrow = new RequestBodies(new LoadSettings { BodyMegabytes = 1 });
        (WholeBody? held, _) = await Read(narrow, new MemoryStream(Padded(250_000)), null, ContractLimits.BatchBytes);
        (WholeBody? second, _) = await Read(narrow, new MemoryStream(Padded(250_000)), null, ContractLimits.BatchBytes);
        Assert.Equal((503, "service.busy"), Told((await Read(narrow, Large(), null, ContractLimits.BatchBytes)).Refusal));
        using (WholeBody? small = (await Read(narrow, new MemoryStream(Padded(100)), null)).Body) Assert.NotNull(small);
        held!.Dispose();
        second!.Dispose();
        using WholeBody? now = (await Read(narrow, new MemoryStream(Padded(250_000)), null, ContractLimits.BatchBytes)).Body;
        Assert.NotNull(now);
    }

    [Theory]
    [InlineData("read")]
    [InlineData("too large")]
    [InlineData("broken")]
    public async Task Whatever_becomes_of_a_body_its_memory_comes_back(string fate)
    {
        var budget = new BodyBudget(1_000_000);
        Stream sent = fate == "broken" ? new Broken() : new MemoryStream(Padded(fate == "read" ? 50_000 : 150_000));
        try
        {
            using WholeBody? whole = await WholeBody.ReadAsync(sent, 100_000, budget, CancellationToken.None);
            Assert.Equal(fate == "read", whole is not null);
            Assert.Equal(fate == "read", budget.Held > 0);
        }
        catch (IOException)
        {
            Assert.Equal("broken", fate);
        }

        Assert.Equal(0, budget.Held);
    }

    private static Task<(WholeBody? Body, ProblemAnswer? Refusal)> Read(
        RequestBodies bodies, Stream sent, long? contentLength, int most = Most)
    {
        HttpRequest request = new DefaultHttpContext().Request;
        request.Body = sent;
        request.ContentLength = contentLength;
        return bodies.Read(request, most, CancellationToken.None);
    }

    private static MemoryStream Large() => new(Padded(600_000));

    private static byte[] Padded(int bytes) => Encoding.UTF8.GetBytes("{}".PadRight(bytes));

    private static (int, string) Told(ProblemAnswer? problem)
    {
        Contract.Problems.Problem told = problem!.Of(new ProblemOrigin("trace", ""));
        return (told.Status, told.Code);
    }

    /// <summary>A stream that gives a few bytes at a time, as a slow network does, and knows no length.</summary>
    private sealed class Trickle(byte[] bytes) : MemoryStream(bytes)
    {
        public override bool CanSeek => false;

        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) =>
            base.ReadAsync(buffer[..Math.Min(buffer.Length, 1460)], cancellationToken);
    }

    /// <summary>A stream that gives nothing.</summary>
    private sealed class Stalled : MemoryStream
    {
        public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            await Task.Delay(Timeout.Infinite, cancellationToken);
            return 0;
        }
    }

    private sealed class Broken : MemoryStream
    {
        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) =>
            throw new IOException();
    }
}
