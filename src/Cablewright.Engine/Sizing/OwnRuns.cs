namespace Cablewright.Engine.Sizing;

/// <summary>The runs that carry one amplifier's current alone: the least weight for what they lose together.</summary>
internal sealed class OwnRuns
{
    private readonly int[] runs;
    private readonly DropOption[][] options;
    private readonly Frontier[] behind;
    private readonly Func<int, int, bool> mayPair;
    private readonly double limit;
    private readonly Thinning thinning;

    /// <summary>Works the frontier out.</summary>
    /// <param name="runs">The runs; where there are two or more, the first two are bound by a rule.</param>
    /// <param name="options">The candidates of every run of the build.</param>
    /// <param name="mayPair">Whether two candidates of the first two runs keep the rule.</param>
    /// <param name="limit">Volts beyond which nothing is of use.</param>
    /// <param name="thinning">What becomes of too many points.</param>
    public OwnRuns(int[] runs, DropOption[][] options, Func<int, int, bool> mayPair, double limit, Thinning thinning)
    {
        this.thinning = thinning;
        this.runs = runs;
        this.options = options;
        this.mayPair = mayPair;
        this.limit = limit;
        behind = new Frontier[runs.Length + 1];
        behind[^1] = Frontier.Nothing(thinning);
        for (int i = runs.Length - 1; i >= 2; i--) behind[i] = behind[i + 1].With(options[runs[i]], limit);
        Frontier = runs.Length switch
        {
            0 => behind[0],
            1 => behind[1].With(options[runs[0]], limit),
            _ => Paired(behind[2]),
        };
        Considered = Frontier.Considered + behind.Skip(2).Sum(part => part.Considered);
    }

    /// <summary>How many points were looked at.</summary>
    public int Considered { get; }

    /// <summary>The least weight for each loss.</summary>
    public Frontier Frontier { get; }

    /// <summary>Takes the candidates of the lightest choice that loses no more.</summary>
    /// <param name="volts">What may be lost.</param>
    /// <param name="picked">Takes the candidate of each run.</param>
    public void Pick(double volts, int[] picked)
    {
        if (runs.Length == 0) return;
        double least = double.PositiveInfinity;
        DropOption[] firsts = options[runs[0]], seconds = runs.Length > 1 ? options[runs[1]] : [default];
        Frontier rest = behind[Math.Min(2, runs.Length)];
        double left = 0;
        for (int first = 0; first < firsts.Length; first++)
        {
            for (int second = 0; second < seconds.Length; second++)
            {
                if (runs.Length > 1 && !mayPair(first, second)) continue;
                double after = volts - firsts[first].Volts - seconds[second].Volts;
                double weight = firsts[first].Weight + seconds[second].Weight + rest.WeightWithin(after);
                if (!(weight < least)) continue;
                (least, left, picked[runs[0]]) = (weight, after, first);
                if (runs.Length > 1) picked[runs[1]] = second;
            }
        }

        for (int i = 2; i < runs.Length; i++) left -= PickOne(runs[i], behind[i + 1], left, picked);
    }

    private double PickOne(int run, Frontier rest, double volts, int[] picked)
    {
        picked[run] = rest.LightestBehind(options[run], volts);
        return options[run][picked[run]].Volts;
    }

    private Frontier Paired(Frontier rest)
    {
        DropOption[] firsts = options[runs[0]], seconds = options[runs[1]];
        using var points = new PointBuffer(firsts.Length * seconds.Length);
        for (int first = 0; first < firsts.Length; first++)
        {
            for (int second = 0; second < seconds.Length; second++)
            {
                double volts = firsts[first].Volts + seconds[second].Volts;
                if (volts <= limit && mayPair(first, second)) points.Add(volts, firsts[first].Weight + seconds[second].Weight);
            }
        }

        Frontier paired = points.ToFrontier(thinning);
        if (rest.IsNothing) return paired;
        using var all = new PointBuffer(paired.Count * rest.Count);
        for (int i = 0; i < paired.Count; i++)
        {
            for (int j = 0; j < rest.Count && paired.Volts[i] + rest.Volts[j] <= limit; j++)
                all.Add(paired.Volts[i] + rest.Volts[j], paired.Weights[i] + rest.Weights[j]);
        }

        return all.ToFrontier(thinning);
    }
}
