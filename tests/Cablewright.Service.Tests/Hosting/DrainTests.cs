using System.Net;
using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Batches;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Hosting;

/// <summary>How the service stops when it is told to (SIGTERM).</summary>
public sealed class DrainTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task It_is_not_ready_first_then_closes_and_finishes_what_it_began()
    {
        string build = JsonNode.Parse(Builds.Small)!.ToJsonString();
        var process = new ServiceProcess();
        process.Environment["Cablewright__DrainSeconds"] = "5";
        await process.InitializeAsync();
        try
        {
            while (await Status(process, "/health/ready") != HttpStatusCode.OK) await Task.Delay(20);
            using var talk = new Conversation(process.Address, "drain");
            await talk.Say(build);
            Assert.Contains("\"status\":200", await talk.Hear().WaitAsync(Patience));

            process.Terminate();
            while (await Status(process, "/health/ready") == HttpStatusCode.OK) await Task.Delay(20);
            Assert.Equal(HttpStatusCode.ServiceUnavailable, await Status(process, "/health/ready"));
            Assert.Equal(HttpStatusCode.OK, await Status(process, "/health/live"));
            Assert.Equal(200, (await process.Post(build, "while-draining")).Status);

            while (await Listens(process)) await Task.Delay(50);
            await talk.Say(build);
            Assert.Contains("\"status\":200", await talk.Hear().WaitAsync(Patience));
            await talk.Finish();
            Assert.Null(await talk.Hear().WaitAsync(Patience));
            Assert.Equal(0, await process.ExitCode());
        }
        finally
        {
            await process.DisposeAsync();
        }
    }

    [Fact]
    public async Task A_liveness_check_is_answered_before_anything_else_is_done_for_it()
    {
        var process = new ServiceProcess();
        await process.InitializeAsync();
        try
        {
            foreach (string name in new[] { "live", "ready" })
            {
                using var request = new HttpRequestMessage(HttpMethod.Get, $"/health/{name}")
                {
                    Headers = { { "X-Correlation-Id", $"ask-{name}" } },
                };
                (await process.Client.SendAsync(request)).Dispose();
            }

            Assert.Single(await process.LogOf("ask-ready"));
            Assert.Empty(process.LogSoFar("ask-live"));
        }
        finally
        {
            await process.DisposeAsync();
        }
    }

    private static async Task<HttpStatusCode> Status(ServiceProcess process, string address)
    {
        using HttpResponseMessage answer = await process.Client.GetAsync(address);
        return answer.StatusCode;
    }

    private static async Task<bool> Listens(ServiceProcess process)
    {
        using var fresh = new HttpClient();
        try
        {
            (await fresh.GetAsync(process.Address + "/health/live")).Dispose();
            return true;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }
}
