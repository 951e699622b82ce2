using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;
using Cablewright.Storage.Shops;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

namespace Cablewright.Service.Tests.Support;

/// <summary>The service in this process, and short ways to ask it.</summary>
public class ServiceFixture : WebApplicationFactory<Program>, IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly string folder = Directory.CreateTempSubdirectory("cablewright-").FullName;

    /// <summary>What differs from the usual settings.</summary>
    public Dictionary<string, string> Settings { get; } = new()
    {
        ["Cablewright:AnonymousWorkPerMinute"] = "0",
        ["Cablewright:DrainSeconds"] = "0",
        // Tests ask side by side and from one address, which has half of the places.
        ["Cablewright:ComputationsAtOnce"] = "8",
        ["Cablewright:WaitingSeconds"] = "60",
        ["Cablewright:ComputationSeconds"] = "120",
    };

    /// <summary>The clock that it goes by, where it is not the usual one.</summary>
    public TimeProvider? Clock { get; init; }

    /// <summary>Where its database is, if nothing else is set.</summary>
    public string SqliteFile => Path.Combine(folder, "data", "cablewright.db");

    /// <summary>Waits until it is ready.</summary>
    public async Task InitializeAsync()
    {
        for (var waited = Stopwatch.StartNew(); (await Get("/health/ready")).Status != 200; await Task.Delay(20))
            Assert.True(waited.Elapsed < Patience, "the service did not become ready");
    }

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("Cablewright:Storage:SqliteFile", SqliteFile);
        foreach ((string name, string value) in Settings) builder.UseSetting(name, value);
        if (Clock is not null) builder.ConfigureTestServices(services => services.AddSingleton(Clock));
    }

    /// <summary>A key of a shop, which is made where it is not there yet.</summary>
    public async Task<string> Key(string shop)
    {
        await Services.GetRequiredService<ShopStore>().AddAsync(shop, CancellationToken.None);
        var made = await Services.GetRequiredService<KeyStore>()
            .AddAsync(shop, ScopeWords.All, null, null, CancellationToken.None);
        await Services.GetRequiredService<Catalogues>().RefreshAsync(CancellationToken.None);
        return made!.Value.Text;
    }

    public async Task<Answer> Get(string address, params (string Name, string Value)[] headers) =>
        await Send(new HttpRequestMessage(HttpMethod.Get, address), headers);

    public Task<Answer> Post(
        string body, string contentType = "application/json", params (string Name, string Value)[] headers) =>
        PostTo("/v1/assessments", body, contentType, headers);

    public Task<Answer> PostTo(
        string path, string body, string contentType = "application/json", params (string Name, string Value)[] headers) =>
        Post(path, Encoding.UTF8.GetBytes(body), contentType, headers);

    public Task<Answer> PostBatch(string body, string contentType, params (string Name, string Value)[] headers) =>
        PostBatch(Encoding.UTF8.GetBytes(body), contentType, headers);

    public Task<Answer> PostBatch(byte[] body, string contentType, params (string Name, string Value)[] headers) =>
        Post("/v1/assessments/batch", body, contentType, headers);

    private async Task<Answer> Post(string address, byte[] body, string contentType, (string Name, string Value)[] headers)
    {
        var content = new ByteArrayContent(body);
        if (contentType.Length > 0) content.Headers.TryAddWithoutValidation("Content-Type", contentType);
        return await Send(new HttpRequestMessage(HttpMethod.Post, address) { Content = content }, headers);
    }

    public async Task<Answer> Send(HttpRequestMessage request, params (string Name, string Value)[] headers)
    {
        foreach ((string name, string value) in headers) request.Headers.TryAddWithoutValidation(name, value);
        using HttpClient client = CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });
        using HttpResponseMessage response = await client.SendAsync(request);
        return await Answer.Of(response);
    }
}

/// <summary>What came back.</summary>
public sealed record Answer(int Status, string ContentType, byte[] Body, IReadOnlyDictionary<string, string> Headers)
{
    public string Text => Encoding.UTF8.GetString(Body);

    public JsonNode Json => JsonNode.Parse(Body)!;

    /// <summary>The lines of an answer that has one JSON text a line.</summary>
    public IReadOnlyList<JsonNode> Lines => [.. Text.Split('\n')[..^1].Select(line => JsonNode.Parse(line)!)];

    /// <summary>The codes and places of a problem's faults.</summary>
    public IEnumerable<(string Pointer, string Code)> Faults =>
        Json["errors"]!.AsArray().Select(error => ((string)error!["pointer"]!, (string)error["code"]!));

    public static async Task<Answer> Of(HttpResponseMessage response) => new(
        (int)response.StatusCode,
        response.Content.Headers.ContentType?.ToString() ?? "",
        await response.Content.ReadAsByteArrayAsync(),
        response.Headers.Concat(response.Content.Headers)
            .ToDictionary(header => header.Key, header => string.Join(", ", header.Value), StringComparer.OrdinalIgnoreCase));
}
