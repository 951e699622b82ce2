using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;

namespace Cablewright.Engine.Protection;

/// <summary>A fuse that guards something.</summary>
/// <param name="End">The end of a run at which it stands.</param>
/// <param name="Fuse">The fuse.</param>
/// <param name="PassingAmps">What it lets through, all its parallel parts together.</param>
internal readonly record struct Guard(RunEnd End, FittedFuse Fuse, double PassingAmps)
{
    /// <summary>The run on which it stands.</summary>
    public int Run => End.Run;

    /// <summary>The longest time until it has opened at a current, or <c>null</c> where that is not certain.</summary>
    public double? OpensSeconds(double amps) => Fuse.Family.OpeningBand.SlowestSeconds(amps / PassingAmps);
}
