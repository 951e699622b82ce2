using System.Net;
using System.Text.Json.Nodes;
using Cablewright.Service.Computing;
using Cablewright.Service.Tests.Support;
using Microsoft.AspNetCore.Http;

namespace Cablewright.Service.Tests.Hosting;

/// <summary>
/// Whose address counts behind proxies: each request from a new address passes the limit, a second from the same does not.
/// </summary>
public class ProxyTests
{
    private const string Proxy = "10.1.2.3";
    private const string OtherProxy = "10.9.9.9";
    private const string Stranger = "203.0.113.9";

    [Fact]
    public async Task Callers_behind_a_trusted_proxy_are_told_apart()
    {
        await using ServiceFixture service = await Start("10.0.0.0/8, fd00::/8");
        Assert.Equal(200, await Ask(service, Proxy, "198.51.100.1"));
        Assert.Equal(429, await Ask(service, Proxy, "198.51.100.1"));
        Assert.Equal(200, await Ask(service, Proxy, "198.51.100.2"));
        Assert.Equal(200, await Ask(service, "fd00::1", "198.51.100.3"));
        Assert.Equal(429, await Ask(service, "::ffff:" + Proxy, "198.51.100.3"));
    }

    /// <summary>What a caller claims stands to the left of what the proxy saw.</summary>
    [Fact]
    public async Task A_caller_cannot_claim_another_address_through_the_proxy()
    {
        await using ServiceFixture service = await Start("10.0.0.0/8");
        Assert.Equal(200, await Ask(service, Proxy, "198.51.100.1"));
        Assert.Equal(429, await Ask(service, Proxy, "192.0.2.77, 198.51.100.1"));
    }

    [Fact]
    public async Task A_chain_of_trusted_proxies_leads_to_the_caller()
    {
        await using ServiceFixture service = await Start("10.0.0.0/8");
        Assert.Equal(200, await Ask(service, Proxy, $"198.51.100.1, {OtherProxy}"));
        Assert.Equal(200, await Ask(service, Proxy, $"198.51.100.2, {OtherProxy}"));
        Assert.Equal(429, await Ask(service, OtherProxy, $"198.51.100.1, {Proxy}"));
    }

    [Theory]
    [InlineData("10.0.0.0/8")]
    [InlineData("")]
    public async Task A_stranger_is_not_believed(string trusted)
    {
        await using ServiceFixture service = await Start(trusted);
        Assert.Equal(200, await Ask(service, Stranger, "198.51.100.1"));
        Assert.Equal(429, await Ask(service, Stranger, "198.51.100.2"));
    }

    /// <summary>The proxy takes the path before the service's off, and says what it took.</summary>
    [Theory]
    [InlineData(Proxy, "https://api.example/wiring")]
    [InlineData(Stranger, "http://inside")]
    public async Task What_leads_on_works_behind_a_path_if_the_proxy_is_trusted(string from, string address)
    {
        await using ServiceFixture service = await Start("10.0.0.0/8");
        HttpContext problem = await Forwarded(service, from, "198.51.100.1", "/v1/nothing");
        using var body = new StreamReader(problem.Response.Body);
        JsonNode told = JsonNode.Parse(await body.ReadToEndAsync())!;
        Assert.Equal($"{address}/docs/problems/resource.not-found", (string)told["type"]!);
    }

    private static Task<HttpContext> Forwarded(ServiceFixture service, string from, string caller, string path) =>
        service.Server.SendAsync(context =>
        {
            context.Connection.RemoteIpAddress = IPAddress.Parse(from);
            context.Request.Method = HttpMethods.Get;
            context.Request.Scheme = "http";
            context.Request.Host = new HostString("inside");
            context.Request.Path = path;
            context.Request.Headers["X-Forwarded-For"] = caller;
            context.Request.Headers["X-Forwarded-Proto"] = "https";
            context.Request.Headers["X-Forwarded-Host"] = "api.example";
            context.Request.Headers["X-Forwarded-Prefix"] = "/wiring";
        });

    /// <summary>With a limit of one request a minute for each address.</summary>
    private static async Task<ServiceFixture> Start(string trusted)
    {
        var service = new ServiceFixture();
        service.Settings["Cablewright:AnonymousWorkPerMinute"] = $"{WorkBuckets.EachRequest}";
        service.Settings["Cablewright:TrustedProxies"] = trusted;
        await service.InitializeAsync();
        return service;
    }

    private static async Task<int> Ask(ServiceFixture service, string from, string forwardedFor)
    {
        HttpContext answered = await service.Server.SendAsync(context =>
        {
            context.Connection.RemoteIpAddress = IPAddress.Parse(from);
            context.Request.Method = HttpMethods.Get;
            context.Request.Path = "/v1/rulesets";
            context.Request.Headers["X-Forwarded-For"] = forwardedFor;
        });
        return answered.Response.StatusCode;
    }
}
