using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Hosting;

/// <summary>The service as a process of its own, on a free port, with what it writes.</summary>
public sealed class ServiceProcess : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly ConcurrentQueue<string> output = new();
    private readonly ConcurrentQueue<string> errors = new();
    private readonly TaskCompletionSource listening = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly string folder = Directory.CreateTempSubdirectory("cablewright-").FullName;
    private Process? process;

    /// <summary>What differs from the usual settings, as variables of the environment.</summary>
    public Dictionary<string, string> Environment { get; } = [];

    /// <summary>Its database, if nothing else is set.</summary>
    public string SqliteFile => Path.Combine(folder, "cablewright.db");

    public string Address { get; } = $"http://127.0.0.1:{FreePort()}";

    public HttpClient Client { get; private set; } = null!;

    /// <summary>What it wrote for people.</summary>
    public IReadOnlyList<string> Announcements => [.. errors];

    /// <summary>The lines of its log so far that say more than that a request was answered as it should be.</summary>
    public IReadOnlyList<string> Troubles => [.. output.Where(line => line.Contains("\"@l\":", StringComparison.Ordinal))];

    /// <summary>The lines of its log that name a request.</summary>
    public async Task<IReadOnlyList<string>> LogOf(string correlationId)
    {
        for (var waited = Stopwatch.StartNew(); waited.Elapsed < Patience; await Task.Delay(20))
        {
            IReadOnlyList<string> lines = LogSoFar(correlationId);
            if (lines.Count > 0) return lines;
        }

        return [];
    }

    public async Task InitializeAsync()
    {
        var start = new ProcessStartInfo("dotnet", [typeof(Program).Assembly.Location])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        start.Environment["ASPNETCORE_URLS"] = Address;
        start.Environment["Cablewright__AnonymousWorkPerMinute"] = "0";
        start.Environment["Cablewright__DrainSeconds"] = "0";
        start.Environment["Cablewright__Storage__SqliteFile"] = SqliteFile;
        foreach ((string name, string value) in Environment) start.Environment[name] = value;
        start.Environment["LC_ALL"] = "de_DE.UTF-8";
        process = Process.Start(start)!;
        process.OutputDataReceived += (_, line) => output.Enqueue(line.Data ?? "");
        process.ErrorDataReceived += (_, line) => Hear(line.Data ?? "");
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        Client = new HttpClient { BaseAddress = new Uri(Address) };
        await listening.Task.WaitAsync(Patience);
    }

    /// <summary>The same without waiting for them.</summary>
    public IReadOnlyList<string> LogSoFar(string correlationId) =>
        [.. output.Where(line => line.Contains(correlationId, StringComparison.Ordinal))];

    /// <summary>Tells it to stop, as whoever runs it does (SIGTERM).</summary>
    public void Terminate() => Process.Start("kill", ["-TERM", $"{process!.Id}"]).Dispose();

    /// <summary>How it ended; waits until it has.</summary>
    public async Task<int> ExitCode()
    {
        await process!.WaitForExitAsync().WaitAsync(Patience);
        return process.ExitCode;
    }

    /// <summary>Ends it without warning (SIGKILL).</summary>
    public async Task KillAsync()
    {
        process!.Kill();
        await process.WaitForExitAsync();
    }

    public async Task DisposeAsync()
    {
        Client.Dispose();
        await KillAsync();
        process!.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    public async Task<Answer> Post(string body, string correlationId)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/assessments") { Content = new StringContent(body) };
        request.Content.Headers.ContentType = new("application/json");
        request.Headers.Add("X-Correlation-Id", correlationId);
        using HttpResponseMessage response = await Client.SendAsync(request);
        return await Answer.Of(response);
    }

    private void Hear(string line)
    {
        errors.Enqueue(line);
        if (line.Contains("/v1/assessments", StringComparison.Ordinal)) listening.TrySetResult();
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
