namespace Cablewright.Engine.Sizing;

/// <summary>The certain way of one amplifier's current in a <see cref="Relaxation"/>, and the least weight for what it may lose.</summary>
internal sealed class AmplifierWay
{
    private readonly Relaxation relaxation;
    private readonly double limit;
    private readonly double[] amps;
    private readonly Frontier[] rest;

    public AmplifierWay(SizingTask task, Relaxation relaxation, int load, double[] givenSiemens)
    {
        this.relaxation = relaxation;
        Load = load;
        int[] way = task.Paths.Of[load];
        limit = relaxation.GoalVolts[load];
        amps = [.. relaxation.Floors.RunningAmps];
        int runs = task.Build.Runs.Count;
        Private = [.. way.Where(branch => branch < runs && IsOpen(branch) && task.Paths.LoadsOn[branch].Count == 1).Order()];
        SharedAt = [.. Enumerable.Range(0, relaxation.Shared.Length).Where(i => way.Contains(relaxation.Shared[i]))];
        Fixed = [.. way.Where(branch => branch >= runs || !IsOpen(branch))];
        FixedVolts = Fixed.Sum(branch => amps[branch]
            * (branch < runs ? relaxation.Options[branch][0].Ohms : task.Evaluator.Wiring.FixedOhms[branch - runs]));
        double most = limit * (1 + Relaxation.Tolerance);
        rest = new Frontier[SharedAt.Length + 1];
        rest[^1] = Own(givenSiemens);
        for (int i = SharedAt.Length - 1; i >= 0; i--) rest[i] = rest[i + 1].With(Divided(task, relaxation.Shared[SharedAt[i]]), most);

        bool IsOpen(int run) => task.Build.Runs[run].Given is null;
    }

    public int Load { get; }

    /// <summary>The open runs that carry this amplifier's current and no other.</summary>
    public int[] Private { get; }

    /// <summary>Which of the runs to branch on lie on the way.</summary>
    public int[] SharedAt { get; }

    /// <summary>The branches of the way whose conductors are given.</summary>
    public int[] Fixed { get; }

    /// <summary>What is lost at least in those.</summary>
    public double FixedVolts { get; }

    /// <summary>The least weight of what is not yet decided on this way.</summary>
    public double LeastWeight(ReadOnlySpan<int> picks, double share)
    {
        double volts = FixedVolts;
        int decided = 0;
        for (; decided < SharedAt.Length && SharedAt[decided] < picks.Length; decided++)
        {
            int run = relaxation.Shared[SharedAt[decided]];
            volts += amps[run] * relaxation.Options[run][picks[SharedAt[decided]]].Ohms;
        }

        return rest[decided].WeightWithin(limit * share * (1 + Relaxation.Tolerance) - volts);
    }

    /// <summary>What a shared run loses and weighs for this amplifier alone.</summary>
    private (double, double)[] Divided(SizingTask task, int run) =>
        [.. relaxation.Options[run].Select(option => (amps[run] * option.Ohms, option.Weight / task.Paths.LoadsOn[run].Count))];

    /// <summary>
    /// The frontier of the amplifier's own runs; where there are two, a supply run and a return, without the pairs that break the
    /// rule for returns.
    /// </summary>
    private Frontier Own(double[] givenSiemens)
    {
        Frontier frontier = Frontier.Empty;
        int from = 0;
        if (Private.Length >= 2)
        {
            frontier = Pairs(Private[0], Private[1], givenSiemens);
            from = 2;
        }

        for (int i = from; i < Private.Length; i++)
        {
            int run = Private[i];
            frontier = frontier.With(
                [.. relaxation.Options[run].Select(option => (amps[run] * option.Ohms, option.Weight))], limit * (1 + Relaxation.Tolerance));
        }

        return frontier;
    }

    private Frontier Pairs(int one, int other, double[] givenSiemens)
    {
        double[] siemens = [.. givenSiemens];
        var points = new List<(double, double)>();
        foreach (RunOption first in relaxation.Options[one])
        {
            siemens[one] = first.SiemensMetres;
            foreach (RunOption second in relaxation.Options[other])
            {
                double volts = amps[one] * first.Ohms + amps[other] * second.Ohms;
                if (volts > limit * (1 + Relaxation.Tolerance)) continue;
                siemens[other] = second.SiemensMetres;
                if (relaxation.Returns[Load].MayHold(siemens)) points.Add((volts, first.Weight + second.Weight));
            }
        }

        return Frontier.Of(points);
    }
}
