using System.Diagnostics;
using Cablewright.Service.Tests.Stores;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Commands;

/// <summary>The operator's commands, each as a process of its own on a running service's database.</summary>
public class CommandTests
{
    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task An_operator_makes_shops_and_keys_and_revokes_them(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        await using CatalogueService service = await CatalogueService.Start(database);
        Assert.Equal((0, ""), await Run(database, "shops", "add", "north"));
        Assert.Equal(1, (await Run(database, "shops", "add", "north")).Code);
        Assert.Equal(2, (await Run(database, "shops", "add", "two words")).Code);
        Assert.Equal((0, "north\n"), await Run(database, "shops", "list"));
        Assert.Equal(1, (await Run(database, "keys", "add", "south")).Code);
        Assert.Equal(1, (await Run(database, "keys", "list", "south")).Code);
        Assert.Equal((0, ""), await Run(database, "keys", "list", "north"));
        Assert.Equal(2, (await Run(database, "keys", "add", "north", "--scopes", "kits:eat")).Code);

        (int code, string text) = await Run(database, "keys", "add", "north", "--scopes", "kits:read", "--days", "30");
        Assert.Equal(0, code);
        string key = text.Trim(), id = key.Split('_')[1];
        await UntilStatus(service, key, 200);
        string listed = (await Run(database, "keys", "list", "north")).Output;
        Assert.Contains($"{id}\tkits:read\t", listed);
        Assert.DoesNotContain(key, listed);

        Assert.Equal(0, (await Run(database, "keys", "revoke", id)).Code);
        await UntilStatus(service, key, 401);
        Assert.Equal(1, (await Run(database, "keys", "revoke", "nothing")).Code);
    }

    private static async Task UntilStatus(CatalogueService service, string key, int status)
    {
        Answer answer;
        var waited = Stopwatch.StartNew();
        do answer = await service.Send(HttpMethod.Get, "/v1/shops/north/kits", key);
        while (answer.Status != status && waited.Elapsed < TimeSpan.FromSeconds(20));
        Assert.Equal(status, answer.Status);
    }

    private static async Task<(int Code, string Output)> Run(TestDatabase database, params string[] command)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(Program).Assembly.Location, .. command])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        foreach ((string name, string value) in database.Settings("__")) start.Environment[name] = value;
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), errors = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        await errors;
        return (process.ExitCode, await output);
    }
}
