using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Cablewright.Service.Hosting;

/// <summary>Where the service listens, and telling whoever started it.</summary>
internal static class Addresses
{
    private const string Default = "http://127.0.0.1:5080";

    private static readonly string[] Settings = ["urls", "http_ports", "https_ports", "Kestrel:Endpoints"];

    /// <summary>Listens on loopback where nothing else is configured.</summary>
    public static void UseDefault(WebApplicationBuilder builder)
    {
        if (!Settings.Any(name => builder.Configuration.GetSection(name).Exists())) builder.WebHost.UseUrls(Default);
    }

    /// <summary>
    /// Prints the addresses once the service listens, on standard error so that standard output stays a log of JSON lines.
    /// </summary>
    public static void AnnounceWhenStarted(WebApplication app) =>
        app.Lifetime.ApplicationStarted.Register(() => Announce(app.Services.GetRequiredService<IServer>()));

    private static void Announce(IServer server)
    {
        foreach (string bound in server.Features.Get<IServerAddressesFeature>()?.Addresses ?? [])
        {
            string address = bound.Replace("[::]", "localhost", StringComparison.Ordinal);
            Console.Error.WriteLine($"Cablewright listens on {address}");
            Console.Error.WriteLine($"Try page: {address}/");
            Console.Error.WriteLine($"Documentation: {address}/docs");
            Console.Error.WriteLine(
                "Try it: curl -H \"Content-Type: application/json\" --data-binary @openapi/examples/small-run.request.json "
                + $"{address}/v1/assessments");
        }
    }
}
