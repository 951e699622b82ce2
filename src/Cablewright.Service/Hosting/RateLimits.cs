using System.Net;
using System.Net.Sockets;
using System.Threading.RateLimiting;
using Cablewright.Service.Batches;
using Cablewright.Service.Keys;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Hosting;

/// <summary>Limits how much callers without a valid key may ask, by address.</summary>
internal static class RateLimits
{
    /// <summary>The policy's name.</summary>
    public const string ByAddress = "by-address";

    /// <summary>The setting: how many requests a minute; 0 for no limit.</summary>
    public const string Setting = "Cablewright:AnonymousRequestsPerMinute";

    private const int Usual = 600;
    /// <summary>Sets the policy up.</summary>
    public static void Add(WebApplicationBuilder builder) => builder.Services.AddSingleton<BatchPace>().AddRateLimiter(limiter =>
    {
        limiter.AddPolicy(ByAddress, context => Partition(context, PerMinute(context)));
        limiter.OnRejected = async (rejected, _) =>
            await new ProblemAnswer(ProblemKinds.TooManyRequests).ExecuteAsync(rejected.HttpContext);
    });

    /// <summary>A limit of its own for what one request asks many times over: whoever is over it waits.</summary>
    public static PartitionedRateLimiter<HttpContext> Waiting() => PartitionedRateLimiter.Create<HttpContext, string>(
        context => Partition(context, PerMinute(context), queued: int.MaxValue));

    private static int PerMinute(HttpContext context) =>
        context.RequestServices.GetRequiredService<IConfiguration>().GetValue(Setting, Usual);

    private static RateLimitPartition<string> Partition(HttpContext context, int perMinute, int queued = 0) =>
        perMinute <= 0 || Caller.Of(context).Key is not null
            ? RateLimitPartition.GetNoLimiter("")
            : RateLimitPartition.GetTokenBucketLimiter(
                NetworkOf(context.Connection.RemoteIpAddress), _ => new TokenBucketRateLimiterOptions
                {
                    TokenLimit = perMinute,
                    TokensPerPeriod = TokensAtATime(perMinute),
                    QueueLimit = queued,
                    ReplenishmentPeriod = TimeSpan.FromMinutes((double)TokensAtATime(perMinute) / perMinute),
                });

    /// <summary>About once a second, or one as it falls due.</summary>
    private static int TokensAtATime(int perMinute) => Math.Max(1, perMinute / 60);

    /// <summary>Of an IPv6 address the first 64 bits: whoever has one such address has all of its network.</summary>
    private static string NetworkOf(IPAddress? address)
    {
        if (address is null) return "";
        if (address.IsIPv4MappedToIPv6) return address.MapToIPv4().ToString();
        return address.AddressFamily == AddressFamily.InterNetworkV6
            ? Convert.ToHexString(address.GetAddressBytes().AsSpan(0, 8))
            : address.ToString();
    }
}
