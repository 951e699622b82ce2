using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>How the smallest fault at the end of a run is interrupted.</summary>
/// <param name="Run">The run whose end is short-circuited.</param>
/// <param name="Battery">The battery that feeds the fault alone.</param>
/// <param name="ProtectiveDevice">The slowest of the fuses that must open.</param>
/// <param name="DeviceAmps">The current in that fuse, all its parallel parts together.</param>
/// <param name="ConductorAmps">The current in one conductor of the run.</param>
/// <param name="ClearingSeconds">The longest time until the fuse has opened; <c>null</c> where opening is not certain.</param>
/// <param name="WithstandSeconds">How long the conductor withstands it; infinite where it never gets too hot.</param>
internal sealed record Clearing(
    int Run, int Battery, ProtectiveDevice ProtectiveDevice, double DeviceAmps, double ConductorAmps, double? ClearingSeconds,
    double WithstandSeconds)
{
    /// <summary>Whether the fuse has opened before the conductor is hurt.</summary>
    public bool IsInTime => ClearingSeconds is { } opens && !Significant.Exceeds(opens, WithstandSeconds);

    /// <summary>Opening time over withstand: the larger, the worse.</summary>
    public double Strain => ClearingSeconds is { } opens ? opens / WithstandSeconds : double.PositiveInfinity;
}
