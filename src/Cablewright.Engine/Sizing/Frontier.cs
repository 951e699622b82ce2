namespace Cablewright.Engine.Sizing;

/// <summary>
/// The least weight for each loss: pairs of volts and weight of which none is beaten in both by another, the least volts first.
/// </summary>
internal sealed class Frontier
{
    private readonly double[] volts;
    private readonly double[] weights;

    private readonly Thinning thinning;

    private Frontier(double[] volts, double[] weights, Thinning thinning, int considered)
    {
        this.volts = volts;
        this.weights = weights;
        this.thinning = thinning;
        Considered = considered;
    }

    /// <summary>Nothing lost and nothing weighed.</summary>
    public static Frontier Nothing(Thinning thinning) => new([0], [0], thinning, 1);

    /// <summary>What becomes of too many points.</summary>
    public Thinning Thinning => thinning;

    /// <summary>Of how many points it was made.</summary>
    public int Considered { get; }

    /// <summary>Whether nothing is lost and nothing weighed.</summary>
    public bool IsNothing => volts.Length == 1 && volts[0] == 0 && weights[0] == 0;

    /// <summary>How many pairs there are.</summary>
    public int Count => volts.Length;

    /// <summary>What is lost at each, the least first.</summary>
    public ReadOnlySpan<double> Volts => volts;

    /// <summary>What each weighs, the most first.</summary>
    public ReadOnlySpan<double> Weights => weights;

    /// <summary>Keeps what is not beaten. Takes the points out of the spans that hold them, in any order.</summary>
    /// <param name="lost">The volts of each; sorted in passing.</param>
    /// <param name="weighed">The weight of each.</param>
    /// <param name="thinning">What becomes of too many.</param>
    public static Frontier Of(Span<double> lost, Span<double> weighed, Thinning thinning)
    {
        int considered = lost.Length;
        lost.Sort(weighed);
        int kept = 0;
        for (int i = 0; i < lost.Length; i++)
        {
            if (kept > 0 && weighed[i] >= weighed[kept - 1]) continue;
            if (kept > 0 && lost[i] == lost[kept - 1]) kept--;
            (lost[kept], weighed[kept]) = (lost[i], weighed[i]);
            kept++;
        }

        kept = thinning.Apply(lost[..kept], weighed);
        return new Frontier(lost[..kept].ToArray(), weighed[..kept].ToArray(), thinning, considered);
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

        return points.ToFrontier(thinning);
    }

    /// <summary>The frontier of two parts side by side, which may lose the same and weigh what they weigh together.</summary>
    public Frontier Beside(Frontier other)
    {
        if (other.IsNothing) return this;
        using var points = new PointBuffer(volts.Length + other.volts.Length);
        int one = 0, two = 0;
        while (one < volts.Length || two < other.volts.Length)
        {
            double next = one == volts.Length || (two < other.volts.Length && other.volts[two] <= volts[one])
                ? other.volts[two++]
                : volts[one++];
            if (one > 0 && two > 0) points.Add(next, weights[one - 1] + other.weights[two - 1]);
        }

        return points.ToFrontier(thinning);
    }

    /// <summary>The same with so much more lost in any case.</summary>
    public Frontier Shifted(double more)
    {
        var shifted = new double[volts.Length];
        for (int i = 0; i < shifted.Length; i++) shifted[i] = volts[i] + more;
        return new Frontier(shifted, weights, thinning, 1);
    }

    /// <summary>The least weight that loses no more; infinite where there is none.</summary>
    public double WeightWithin(double limit)
    {
        int index = Array.BinarySearch(volts, limit);
        if (index < 0) index = ~index - 1;
        return index < 0 ? double.PositiveInfinity : weights[index];
    }

    /// <summary>
    /// The candidate of a run before this part with which both weigh least within a loss; where none keeps it, by the last digit
    /// of a sum or since a bound promised too much, the one that loses least.
    /// </summary>
    public int LightestBehind(ReadOnlySpan<DropOption> options, double limit)
    {
        int picked = 0;
        double least = double.PositiveInfinity;
        for (int option = 0; option < options.Length; option++)
        {
            double weight = options[option].Weight + WeightWithin(limit - options[option].Volts);
            if (weight < least || (double.IsInfinity(least) && options[option].Volts < options[picked].Volts))
                (least, picked) = (weight, option);
        }

        return picked;
    }
}
