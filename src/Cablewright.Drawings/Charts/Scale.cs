namespace Cablewright.Drawings.Charts;

/// <summary>Where the figures of one axis stand in the picture.</summary>
/// <param name="Least">The figure at its start.</param>
/// <param name="Most">The figure at its end.</param>
/// <param name="Start">Where it starts, in pixels.</param>
/// <param name="End">Where it ends.</param>
/// <param name="IsLogarithmic">Whether each power of ten takes up as much as any other.</param>
internal sealed record Scale(double Least, double Most, double Start, double End, bool IsLogarithmic)
{
    private const double AboutTicks = 5;

    /// <summary>Where a figure stands; what lies beyond an end stands at it.</summary>
    public double At(double value)
    {
        double share = IsLogarithmic
            ? Math.Log(Math.Max(value, Least) / Least) / Math.Log(Most / Least)
            : (value - Least) / (Most - Least);
        return Start + Math.Clamp(share, 0, 1) * (End - Start);
    }

    /// <summary>The figures that are written beside it: powers of ten, or round steps.</summary>
    public IEnumerable<double> Ticks()
    {
        if (IsLogarithmic)
        {
            // Over less than two powers of ten these alone would be too few.
            double[] parts = Most / Least < 100 ? [1, 2, 5] : [1];
            for (double power = Math.Pow(10, Math.Floor(Math.Log10(Least))); power <= Most; power *= 10)
            {
                foreach (double tick in parts.Select(part => part * power))
                {
                    if (tick >= Least * (1 - 1e-9) && tick <= Most * (1 + 1e-9)) yield return tick;
                }
            }

            yield break;
        }

        double step = StepOf((Most - Least) / AboutTicks);
        int first = (int)Math.Ceiling(Least / step - 1e-9), last = (int)Math.Floor(Most / step + 1e-9);
        for (int i = first; i <= last; i++) yield return i * step;
    }

    private static double StepOf(double rough)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return power * (rough / power) switch { <= 1 => 1, <= 2 => 2, <= 5 => 5, _ => 10 };
    }
}
