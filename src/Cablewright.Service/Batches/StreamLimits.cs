using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.Server.Kestrel.Core.Features;

namespace Cablewright.Service.Batches;

/// <summary>The server's limits on a body that has no end in sight: any size, and as slow as a person types.</summary>
internal static class StreamLimits
{
    /// <summary>
    /// Slow enough for a build of 1 KB a minute, and not for a connection that is held open for nothing. The server does not
    /// count the time in which the service itself does not read.
    /// </summary>
    private static readonly MinDataRate Slowest = new(bytesPerSecond: 16, gracePeriod: TimeSpan.FromMinutes(1));

    /// <summary>Sets them for this request.</summary>
    public static void Set(HttpContext context)
    {
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size) size.MaxRequestBodySize = null;
        if (IsFirstVersion(context.Request.Protocol) && context.Features.Get<IHttpMinRequestBodyDataRateFeature>() is { } rate)
            rate.MinDataRate = Slowest;
    }

    /// <summary>The later versions do not let one stream of a connection have a rate of its own.</summary>
    private static bool IsFirstVersion(string protocol) => HttpProtocol.IsHttp11(protocol) || HttpProtocol.IsHttp10(protocol);
}
