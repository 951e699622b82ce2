using System.Buffers;

namespace Cablewright.Engine.Sizing;

/// <summary>Points on their way into a <see cref="Frontier"/>, in memory that is used again.</summary>
internal ref struct PointBuffer(int most)
{
    private readonly double[] volts = ArrayPool<double>.Shared.Rent(Math.Max(most, 1));
    private readonly double[] weights = ArrayPool<double>.Shared.Rent(Math.Max(most, 1));
    private int count;

    public void Add(double lost, double weighed)
    {
        volts[count] = lost;
        weights[count++] = weighed;
    }

    public readonly Frontier ToFrontier(Thinning thinning) =>
        Frontier.Of(volts.AsSpan(0, count), weights.AsSpan(0, count), thinning);

    public readonly void Dispose()
    {
        ArrayPool<double>.Shared.Return(volts);
        ArrayPool<double>.Shared.Return(weights);
    }
}
