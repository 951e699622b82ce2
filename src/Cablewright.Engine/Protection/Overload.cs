using Cablewright.Engine.Completing;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Sizing;

namespace Cablewright.Engine.Protection;

/// <summary>What a conductor reaches while its fuse takes its time over an overload.</summary>
/// <remarks>
/// A fuse carries a little more than its rating without end and a little more than that for minutes or hours. At each share of
/// its rating the conductor is heated for the longest time that the band allows, or for ever where opening is not certain.
/// </remarks>
internal sealed class Overload(CompleteBuild build, Evaluation evaluation)
{
    private static readonly double[] Shares = [1.10, 1.35, 2.00];

    private const double ScanStep = 0.05;

    /// <summary>The worst of the shares that are looked at.</summary>
    /// <param name="run">The guarded run.</param>
    /// <param name="guard">One of its fuses.</param>
    public (double Share, double Celsius) Worst(int run, Guard guard) =>
        Shares.Select(share => (Share: share, Celsius: CelsiusAt(run, guard, share)))
            .MaxBy(point => Significant.Round(point.Celsius));

    /// <summary>
    /// The smallest share of the rating, from 1 up, at which the conductor passes a temperature, or <c>null</c>.
    /// </summary>
    public double? HurtFrom(int run, Guard guard, double limitCelsius)
    {
        for (double share = 1; share <= Shares[^1] + ScanStep / 2; share += ScanStep)
        {
            if (Significant.Exceeds(CelsiusAt(run, guard, share), limitCelsius)) return share;
        }

        return null;
    }

    private double CelsiusAt(int run, Guard guard, double share)
    {
        CompleteRun described = build.Runs[run];
        ConductorChoice choice = evaluation.Decision.Conductors[run];
        int sharing = evaluation.Guards.IsGuardedPerConductor(run, guard.IsFar) && guard.Run == run ? choice.Count : 1;
        double amps = share * guard.PassingAmps / sharing / described.Bundling;
        double lasting = HeatBalance.Of(choice.Conductor).TemperatureAt(amps, described.AirCelsius);
        if (guard.Fuse.Family.OpeningBand.SlowestSeconds(share) is not { } seconds) return lasting;
        double start = Math.Min(evaluation.Currents.Celsius[run], lasting);
        return ShortCircuit.TemperatureAfter(choice.Conductor, amps, seconds, start, lasting, described.AirCelsius);
    }
}
