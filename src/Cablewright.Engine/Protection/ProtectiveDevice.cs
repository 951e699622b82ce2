using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;

namespace Cablewright.Engine.Protection;

/// <summary>A fuse that protects something.</summary>
/// <param name="End">The end of a run at which it stands.</param>
/// <param name="Fuse">The fuse.</param>
/// <param name="TotalRatingAmps">What it lets through, all its parallel parts together.</param>
internal readonly record struct ProtectiveDevice(RunEnd End, FittedFuse Fuse, double TotalRatingAmps)
{
    /// <summary>The run on which it stands.</summary>
    public int Run => End.Run;

    /// <summary>The longest time until it has opened at a current, or <c>null</c> where that is not certain.</summary>
    public double? ClearingSeconds(double amps) => Fuse.Band.SlowestSeconds(amps / TotalRatingAmps);
}
