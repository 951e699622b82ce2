using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;

namespace Cablewright.Engine.Designs;

/// <summary>A run with what was decided for it.</summary>
/// <param name="Run">The run.</param>
/// <param name="Choice">Its conductors.</param>
/// <param name="Near">The fuse at its start, where there is one.</param>
/// <param name="Far">The fuse at its end, where there is one.</param>
/// <param name="PeakAmps">Its current at full output.</param>
internal sealed record DesignedRun(CompleteRun Run, ConductorChoice Choice, FittedFuse? Near, FittedFuse? Far, double PeakAmps)
{
    /// <summary>The run's id.</summary>
    public string Id => Run.Id;
}
