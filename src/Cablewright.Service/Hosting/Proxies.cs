using Microsoft.AspNetCore.HttpOverrides;

namespace Cablewright.Service.Hosting;

/// <summary>Takes the caller's address from <c>X-Forwarded-For</c>, but only from proxies that the setting lists.</summary>
internal static class Proxies
{
    /// <summary>The setting: networks such as <c>10.0.0.0/8</c>, parted by commas; none unless set.</summary>
    public const string Setting = "Cablewright:TrustedProxies";

    /// <summary>Applies it where there is a list.</summary>
    public static void Use(WebApplication app)
    {
        string[] networks = (app.Configuration[Setting] ?? "").Split(
            ',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (networks.Length == 0) return;
        var options = new ForwardedHeadersOptions { ForwardedHeaders = ForwardedHeaders.XForwardedFor };
        options.KnownProxies.Clear();
        options.KnownIPNetworks.Clear();
        foreach (string network in networks) options.KnownIPNetworks.Add(System.Net.IPNetwork.Parse(network));
        app.UseForwardedHeaders(options);
    }
}
