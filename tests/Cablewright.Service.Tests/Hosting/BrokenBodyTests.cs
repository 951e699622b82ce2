using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Batches;
using Cablewright.Service.Tests.Support;
using static Cablewright.Service.Tests.Hosting.RawConnection;

namespace Cablewright.Service.Tests.Hosting;

/// <summary>Bodies that break the rules of HTTP (RFC 9112), over a bare socket; the log stays free of warnings.</summary>
public class BrokenBodyTests(ServiceProcess process) : IClassFixture<ServiceProcess>
{
    private const string Chunked = "Transfer-Encoding: chunked";
    private const string Lines = "application/x-ndjson";

    private static readonly string Build = JsonNode.Parse(Builds.Small)!.ToJsonString();

    public static TheoryData<string, string> Calls => new()
    {
        { "/v1/assessments", "application/json" },
        { "/v1/assessments/comparisons", "application/json" },
        { "/v1/assessments/batch", "application/json" },
        { "/v1/assessments/batch", Lines },
        { "/v1/conductor-audits", "application/json" },
        { "/v1/kit-checks", "application/json" },
    };

    /// <summary>A size of 2³¹ and more is one that a 32-bit number does not hold.</summary>
    [Theory]
    [MemberData(nameof(Calls))]
    public async Task A_chunk_that_breaks_the_rules_is_refused(string path, string contentType)
    {
        foreach (string chunk in new[]
        {
            "80000000\r\n", "FFFFFFFF\r\n", "FFFFFFFFFFFFFFFFFF\r\n", "nonsense\r\n", "-1\r\n", "\r\n", "2\r\n{}XX",
        })
        {
            Assert.Equal(
                (400, "request.refused"), await SendForProblem(process.Address, Post(path, Chunked, chunk, contentType)));
        }

        Assert.Empty(process.Troubles);
    }

    /// <summary>Whoever hangs up amid a body is not there to be answered.</summary>
    [Theory]
    [MemberData(nameof(Calls))]
    public async Task A_body_that_ends_too_soon_is_no_trouble(string path, string contentType)
    {
        foreach ((string header, string rest) in new[] { ("Content-Length: 100", "[{"), (Chunked, "2\r\n[{\r\n"),
            (Chunked, "F\r\n[{") })
        {
            string name = $"ends-{Guid.NewGuid():n}";
            await SendAndHangUp(process.Address, Post(path, $"X-Correlation-Id: {name}\r\n{header}", rest, contentType));
            Assert.Single(await process.LogOf(name));
        }

        Assert.Empty(process.Troubles);
    }

    /// <summary>Less than the 240 bytes a second that the server asks for.</summary>
    [Fact]
    public async Task A_body_that_does_not_come_is_given_up()
    {
        Assert.Equal(
            (408, "request.timed-out"),
            await SendForProblem(process.Address, Post("/v1/assessments", "Content-Length: 100", "{")));
        Assert.Empty(process.Troubles);
    }

    [Fact]
    public async Task A_batch_that_breaks_once_it_is_answered_ends_without_its_end()
    {
        using (var talk = new Conversation(process.Address, "broken-amid"))
        {
            await talk.Say(Build);
            Assert.Contains("\"status\":200", await talk.Hear());
            await talk.SayRaw("80000000\r\n");
            await Assert.ThrowsAnyAsync<IOException>(talk.Hear);
        }

        Assert.Single(await process.LogOf("broken-amid"));
        Assert.Empty(process.Troubles);
    }

    [Fact]
    public async Task A_caller_who_hangs_up_is_no_trouble()
    {
        using (var talk = new Conversation(process.Address, "gone"))
        {
            await talk.Say(Build);
            await talk.Hear();
            await talk.Say(Build);
        }

        Assert.Single(await process.LogOf("gone"));
        Assert.Empty(process.Troubles);
    }

    /// <summary>The contract names them: the server answers before any code of the service sees the request.</summary>
    [Theory]
    [InlineData(400, "NONSENSE\r\n\r\n")]
    [InlineData(400, "GET / HTTP/1.1\r\nHost: a\r\nno header\r\n\r\n")]
    [InlineData(400, "POST / HTTP/1.1\r\nHost: a\r\nContent-Length: -1\r\n\r\n")]
    [InlineData(414, "GET /{9000} HTTP/1.1\r\nHost: a\r\n\r\n")]
    [InlineData(431, "GET / HTTP/1.1\r\nHost: a\r\nX: {40000}\r\n\r\n")]
    [InlineData(505, "GET / HTTP/9.9\r\nHost: a\r\n\r\n")]
    public async Task What_the_server_cannot_read_it_answers_with_an_empty_body(int status, string text)
    {
        string filled = text.Replace("{9000}", new string('x', 9_000)).Replace("{40000}", new string('x', 40_000));
        Assert.Equal((status, ""), await Send(process.Address, filled));
        JsonNode contract = JsonNode.Parse(await process.Client.GetStringAsync("/openapi/v1.json"))!;
        Assert.Contains($"`{status}`", ((string)contract["info"]!["description"]!).Split("<details>")[0]);
        Assert.Empty(process.Troubles);
    }
}
