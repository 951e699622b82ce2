namespace Cablewright.Engine.Numerics;

/// <summary>A quantity that lies between two bounds, and the best guess at it.</summary>
/// <remarks>
/// Products and quotients are for positive quantities; they take the bounds at the corners, so that whatever lies within the
/// factors' bounds gives a result within the result's bounds, however the errors are spread and however they hang together.
/// </remarks>
/// <param name="Estimate">The best guess.</param>
/// <param name="Least">The lower bound, included.</param>
/// <param name="Most">The upper bound, included.</param>
public readonly record struct Interval(double Estimate, double Least, double Most)
{
    /// <summary>A quantity known exactly.</summary>
    public static Interval Exactly(double value) => new(value, value, value);

    /// <summary>A measured quantity and how far off it may be; the lower bound stays above 0.</summary>
    public static Interval Within(double value, double uncertainty) =>
        new(value, Math.Max(value - uncertainty, value * SmallestShare), value + uncertainty);

    /// <summary>The product.</summary>
    public static Interval operator *(Interval left, Interval right) =>
        new(left.Estimate * right.Estimate, left.Least * right.Least, left.Most * right.Most);

    /// <summary>The quotient.</summary>
    public static Interval operator /(Interval left, Interval right) =>
        new(left.Estimate / right.Estimate, left.Least / right.Most, left.Most / right.Least);

    /// <summary>The same times an exact factor above 0.</summary>
    public Interval Times(double factor) => new(Estimate * factor, Least * factor, Most * factor);

    private const double SmallestShare = 1e-3;
}
