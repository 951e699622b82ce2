using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Wiring;

/// <summary>The worst of its operating points, run by run and amplifier by amplifier.</summary>
/// <remarks>
/// Peak currents, drop and terminal voltage are those with the engine running, since the drop is judged against the charging
/// voltage. Heat and continuous currents are the worst of all cases, the lowest supply voltage among them where it lasts.
/// </remarks>
internal sealed class OperatingEnvelope
{
    /// <summary>Far below any current of interest, far above what rounding leaves of none.</summary>
    private const double LeastAmps = 1e-6;

    private readonly OperatingPoint[] worstPoint;

    public OperatingEnvelope(IReadOnlyList<OperatingPoint> points, bool lastsAtLowest)
    {
        OperatingPoint[] running = [.. points.Where(point => point.Case is not OperatingCase.LowVoltage)];
        IReadOnlyList<OperatingPoint> lasting = lastsAtLowest ? points : running;
        int runs = points[0].PeakAmps.Length, amplifiers = points[0].LoadVolts.Length;
        PeakAmps = new double[runs];
        Ohms = new double[runs];
        ThermalAmps = new double[runs];
        Celsius = new double[runs];
        for (int run = 0; run < runs; run++)
        {
            foreach (OperatingPoint point in running)
            {
                if (Math.Abs(point.PeakAmps[run]) < PeakAmps[run]) continue;
                PeakAmps[run] = Math.Abs(point.PeakAmps[run]);
                Ohms[run] = point.Ohms[run];
            }

            foreach (OperatingPoint point in lasting)
            {
                ThermalAmps[run] = Math.Max(ThermalAmps[run], Math.Abs(point.ThermalAmps[run]));
                Celsius[run] = Math.Max(Celsius[run], point.Celsius[run]);
            }
        }

        worstPoint = new OperatingPoint[amplifiers];
        TerminalVolts = new double[amplifiers];
        LoadAmps = new double[amplifiers];
        ThermalLoadAmps = new double[amplifiers];
        for (int i = 0; i < amplifiers; i++)
        {
            OperatingPoint worst = WorstFor(i, running);
            worstPoint[i] = worst;
            TerminalVolts[i] = Math.Max(0, worst.LoadVolts[i]);
            LoadAmps[i] = worst.LoadAmps[i];
            foreach (OperatingPoint point in lasting)
                ThermalLoadAmps[i] = Math.Max(ThermalLoadAmps[i], point.ThermalLoadAmps[i]);
        }

        StrapAmps = [.. points[0].StrapAmps.Select((_, strap) => lasting.Max(point => point.StrapAmps[strap]))];
        BodyVolts = running.Max(point => point.BodyVolts);
        LowestVolts = Math.Max(0, points.Min(point => point.LoadVolts.Min()));
    }

    /// <summary>What the solver leaves of a current that does not flow is no current.</summary>
    public static double Flowing(double amps) => amps < LeastAmps ? 0 : amps;

    private static OperatingPoint WorstFor(int amplifier, OperatingPoint[] running) =>
        running is [var only] ? only : running.MinBy(point => Significant.Round(point.LoadVolts[amplifier]))!;

    /// <summary>The operating point at which an amplifier's voltage is lowest, engine running.</summary>
    public OperatingPoint WorstPointOf(int amplifier) => worstPoint[amplifier];

    /// <summary>Largest current of each run at full output, engine running.</summary>
    public double[] PeakAmps { get; }

    /// <summary>Resistance of each run when it carries that.</summary>
    public double[] Ohms { get; }

    /// <summary>Largest root-mean-square current of each run.</summary>
    public double[] ThermalAmps { get; }

    /// <summary>Highest temperature of each run's conductor.</summary>
    public double[] Celsius { get; }

    /// <summary>Lowest voltage at each amplifier at full output, engine running; 0 where diodes take all of it.</summary>
    public double[] TerminalVolts { get; }

    /// <summary>Its current then.</summary>
    public double[] LoadAmps { get; }

    /// <summary>Largest root-mean-square current of each amplifier.</summary>
    public double[] ThermalLoadAmps { get; }

    /// <summary>Largest root-mean-square current of each assumed strap.</summary>
    public double[] StrapAmps { get; }

    /// <summary>Largest voltage over the body and the charging battery's strap, engine running.</summary>
    public double BodyVolts { get; }

    /// <summary>Lowest voltage at any amplifier in any case.</summary>
    public double LowestVolts { get; }
}
