using System.Diagnostics;
using Cablewright.Service.Tests.Hosting;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Documents;

/// <summary>
/// A client with types made from the committed contract compiles, posts every example and reads the answers (needs Node.js and
/// npm).
/// </summary>
public class TypedClientTests(ServiceProcess service) : IClassFixture<ServiceProcess>
{
    private static readonly string Folder = Path.Combine(Repository.Root, "tests/contract");

    [Fact]
    public async Task A_typed_client_posts_the_examples()
    {
        if (!IsInstalled()) await Run("npm", "ci", "--no-audit", "--no-fund");
        await Run("npm", "run", "--silent", "generate");
        await Run("npm", "run", "--silent", "compile");
        string told = await Run("node", "out/post-examples.js", service.Address, Repository.Examples);
        Assert.Contains("copper-clad.request.json: fail", told);
    }

    private static bool IsInstalled()
    {
        string marker = Path.Combine(Folder, "node_modules/.package-lock.json");
        return File.Exists(marker) && File.GetLastWriteTimeUtc(marker) >= File.GetLastWriteTimeUtc(
            Path.Combine(Folder, "package-lock.json"));
    }

    private static async Task<string> Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), errors = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', arguments)}: {await output}{await errors}");
        return await output;
    }
}
