namespace Cablewright.Engine.Sizing;

/// <summary>What becomes of a <see cref="Frontier"/> of more points than anyone could go on with.</summary>
/// <remarks>
/// For a bound, neighbours are taken together at the least of both figures, so that no choice lies below. For a choice, one of
/// the neighbours stays as it is, best one on the convex hull: sums of such points are on the hull of the sums, so what is lost
/// does not grow with the number of runs in series. The one of least loss always stays.
/// </remarks>
/// <param name="Most">How many points may stay.</param>
/// <param name="IsBound">Whether a bound is sought.</param>
internal readonly record struct Thinning(int Most, bool IsBound)
{
    private const int Usual = 2048;
    private const int Least = 64;

    /// <summary>About how many points may be looked at in a problem.</summary>
    private const int InAll = 1 << 20;

    /// <summary>What a problem of so many candidates, those of all its runs together, allows.</summary>
    public static Thinning For(int candidates, bool isBound) =>
        new(Math.Clamp(InAll / Math.Max(candidates, 1), Least, Usual), isBound);

    /// <summary>Thins points of which none is beaten, the least lost first; they stay where they are.</summary>
    /// <returns>How many are left.</returns>
    public int Apply(Span<double> lost, Span<double> weighed) => lost.Length <= Most ? lost.Length
        : IsBound ? Lowered(lost, weighed)
        : Picked(lost, weighed);

    private int Lowered(Span<double> lost, Span<double> weighed)
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

    private int Picked(Span<double> lost, Span<double> weighed)
    {
        bool[] isOnHull = OnHull(lost, weighed);
        double cell = (lost[^1] - lost[0]) / Most;
        int kept = 0;
        bool hasHull = false;
        double from = double.NegativeInfinity;
        for (int i = 0; i < lost.Length; i++)
        {
            bool isNext = lost[i] - from >= cell;
            if (!isNext && (hasHull || !isOnHull[i])) continue;
            if (isNext) (from, hasHull) = (lost[i], false);
            else kept--;
            hasHull |= isOnHull[i];
            (lost[kept], weighed[kept]) = (lost[i], weighed[i]);
            kept++;
        }

        return kept;
    }

    private static bool[] OnHull(ReadOnlySpan<double> lost, ReadOnlySpan<double> weighed)
    {
        var hull = new int[lost.Length];
        int count = 0;
        for (int i = 0; i < lost.Length; i++)
        {
            while (count > 1 && IsAbove(hull[count - 2], hull[count - 1], i, lost, weighed)) count--;
            hull[count++] = i;
        }

        var isOnHull = new bool[lost.Length];
        for (int i = 0; i < count; i++) isOnHull[hull[i]] = true;
        return isOnHull;
    }

    private static bool IsAbove(int before, int point, int after, ReadOnlySpan<double> lost, ReadOnlySpan<double> weighed) =>
        (weighed[point] - weighed[before]) * (lost[after] - lost[before])
            >= (weighed[after] - weighed[before]) * (lost[point] - lost[before]);
}
