using System.Diagnostics;
using Cablewright.Service.Tests.Hosting;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Documents;

/// <summary>
/// A client with types made from the committed contract compiles, posts every example, audits a cable, keeps and checks kits with
/// a shop's key, and reads the answers (needs Node.js and npm).
/// </summary>
public class TypedClientTests(ServiceProcess service) : IClassFixture<ServiceProcess>
{
    private static readonly string Folder = Path.Combine(Repository.Root, "tests/contract");

    private const string Shop = "typed";

    [Fact]
    public async Task A_typed_client_posts_the_examples_and_keeps_kits()
    {
        if (!IsInstalled()) await Run("npm", "ci", "--no-audit", "--no-fund");
        await Run("npm", "run", "--silent", "generate");
        await Run("npm", "run", "--silent", "compile");
        string key = await ShopKey();
        string told = await Run("node", "out/post-examples.js", service.Address, Repository.Examples, Shop, key);
        Assert.Contains("copper-clad.request.json: fail", told);
        Assert.Contains("audit: ", told);
        Assert.Contains("kit check: does-not-serve", told);
        Assert.Contains("kit matches: stout ", told);
    }

    /// <summary>By the operator's commands; the service knows the key at its next look at the database.</summary>
    private async Task<string> ShopKey()
    {
        await Run("dotnet", typeof(Program).Assembly.Location, "shops", "add", Shop);
        string key = (await Run("dotnet", typeof(Program).Assembly.Location, "keys", "add", Shop)).Trim();
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        while (!await Knows(key)) await Task.Delay(50, patience.Token);
        return key;
    }

    private async Task<bool> Knows(string key)
    {
        using var list = new HttpRequestMessage(HttpMethod.Get, $"/v1/shops/{Shop}/kits")
        {
            Headers = { Authorization = new("Bearer", key) },
        };
        using HttpResponseMessage answer = await service.Client.SendAsync(list);
        return answer.IsSuccessStatusCode;
    }

    private static bool IsInstalled()
    {
        string marker = Path.Combine(Folder, "node_modules/.package-lock.json");
        return File.Exists(marker) && File.GetLastWriteTimeUtc(marker) >= File.GetLastWriteTimeUtc(
            Path.Combine(Folder, "package-lock.json"));
    }

    private async Task<string> Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["Cablewright__Storage__SqliteFile"] = service.SqliteFile;
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), errors = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', arguments)}: {await output}{await errors}");
        return await output;
    }
}
