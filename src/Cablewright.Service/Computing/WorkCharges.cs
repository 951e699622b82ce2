using Cablewright.Service.Documents;
using Cablewright.Service.Hosting;
using Cablewright.Service.Keys;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Computing;

/// <summary>Charges callers for the work that they ask for: with a valid key its shop, without one their address.</summary>
internal sealed class WorkCharges(LoadSettings settings, TimeProvider clock)
{
    private readonly WorkBuckets? ofAddresses = BucketsOf(settings.AnonymousWorkPerMinute, clock);
    private readonly WorkBuckets? ofShops = BucketsOf(settings.ShopWorkPerMinute, clock);

    /// <summary>Lets a request through that can be paid for, or answers 429; health checks cost nothing.</summary>
    public static Task Admit(HttpContext context, RequestDelegate next)
    {
        Operation? operation = context.GetEndpoint()?.Metadata.GetMetadata<Operation>();
        if (operation is null || operation.Tag == Tag.Health) return next(context);
        return context.RequestServices.GetRequiredService<WorkCharges>().TryStart(context, out TimeSpan wait)
            ? next(context)
            : new ProblemAnswer(ProblemKinds.TooManyRequests) { RetryAfter = wait }.ExecuteAsync(context);
    }

    /// <summary>Charges what each request costs, or says after how long it can be paid for.</summary>
    public bool TryStart(HttpContext context, out TimeSpan wait)
    {
        wait = TimeSpan.Zero;
        (WorkBuckets? buckets, string whose) = BucketsFor(context);
        return buckets?.TryStart(whose, out wait) ?? true;
    }

    /// <summary>The same for a line of a batch, which waits until it can be paid for.</summary>
    public async Task Wait(HttpContext context, CancellationToken cancellation)
    {
        while (!TryStart(context, out TimeSpan wait)) await Task.Delay(wait, clock, cancellation).ConfigureAwait(false);
    }

    /// <summary>Charges what was computed, in the engine's units.</summary>
    public void Charge(HttpContext context, double work)
    {
        (WorkBuckets? buckets, string whose) = BucketsFor(context);
        buckets?.Charge(whose, work);
    }

    private (WorkBuckets? Buckets, string Whose) BucketsFor(HttpContext context) =>
        Caller.Of(context).Key is { } key ? (ofShops, key.Shop) : (ofAddresses, CallerNetwork.Of(context));

    private static WorkBuckets? BucketsOf(double perMinute, TimeProvider clock) => perMinute > 0 ? new(perMinute, clock) : null;
}
