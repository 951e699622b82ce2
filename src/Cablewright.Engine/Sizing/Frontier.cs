namespace Cablewright.Engine.Sizing;

/// <summary>
/// The least weight for each loss: pairs of volts and weight of which none is beaten in both by another, the least volts first.
/// </summary>
internal sealed class Frontier
{
    private readonly double[] volts;
    private readonly double[] weights;

    private Frontier(double[] volts, double[] weights)
    {
        this.volts = volts;
        this.weights = weights;
    }

    /// <summary>Nothing lost and nothing weighed.</summary>
    public static Frontier Empty { get; } = new([0], [0]);

    /// <summary>Keeps what is not beaten.</summary>
    public static Frontier Of(IEnumerable<(double Volts, double Weight)> points)
    {
        (double Volts, double Weight)[] sorted = [.. points];
        Array.Sort(sorted);
        var volts = new List<double>(sorted.Length);
        var weights = new List<double>(sorted.Length);
        foreach ((double lost, double weight) in sorted)
        {
            if (weights.Count > 0 && weight >= weights[^1]) continue;
            volts.Add(lost);
            weights.Add(weight);
        }

        return new Frontier([.. volts], [.. weights]);
    }

    /// <summary>The frontier of one more run in series.</summary>
    /// <param name="options">What that run may lose and weigh.</param>
    /// <param name="limit">Volts beyond which nothing is of use.</param>
    public Frontier With(IReadOnlyList<(double Volts, double Weight)> options, double limit)
    {
        var points = new List<(double, double)>(options.Count * volts.Length);
        foreach ((double lost, double weight) in options)
        {
            for (int i = 0; i < volts.Length && volts[i] + lost <= limit; i++) points.Add((volts[i] + lost, weights[i] + weight));
        }

        return Of(points);
    }

    /// <summary>The least weight that loses no more; infinite where there is none.</summary>
    public double WeightWithin(double limit)
    {
        int index = Array.BinarySearch(volts, limit);
        if (index < 0) index = ~index - 1;
        return index < 0 ? double.PositiveInfinity : weights[index];
    }
}
