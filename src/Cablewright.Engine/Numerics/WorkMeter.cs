using Cablewright.Engine.Builds;

namespace Cablewright.Engine.Numerics;

/// <summary>Counts the work of one request, over everything that the request asks for, and ends it where its caller is gone.</summary>
/// <remarks>
/// The unit is one run solved once. Work is counted, not timed, so that the same request gives the same answer on every machine; the
/// budget follows from the build alone, so that it gives the same answer to every caller.
/// </remarks>
/// <param name="budget">The most that may be counted before what is optional is left out, in units.</param>
/// <param name="cancellation">Ends the computation with an <see cref="OperationCanceledException"/>.</param>
public sealed class WorkMeter(double budget, CancellationToken cancellation = default)
{
    /// <summary>The most that may be counted before what is optional is left out, in units.</summary>
    public double Budget { get; } = budget;

    /// <summary>What was counted so far, in units.</summary>
    public double Used { get; private set; }

    /// <summary>Whether nothing is left.</summary>
    public bool IsUsedUp => Used >= Budget;

    /// <summary>The meter of a request about one build.</summary>
    /// <param name="build">The build.</param>
    /// <param name="cancellation">Ends the computation.</param>
    public static WorkMeter For(Build build, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(build);
        return new WorkMeter(1e6, cancellation);
    }

    /// <summary>Counts work.</summary>
    /// <param name="units">How much, in units.</param>
    /// <exception cref="OperationCanceledException">The computation was ended.</exception>
    public void Count(double units)
    {
        Used += units;
        cancellation.ThrowIfCancellationRequested();
    }
}
