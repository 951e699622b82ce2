using Cablewright.Service.Computing;
using Cablewright.Service.Tests.Computing;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Hosting;

/// <summary>What the service does about callers that it does not know, and about browsers.</summary>
public class CallerTests
{
    private const int Requests = 5;
    private const string Table = "/v1/rulesets";
    private const string Quick = "/v1/assessments/quick?ratedOutput=1000+W&length=16+ft";

    [Fact]
    public async Task Anonymous_callers_may_ask_only_so_often_and_health_always()
    {
        await using ServiceFixture service = await Start(WorkFor(Requests));
        for (int asked = 0; asked < Requests; asked++) Assert.Equal(200, (await service.Get(Table)).Status);
        Answer refused = await service.Get(Table, ("Authorization", "Bearer nonsense"));
        ProblemAssertions.IsProblem(refused, 429, "requests.too-many");
        Assert.InRange(int.Parse(refused.Headers["Retry-After"]), 1, 60 / Requests);
        for (int asked = 0; asked < 3 * Requests; asked++) Assert.Equal(200, (await service.Get("/health/ready")).Status);
    }

    [Fact]
    public async Task Computing_costs_more_than_reading()
    {
        await using ServiceFixture reading = await StartStanding(WorkFor(2));
        Assert.Equal((200, 200), ((await reading.Get(Table)).Status, (await reading.Get(Table)).Status));
        await using ServiceFixture computing = await StartStanding(WorkFor(2));
        Assert.Equal((200, 429), ((await computing.Get(Quick)).Status, (await computing.Get(Table)).Status));
    }

    [Fact]
    public async Task A_browser_may_call_from_the_pages_that_are_listed_and_from_no_other()
    {
        await using ServiceFixture service =
            await Start(("Cablewright:AllowedOrigins", "https://shop.example, https://b.example"));
        Answer listed = await service.Get("/v1/rulesets", ("Origin", "https://shop.example"));
        Assert.Equal("https://shop.example", listed.Headers["Access-Control-Allow-Origin"]);
        Assert.Contains("ETag", listed.Headers["Access-Control-Expose-Headers"]);
        Answer preflight = await service.Send(
            new HttpRequestMessage(HttpMethod.Options, "/v1/shops/demo/kits/one"),
            ("Origin", "https://b.example"), ("Access-Control-Request-Method", "PUT"),
            ("Access-Control-Request-Headers", "authorization,if-match,traceparent,tracestate"));
        Assert.Equal(204, preflight.Status);
        Assert.Contains("PUT", preflight.Headers["Access-Control-Allow-Methods"]);
        string[] accepted = preflight.Headers["Access-Control-Allow-Headers"].ToLowerInvariant().Split([',', ' ']);
        Assert.Empty(((string[])["authorization", "if-match", "traceparent", "tracestate"]).Except(accepted));
        Answer other = await service.Get("/v1/rulesets", ("Origin", "https://elsewhere.example"));
        Assert.False(other.Headers.ContainsKey("Access-Control-Allow-Origin"));
    }

    [Fact]
    public async Task Every_answer_has_the_security_headers_and_none_allows_browsers_unasked()
    {
        await using ServiceFixture service = await Start();
        foreach (string address in new[] { Quick, "/nowhere", "/docs/index.html", "/health/live" })
        {
            Answer answer = await service.Get(address, ("Origin", "https://shop.example"));
            Assert.Equal("nosniff", answer.Headers["X-Content-Type-Options"]);
            Assert.Equal("no-referrer", answer.Headers["Referrer-Policy"]);
            Assert.Contains("frame-ancestors 'none'", answer.Headers["Content-Security-Policy"]);
            Assert.False(answer.Headers.ContainsKey("Access-Control-Allow-Origin"));
        }
    }

    [Fact]
    public async Task A_shop_may_ask_for_only_so_much_too()
    {
        await using ServiceFixture service =
            await StartStanding(("Cablewright:ShopWorkPerMinute", $"{2 * WorkBuckets.EachRequest}"));
        string key = await service.Key("demo"), other = await service.Key("other");
        for (int i = 0; i < 2; i++) Assert.Equal(200, (await Kits("demo", key)).Status);
        ProblemAssertions.IsProblem(await Kits("demo", key), 429, "requests.too-many");
        Assert.Equal(200, (await Kits("other", other)).Status);
        Assert.Equal(200, (await service.Get(Quick)).Status);

        Task<Answer> Kits(string shop, string shown) =>
            service.Get($"/v1/shops/{shop}/kits", ("Authorization", $"Bearer {shown}"));
    }

    [Fact]
    public async Task It_is_not_ready_before_it_has_read_the_catalogue_and_yet_computes()
    {
        await using var service = new ServiceFixture();
        service.Settings["Cablewright:Storage:PostgreSql"] = "Host=127.0.0.1;Port=1;Username=nobody";
        ProblemAssertions.IsProblem(await service.Get("/health/ready"), 503, "service.not-ready");
        Assert.Equal(200, (await service.Get(Quick)).Status);
        ProblemAssertions.IsProblem(
            await service.Get("/v1/shops/demo/kits", ("Authorization", "Bearer nonsense")), 503, "catalogue.unavailable");
    }

    private static (string, string) WorkFor(int requests) =>
        ("Cablewright:AnonymousWorkPerMinute", $"{requests * WorkBuckets.EachRequest}");

    private static Task<ServiceFixture> Start(params (string Name, string Value)[] settings) =>
        Start(new ServiceFixture(), settings);

    /// <summary>By whose clock nothing comes into the buckets.</summary>
    private static Task<ServiceFixture> StartStanding((string Name, string Value) setting) =>
        Start(new ServiceFixture { Clock = new ManualClock() }, setting);

    private static async Task<ServiceFixture> Start(ServiceFixture service, params (string Name, string Value)[] settings)
    {
        foreach ((string name, string value) in settings) service.Settings[name] = value;
        await service.InitializeAsync();
        return service;
    }
}
