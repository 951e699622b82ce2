namespace Cablewright.Engine.Sizing;

/// <summary>What is proven of what each amplifier loses in the branches that it shares with others.</summary>
internal sealed class SharedVolts
{
    public SharedVolts(
        SizingTask task, Relaxation relaxation, int[][] shared, double[] leastOhms, double[] mostOhms, LoadAmps[] amps)
    {
        Running = Lost(leastOhms, branch => Sum(branch, load => amps[load].Running));
        AtLowest = Lost(leastOhms, branch => relaxation.LowestAmpsOn(branch, amps));
        MostRunning = Lost(mostOhms, branch => Sum(branch, load => amps[load].MostRunning));
        MostAtLowest = Lost(mostOhms, branch => Sum(branch, load => amps[load].MostAtLowest));

        double Sum(int branch, Func<int, double> of) => task.Paths.LoadsOn[branch].Sum(of);

        double[] Lost(double[] ohms, Func<int, double> ampsOn)
        {
            var volts = new double[ohms.Length];
            foreach (int branch in shared.SelectMany(way => way).Distinct()) volts[branch] = ohms[branch] * ampsOn(branch);
            return [.. shared.Select(way => way.Sum(branch => volts[branch]))];
        }
    }

    /// <summary>The least, engine running.</summary>
    public double[] Running { get; }

    /// <summary>The least at the lowest supply voltage.</summary>
    public double[] AtLowest { get; }

    /// <summary>The most while fuses are chosen, engine running.</summary>
    public double[] MostRunning { get; }

    /// <summary>The most while fuses are chosen, at the lowest supply voltage.</summary>
    public double[] MostAtLowest { get; }
}
