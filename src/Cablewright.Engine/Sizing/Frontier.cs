namespace Cablewright.Engine.Sizing;

/// <summary>
/// The least weight for each loss: pairs of volts and weight of which none is beaten in both by another, the least volts first.
/// </summary>
internal sealed class Frontier
{
    /// <summary>Beyond so many points neighbours are taken together, each group at the least of both figures.</summary>
    private const int Most = 2048;

    private readonly double[] volts;
    private readonly double[] weights;

    private Frontier(double[] volts, double[] weights)
    {
        this.volts = volts;
        this.weights = weights;
    }

    /// <summary>Nothing lost and nothing weighed.</summary>
    public static Frontier Empty { get; } = new([0], [0]);

    /// <summary>How many pairs there are.</summary>
    public int Count => volts.Length;

    /// <summary>What is lost at each, the least first.</summary>
    public ReadOnlySpan<double> Volts => volts;

    /// <summary>What each weighs, the most first.</summary>
    public ReadOnlySpan<double> Weights => weights;

    /// <summary>Keeps what is not beaten. Takes the points out of the spans that hold them, in any order.</summary>
    /// <param name="lost">The volts of each; sorted in passing.</param>
    /// <param name="weighed">The weight of each.</param>
    public static Frontier Of(Span<double> lost, Span<double> weighed)
    {
        lost.Sort(weighed);
        int kept = 0;
        for (int i = 0; i < lost.Length; i++)
        {
            if (kept > 0 && weighed[i] >= weighed[kept - 1]) continue;
            if (kept > 0 && lost[i] == lost[kept - 1]) kept--;
            (lost[kept], weighed[kept]) = (lost[i], weighed[i]);
            kept++;
        }

        if (kept > Most) kept = Thinned(lost[..kept], weighed);
        return new Frontier(lost[..kept].ToArray(), weighed[..kept].ToArray());
    }

    /// <summary>The frontier of one more run in series.</summary>
    /// <param name="options">What that run may lose and weigh.</param>
    /// <param name="limit">Volts beyond which nothing is of use.</param>
    public Frontier With(ReadOnlySpan<DropOption> options, double limit)
    {
        using var points = new PointBuffer(options.Length * volts.Length);
        foreach (DropOption option in options)
        {
            for (int i = 0; i < volts.Length && volts[i] + option.Volts <= limit; i++)
                points.Add(volts[i] + option.Volts, weights[i] + option.Weight);
        }

        return points.ToFrontier();
    }

    /// <summary>The frontier of two parts side by side, which may lose the same and weigh what they weigh together.</summary>
    public Frontier Beside(Frontier other)
    {
        if (other.volts.Length == 1 && other.volts[0] == 0 && other.weights[0] == 0) return this;
        using var points = new PointBuffer(volts.Length + other.volts.Length);
        int one = 0, two = 0;
        while (one < volts.Length || two < other.volts.Length)
        {
            double next = one == volts.Length || (two < other.volts.Length && other.volts[two] <= volts[one])
                ? other.volts[two++]
                : volts[one++];
            if (one > 0 && two > 0) points.Add(next, weights[one - 1] + other.weights[two - 1]);
        }

        return points.ToFrontier();
    }

    /// <summary>The same with so much more lost in any case.</summary>
    public Frontier Shifted(double more)
    {
        var shifted = new double[volts.Length];
        for (int i = 0; i < shifted.Length; i++) shifted[i] = volts[i] + more;
        return new Frontier(shifted, weights);
    }

    /// <summary>The same with what another part, which may lose the rest, weighs besides.</summary>
    public Frontier Completed(Frontier other, double limit)
    {
        using var points = new PointBuffer(volts.Length);
        for (int i = 0; i < volts.Length; i++)
        {
            double weight = weights[i] + other.WeightWithin(limit - volts[i]);
            if (double.IsFinite(weight)) points.Add(volts[i], weight);
        }

        return points.ToFrontier();
    }

    /// <summary>The least weight that loses no more; infinite where there is none.</summary>
    public double WeightWithin(double limit)
    {
        int index = Array.BinarySearch(volts, limit);
        if (index < 0) index = ~index - 1;
        return index < 0 ? double.PositiveInfinity : weights[index];
    }

    /// <summary>The least loss that weighs less; infinite where there is none.</summary>
    public double VoltsBelow(double weight)
    {
        int low = 0, high = weights.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (weights[middle] < weight) high = middle;
            else low = middle + 1;
        }

        return low == volts.Length ? double.PositiveInfinity : volts[low];
    }

    private static int Thinned(Span<double> lost, Span<double> weighed)
    {
        double cell = (lost[^1] - lost[0]) / Most;
        int kept = 0;
        for (int i = 0; i < lost.Length; i++)
        {
            if (kept > 0 && lost[i] - lost[kept - 1] < cell) weighed[kept - 1] = weighed[i];
            else
            {
                (lost[kept], weighed[kept]) = (lost[i], weighed[i]);
                kept++;
            }
        }

        return kept;
    }
}
