namespace Cablewright.Engine.Numerics;

/// <summary>
/// Comparisons at the six significant digits that an answer shows, so that no verdict and no choice hangs on a digit that
/// nobody can see and that another unit of input would have set differently.
/// </summary>
public static class Significant
{
    private const int Digits = 6;

    /// <summary>A number rounded to six significant digits.</summary>
    public static double Round(double value)
    {
        if (value == 0 || !double.IsFinite(value)) return value;
        int decimals = Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        if (decimals is >= 0 and <= 15) return Math.Round(value, decimals);
        double scale = Math.Pow(10, decimals);
        return Math.Round(value * scale) / scale;
    }

    /// <summary>Whether a figure is above a limit by what can be seen.</summary>
    public static bool Exceeds(double measured, double limit) => Round(measured) > Round(limit);
}
