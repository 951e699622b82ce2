using System.Threading.RateLimiting;
using Cablewright.Engine.Numerics;
using Cablewright.Service.Hosting;
using Cablewright.Service.Keys;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Computing;

/// <summary>
/// The one way to compute: at a place, within the deadline, for as long as the caller is there, and charged for. A computation
/// runs on the thread that comes for it, since there are never more of them than places.
/// </summary>
internal sealed class Computations(LoadSettings settings, Places places, WorkCharges charges, TimeProvider clock)
{
    /// <summary>The weight of the newest in the mean of durations.</summary>
    private const double Newest = 1.0 / 16;

    private double meanSeconds;

    /// <summary>Sets up what computing needs.</summary>
    public static void Add(IServiceCollection services) =>
        services.AddSingleton<Places>().AddSingleton<WorkCharges>().AddSingleton<Computations>();

    /// <summary>Computes for a call, or says that every place is taken or that it took too long.</summary>
    /// <exception cref="OperationCanceledException">The caller is gone.</exception>
    public async Task<(T? Answer, ProblemAnswer? Problem)> Run<T>(
        HttpContext context, Func<Computation, (T?, ProblemAnswer?)> work, CancellationToken cancellation) where T : class
    {
        using RateLimitLease? place = await PlaceOfCall(context, cancellation);
        return place is { IsAcquired: true } ? Compute(context, work, cancellation) : (null, Busy());
    }

    /// <summary>The same where all that comes of it is an answer.</summary>
    /// <exception cref="OperationCanceledException">The caller is gone.</exception>
    public async Task<IResult> Run(HttpContext context, Func<Computation, IResult> work, CancellationToken cancellation)
    {
        (IResult? answer, ProblemAnswer? problem) = await Run<IResult>(
            context, computation => (work(computation), null), cancellation);
        return answer ?? problem!;
    }

    /// <summary>Computes for a line of a batch, which waits for its place as long as it takes.</summary>
    /// <exception cref="OperationCanceledException">The caller is gone.</exception>
    public async Task<(T? Answer, ProblemAnswer? Problem)> RunLine<T>(
        HttpContext context, Func<Computation, (T?, ProblemAnswer?)> work, CancellationToken cancellation) where T : class
    {
        using RateLimitLease place = await places.Line.AcquireAsync(context, 1, cancellation).ConfigureAwait(false);
        return Compute(context, work, cancellation);
    }

    private async Task<RateLimitLease?> PlaceOfCall(HttpContext context, CancellationToken cancellation)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        patience.CancelAfter(TimeSpan.FromSeconds(settings.WaitingSeconds));
        try
        {
            return await places.Call.AcquireAsync(context, 1, patience.Token);
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            return null;
        }
    }

    private (T?, ProblemAnswer?) Compute<T>(
        HttpContext context, Func<Computation, (T?, ProblemAnswer?)> work, CancellationToken cancellation) where T : class
    {
        using var deadline = new CancellationTokenSource(TimeSpan.FromSeconds(settings.ComputationSeconds), clock);
        using var end = CancellationTokenSource.CreateLinkedTokenSource(deadline.Token, cancellation);
        var computation = new Computation(Caller.Of(context).Key is not null, end.Token);
        long begun = clock.GetTimestamp();
        try
        {
            return work(computation);
        }
        catch (OperationCanceledException) when (deadline.IsCancellationRequested && !cancellation.IsCancellationRequested)
        {
            return (null, new ProblemAnswer(ProblemKinds.ComputationTooLong));
        }
        catch (WorkExceededException)
        {
            return (null, new ProblemAnswer(ProblemKinds.TooMuchWork));
        }
        finally
        {
            charges.Charge(context, computation.Used);
            // Two at once may lose one of them from the mean, which only tells roughly how long to wait.
            meanSeconds += Newest * (clock.GetElapsedTime(begun).TotalSeconds - meanSeconds);
        }
    }

    /// <summary>Everyone who waits now is done in about this time.</summary>
    private ProblemAnswer Busy()
    {
        double seconds = meanSeconds * (1 + (double)settings.ComputationsWaiting / settings.ComputationsAtOnce);
        return new ProblemAnswer(ProblemKinds.Busy)
        {
            RetryAfter = TimeSpan.FromSeconds(Math.Clamp(seconds, 1, Math.Max(1, settings.ComputationSeconds))),
        };
    }
}
