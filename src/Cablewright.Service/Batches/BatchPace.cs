using System.Runtime.CompilerServices;
using Cablewright.Service.Computing;

namespace Cablewright.Service.Batches;

/// <summary>Charges a caller without a key for each build as for a request: what cannot be paid for yet waits its turn.</summary>
internal static class BatchPace
{
    /// <summary>The builds, each when it may be worked on.</summary>
    public static async IAsyncEnumerable<BuildText> Of(
        IAsyncEnumerable<BuildText> builds,
        WorkCharges charges,
        HttpContext context,
        [EnumeratorCancellation] CancellationToken cancellation)
    {
        await foreach (BuildText build in builds.WithCancellation(cancellation).ConfigureAwait(false))
        {
            await charges.Wait(context, cancellation).ConfigureAwait(false);
            yield return build;
        }
    }
}
