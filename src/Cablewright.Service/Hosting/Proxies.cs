using Microsoft.AspNetCore.HttpOverrides;

namespace Cablewright.Service.Hosting;

/// <summary>
/// Takes the caller's address from <c>X-Forwarded-For</c>, and from its like the address by which the caller reaches the service,
/// a path before it included; but only from proxies that the setting lists.
/// </summary>
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
        // Each trusted proxy adds the address that it saw: read from the right, the first that is no proxy of ours is the
        // caller's.
        var options = new ForwardedHeadersOptions { ForwardedHeaders = ForwardedHeaders.All, ForwardLimit = null };
        options.KnownProxies.Clear();
        options.KnownIPNetworks.Clear();
        foreach (string network in networks) options.KnownIPNetworks.Add(System.Net.IPNetwork.Parse(network));
        app.UseForwardedHeaders(options);
    }
}
