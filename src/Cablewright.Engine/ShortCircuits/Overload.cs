using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>What a conductor reaches while its fuse takes its time over an overload.</summary>
/// <remarks>
/// <para>A fuse carries a little more than its rating continuously and a little more than that for minutes or hours. At each
/// share of its rating the conductor is heated for the longest time that the band allows, or for ever where opening is not
/// certain.</para>
/// <para>Only what passes the limit is of interest. A current below the one that holds the limit for ever is left out unsolved,
/// and one that would not reach it in the time even if no heat left.</para>
/// </remarks>
internal sealed class Overload(CompleteBuild build, DesignEvaluation evaluation)
{
    /// <summary>How far a conductor warms in a time, in runs solved.</summary>
    private const double CostOfWarming = 10;

    private static readonly double[] Shares = [1.10, 1.35, 2.00];

    private const double ScanStep = 0.05;

    /// <summary>How far a current is off the one that holds the limit before that alone decides.</summary>
    private const double Doubt = 1e-4;

    /// <summary>The hottest of the shares that are looked at, or <c>null</c> where none passes the limit.</summary>
    /// <param name="run">The protected run.</param>
    /// <param name="device">One of its fuses.</param>
    /// <param name="limitCelsius">The limit.</param>
    public (double Share, double Celsius)? Worst(int run, ProtectiveDevice device, double limitCelsius)
    {
        double holding = HoldingAmps(run, limitCelsius);
        (double Share, double Celsius)? worst = null;
        foreach (double share in Shares)
        {
            if (StaysBelow(run, device, share, holding, limitCelsius)) continue;
            double celsius = CelsiusAt(run, device, share);
            if (Significant.Exceeds(celsius, Math.Max(limitCelsius, worst?.Celsius ?? limitCelsius))) worst = (share, celsius);
        }

        return worst;
    }

    /// <summary>
    /// The smallest share of the rating, from 1 up, at which the conductor passes a temperature, or <c>null</c>.
    /// </summary>
    public double? HurtFrom(int run, ProtectiveDevice device, double limitCelsius)
    {
        double holding = HoldingAmps(run, limitCelsius);
        for (double share = 1; share <= Shares[^1] + ScanStep / 2; share += ScanStep)
        {
            if (StaysBelow(run, device, share, holding, limitCelsius)) continue;
            if (Significant.Exceeds(CelsiusAt(run, device, share), limitCelsius)) return share;
        }

        return null;
    }

    /// <summary>The current that holds one conductor of a run at a temperature for ever.</summary>
    private double HoldingAmps(int run, double celsius) =>
        HeatBalance.Of(Conductor(run)).CurrentAt(celsius, build.Runs[run].AirCelsius);

    private bool StaysBelow(int run, ProtectiveDevice device, double share, double holdingAmps, double limitCelsius)
    {
        double amps = ConductorAmps(run, device, share);
        if (amps <= holdingAmps * (1 - Doubt)) return true;
        return device.Fuse.Band.SlowestSeconds(share) is { } seconds
            && new Warming(Conductor(run), amps, build.Runs[run].AirCelsius, build.Ruleset.ShortCircuit)
                .CelsiusWithoutLoss(seconds, evaluation.Envelope.Celsius[run]) <= limitCelsius;
    }

    private double CelsiusAt(int run, ProtectiveDevice device, double share)
    {
        build.Meter.Count(CostOfWarming);
        double amps = ConductorAmps(run, device, share), air = build.Runs[run].AirCelsius;
        double continuous = HeatBalance.Of(Conductor(run)).TemperatureAt(amps, air);
        if (device.Fuse.Band.SlowestSeconds(share) is not { } seconds) return continuous;
        double start = Math.Min(evaluation.Envelope.Celsius[run], continuous);
        return new Warming(Conductor(run), amps, air, build.Ruleset.ShortCircuit).CelsiusAfter(seconds, start, continuous);
    }

    private double ConductorAmps(int run, ProtectiveDevice device, double share)
    {
        bool each = evaluation.Protection.IsProtectedPerConductor(device.End with { Run = run }) && device.Run == run;
        return share * device.TotalRatingAmps / (each ? evaluation.Design.Conductors[run].Count : 1) / build.Runs[run].Bundling;
    }

    private Conductor Conductor(int run) => evaluation.Design.Conductors[run].Conductor;
}
