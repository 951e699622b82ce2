using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;

namespace Cablewright.Service.Computing;

/// <summary>One computation under way.</summary>
/// <param name="hasKey">Whether a shop's valid key was shown for it.</param>
/// <param name="cancellation">Ends it.</param>
internal sealed class Computation(bool hasKey, CancellationToken cancellation)
{
    private readonly List<WorkMeter> meters = [];

    /// <summary>Whether a shop's valid key was shown for it.</summary>
    public bool HasKey => hasKey;

    /// <summary>The work of all its builds so far, in the engine's units.</summary>
    public double Used => meters.Sum(meter => meter.Used);

    /// <summary>Counts the work of one build, and ends it where the caller is gone or the time is up.</summary>
    /// <param name="build">The build.</param>
    /// <param name="among">Among how many builds the request's work is shared out.</param>
    public WorkMeter MeterFor(Build build, int among = 1)
    {
        WorkMeter meter = WorkBudgets.MeterFor(build, among, cancellation);
        meters.Add(meter);
        return meter;
    }
}
