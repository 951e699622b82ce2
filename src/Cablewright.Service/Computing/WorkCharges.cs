using Cablewright.Service.Documents;
using Cablewright.Service.Hosting;
using Cablewright.Service.Keys;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Computing;

/// <summary>Charges callers without a valid key for the work that they ask for, by address.</summary>
internal sealed class WorkCharges(LoadSettings settings, TimeProvider clock)
{
    private readonly WorkBuckets? buckets =
        settings.AnonymousWorkPerMinute > 0 ? new(settings.AnonymousWorkPerMinute, clock) : null;

    /// <summary>Lets a request through that can be paid for, or answers 429; health checks cost nothing.</summary>
    public static Task Admit(HttpContext context, RequestDelegate next)
    {
        Operation? operation = context.GetEndpoint()?.Metadata.GetMetadata<Operation>();
        if (operation is null || operation.Tag == Operations.Health) return next(context);
        return context.RequestServices.GetRequiredService<WorkCharges>().TryStart(context, out TimeSpan wait)
            ? next(context)
            : new ProblemAnswer(ProblemKinds.TooManyRequests) { RetryAfter = wait }.ExecuteAsync(context);
    }

    /// <summary>Charges what each request costs, or says after how long it can be paid for.</summary>
    public bool TryStart(HttpContext context, out TimeSpan wait)
    {
        wait = TimeSpan.Zero;
        return BucketsFor(context)?.TryStart(CallerNetwork.Of(context), out wait) ?? true;
    }

    /// <summary>The same for a line of a batch, which waits until it can be paid for.</summary>
    public async Task Wait(HttpContext context, CancellationToken cancellation)
    {
        while (!TryStart(context, out TimeSpan wait)) await Task.Delay(wait, clock, cancellation).ConfigureAwait(false);
    }

    /// <summary>Charges what was computed, in the engine's units.</summary>
    public void Charge(HttpContext context, double work) => BucketsFor(context)?.Charge(CallerNetwork.Of(context), work);

    private WorkBuckets? BucketsFor(HttpContext context) => Caller.Of(context).Key is null ? buckets : null;
}
