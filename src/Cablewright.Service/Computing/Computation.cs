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
    public WorkMeter MeterFor(Build build)
    {
        var meter = WorkMeter.For(build, cancellation);
        meters.Add(meter);
        return meter;
    }
}
