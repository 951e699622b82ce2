using System.Net;
using System.Net.Sockets;

namespace Cablewright.Service.Hosting;

/// <summary>Which callers count as one where nothing but their address is known.</summary>
internal static class CallerNetwork
{
    /// <summary>The address; of an IPv6 address the first 64 bits: whoever has one such address has all of its network.</summary>
    public static string Of(HttpContext context)
    {
        IPAddress? address = context.Connection.RemoteIpAddress;
        if (address is null) return "";
        if (address.IsIPv4MappedToIPv6) return address.MapToIPv4().ToString();
        return address.AddressFamily == AddressFamily.InterNetworkV6
            ? Convert.ToHexString(address.GetAddressBytes().AsSpan(0, 8))
            : address.ToString();
    }
}
