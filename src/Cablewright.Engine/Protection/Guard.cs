using Cablewright.Engine.Fuses;

namespace Cablewright.Engine.Protection;

/// <summary>A fuse that guards something.</summary>
/// <param name="Run">The run on which it stands.</param>
/// <param name="IsFar">Whether it stands at that run's end.</param>
/// <param name="Fuse">The fuse.</param>
/// <param name="PassingAmps">What it lets through, all its parallel parts together.</param>
internal readonly record struct Guard(int Run, bool IsFar, FittedFuse Fuse, double PassingAmps)
{
    /// <summary>The longest time until it has opened at a current, or <c>null</c> where that is not certain.</summary>
    public double? OpensSeconds(double amps) => Fuse.Family.OpeningBand.SlowestSeconds(amps / PassingAmps);
}
