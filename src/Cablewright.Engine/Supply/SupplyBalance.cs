using Cablewright.Engine.Circuits;
using Cablewright.Engine.Completing;

namespace Cablewright.Engine.Supply;

/// <summary>What is drawn from the alternator's supply, and what the alternator has left for it.</summary>
/// <param name="PeakAmps">Every amplifier that it reaches, at full output.</param>
/// <param name="AverageAmps">The same on their programme, on average.</param>
/// <param name="LeftAmps">Hot and at speed, above the base load; <c>null</c> where no alternator is stated.</param>
/// <param name="LeftAtIdleAmps">The same at idle.</param>
internal sealed record SupplyBalance(double PeakAmps, double AverageAmps, double? LeftAmps, double? LeftAtIdleAmps)
{
    public static SupplyBalance Of(CompleteBuild build, Wiring wiring, WorstCurrents currents)
    {
        int[] charged = [.. Enumerable.Range(0, build.Draws.Count).Where(amplifier => !wiring.FeedsAlone(amplifier))];
        return new SupplyBalance(
            charged.Sum(amplifier => currents.LoadAmps[amplifier]),
            charged.Sum(amplifier => currents.LoadAmps[amplifier] * build.Draws[amplifier].AverageShare),
            Left(build.Supply.HotAmps),
            build.Supply.HotAmps is null ? null : Left(build.Supply.IdleAmps));

        double? Left(double? given) => given is { } amps ? Math.Max(0, amps - build.Supply.BaseLoadAmps) : null;
    }
}
