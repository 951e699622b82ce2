using System.Threading.RateLimiting;
using Cablewright.Service.Hosting;
using Cablewright.Service.Keys;

namespace Cablewright.Service.Computing;

/// <summary>
/// The places at which computations run, and those in which calls wait for one. An address without a key gets at most half of
/// either, and at least one. Lines of batches wait outside: there is always room for a call, and a batch holds a place only while
/// one of its lines is computed.
/// </summary>
internal sealed class Places : IDisposable
{
    private readonly PartitionedRateLimiter<HttpContext>[] stages;

    public Places(LoadSettings settings)
    {
        int running = settings.ComputationsAtOnce, admitted = running + settings.ComputationsWaiting;
        PartitionedRateLimiter<HttpContext> admittedOfOne = OfOneAddress(admitted, waiting: 0);
        PartitionedRateLimiter<HttpContext> admittedOfAll = OfAll(admitted, waiting: 0);
        PartitionedRateLimiter<HttpContext> nextLines = OfAll(running, waiting: int.MaxValue);
        PartitionedRateLimiter<HttpContext> runningOfOne = OfOneAddress(running, waiting: int.MaxValue);
        PartitionedRateLimiter<HttpContext> runningOfAll = OfAll(running, waiting: int.MaxValue);
        stages = [admittedOfOne, admittedOfAll, nextLines, runningOfOne, runningOfAll];
        Call = PartitionedRateLimiter.CreateChained(admittedOfOne, admittedOfAll, runningOfOne, runningOfAll);
        Line = PartitionedRateLimiter.CreateChained(runningOfOne, nextLines, runningOfAll);
    }

    /// <summary>For a call: not acquired where too many wait already.</summary>
    public PartitionedRateLimiter<HttpContext> Call { get; }

    /// <summary>For a line of a batch: always acquired in the end.</summary>
    public PartitionedRateLimiter<HttpContext> Line { get; }

    /// <inheritdoc/>
    public void Dispose()
    {
        Call.Dispose();
        Line.Dispose();
        foreach (PartitionedRateLimiter<HttpContext> stage in stages) stage.Dispose();
    }

    private static PartitionedRateLimiter<HttpContext> OfAll(int places, int waiting) =>
        PartitionedRateLimiter.Create<HttpContext, string>(_ => Limiter("", places, waiting));

    private static PartitionedRateLimiter<HttpContext> OfOneAddress(int places, int waiting) =>
        PartitionedRateLimiter.Create<HttpContext, string>(context => Caller.Of(context).Key is null
            ? Limiter(CallerNetwork.Of(context), Math.Max(1, places / 2), waiting)
            : RateLimitPartition.GetNoLimiter("with a key"));

    private static RateLimitPartition<string> Limiter(string partition, int places, int waiting) =>
        RateLimitPartition.GetConcurrencyLimiter(
            partition, _ => new ConcurrencyLimiterOptions { PermitLimit = places, QueueLimit = waiting });
}
