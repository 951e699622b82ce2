using System.Collections.Concurrent;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Hosting;
using Cablewright.Service.Tests.Stores;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Faults;

public class KillTests
{
    private const int Writers = 4;
    private const int Enough = 40;

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task Killing_the_service_amid_writes_loses_none_that_was_acknowledged(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        string key;
        await using (CatalogueService service = await CatalogueService.Start(database)) key = (await service.Key("kill")).Text;

        var acknowledged = new ConcurrentDictionary<string, string>();
        for (int round = 0; round < 2; round++)
        {
            ServiceProcess process = await Start(database, key);
            Task[] writers = [.. Enumerable.Range(0, Writers).Select(
                writer => Write(process.Client, $"{round}-{writer}", acknowledged))];
            while (acknowledged.Count < Enough * (round + 1)) await Task.Delay(5);
            await process.KillAsync();
            await Task.WhenAll(writers);
            await process.DisposeAsync();
        }

        ServiceProcess survivor = await Start(database, key);
        try
        {
            foreach ((string address, string tag) in acknowledged)
            {
                using HttpResponseMessage kept = await survivor.Client.GetAsync(address);
                Assert.Equal(HttpStatusCode.OK, kept.StatusCode);
                Assert.Equal(tag, kept.Headers.ETag!.Tag);
            }
        }
        finally
        {
            await survivor.DisposeAsync();
        }
    }

    /// <summary>Writes until the service is no more.</summary>
    private static async Task Write(HttpClient client, string writer, ConcurrentDictionary<string, string> acknowledged)
    {
        try
        {
            for (int number = 0; ; number++)
            {
                string sku = $"{writer}-{number}";
                using var body = new StringContent(SomeKit.Named(sku), Encoding.UTF8, "application/json");
                using HttpResponseMessage answer = await client.PutAsync($"/v1/shops/kill/kits/{sku}", body);
                if (answer.StatusCode == HttpStatusCode.Created)
                    acknowledged[$"/v1/shops/kill/kits/{sku}"] = answer.Headers.ETag!.Tag;
                await Record(client, sku, acknowledged);
            }
        }
        catch (HttpRequestException)
        {
            // Killed.
        }
    }

    private static async Task Record(HttpClient client, string name, ConcurrentDictionary<string, string> acknowledged)
    {
        JsonNode build = JsonNode.Parse(Builds.Small)!;
        build["name"] = name;
        using var body = new StringContent(build.ToJsonString(), Encoding.UTF8, "application/json");
        using HttpResponseMessage answer = await client.PostAsync("/v1/assessments?record=true", body);
        if (answer.StatusCode == HttpStatusCode.Created)
            acknowledged[answer.Headers.Location!.OriginalString] = answer.Headers.ETag!.Tag;
    }

    private static async Task<ServiceProcess> Start(TestDatabase database, string key)
    {
        var process = new ServiceProcess();
        foreach ((string name, string value) in database.Settings("__")) process.Environment[name] = value;
        await process.InitializeAsync();
        process.Client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", key);
        while (!(await process.Client.GetAsync("/health/ready")).IsSuccessStatusCode) await Task.Delay(20);
        return process;
    }
}
