using System.Runtime.CompilerServices;
using System.Threading.RateLimiting;
using Cablewright.Service.Hosting;

namespace Cablewright.Service.Batches;

/// <summary>Lets a caller without a key have as many builds a minute as it may send requests: the others wait their turn.</summary>
internal sealed class BatchPace : IDisposable
{
    private readonly PartitionedRateLimiter<HttpContext> limiter = RateLimits.Waiting();

    /// <summary>The builds, each when it may be worked on.</summary>
    public async IAsyncEnumerable<BuildText> Of(
        IAsyncEnumerable<BuildText> builds, HttpContext context, [EnumeratorCancellation] CancellationToken cancellation)
    {
        await foreach (BuildText build in builds.WithCancellation(cancellation).ConfigureAwait(false))
        {
            using RateLimitLease lease = await limiter.AcquireAsync(context, 1, cancellation).ConfigureAwait(false);
            yield return build;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => limiter.Dispose();
}
