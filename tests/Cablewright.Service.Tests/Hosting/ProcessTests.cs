using System.Net.Sockets;
using System.Text;
using System.Text.Json.Nodes;
using Cablewright.Contract;
using Cablewright.Service.Tests.Examples;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Hosting;

public class ProcessTests(ServiceProcess process, ServiceFixture service)
    : IClassFixture<ServiceProcess>, IClassFixture<ServiceFixture>
{
    [Fact]
    public void It_says_where_it_listens_and_where_its_pages_are()
    {
        Assert.Contains(process.Announcements, line => line.EndsWith(process.Address, StringComparison.Ordinal));
        Assert.Contains(process.Announcements, line => line.EndsWith(process.Address + "/docs", StringComparison.Ordinal));
        Assert.Contains(
            process.Announcements, line => line.EndsWith(process.Address + "/v1/assessments", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Another_process_gives_the_same_bytes()
    {
        foreach (string name in ExampleFiles.Names)
        {
            string request = ExampleFiles.Request(name);
            Assert.Equal((await service.Post(request)).Body, (await process.Post(request, "bytes")).Body);
        }
    }

    [Fact]
    public async Task The_log_has_one_line_a_request_and_nothing_that_was_sent()
    {
        const string Secret = "tell-nobody";
        string body = Builds.With(build =>
        {
            build["name"] = Secret;
            build["runs"]![0]!["id"] = Secret;
            build["runs"]![0]!["length"] = "12 " + Secret;
        });
        await process.Post(body, "log-of-post");
        using var get = new HttpRequestMessage(HttpMethod.Get, $"/{Secret}?{Secret}={Secret}")
        {
            Headers = { { "X-Correlation-Id", "log-of-get" } },
        };
        (await process.Client.SendAsync(get)).Dispose();

        JsonNode post = JsonNode.Parse(Assert.Single(await process.LogOf("log-of-post")))!;
        Assert.Equal(
            ("POST", "/v1/assessments", 422), ((string)post["Method"]!, (string)post["Route"]!, (int)post["StatusCode"]!));
        Assert.Equal("log-of-post", (string)post["CorrelationId"]!);
        string missed = Assert.Single(await process.LogOf("log-of-get"));
        Assert.Equal(404, (int)JsonNode.Parse(missed)!["StatusCode"]!);
        Assert.DoesNotContain(Secret, post.ToJsonString() + missed);
    }

    [Fact]
    public async Task The_server_does_not_say_what_it_is()
    {
        using HttpResponseMessage response = await process.Client.GetAsync("/health/live");
        Assert.False(response.Headers.Contains("Server"));
        Assert.Equal("nosniff", response.Headers.GetValues("X-Content-Type-Options").Single());
    }

    [Fact]
    public async Task A_body_sent_in_chunks_is_measured_too()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/assessments")
        {
            Content = new StreamContent(new MemoryStream(new byte[ContractLimits.BodyBytes + 1])),
        };
        request.Content.Headers.ContentType = new("application/json");
        request.Headers.TransferEncodingChunked = true;
        using HttpResponseMessage response = await process.Client.SendAsync(request);
        ProblemAssertions.IsProblem(await Answer.Of(response), 413, "body.too-large");
    }

    /// <summary>A chunk whose length is no number, RFC 9112, 7.1.</summary>
    [Fact]
    public async Task A_body_that_breaks_the_rules_of_HTTP_is_a_problem()
    {
        var address = new Uri(process.Address);
        using var socket = new TcpClient(address.Host, address.Port);
        await socket.GetStream().WriteAsync(Encoding.ASCII.GetBytes(
            $"POST /v1/assessments HTTP/1.1\r\nHost: {address.Authority}\r\nContent-Type: application/json\r\n"
            + "Transfer-Encoding: chunked\r\n\r\nnonsense\r\n"));
        using var reader = new StreamReader(socket.GetStream());
        string answer = await reader.ReadToEndAsync();
        Assert.StartsWith("HTTP/1.1 400", answer);
        Assert.Contains("\"code\":\"request.refused\"", answer);
    }
}
