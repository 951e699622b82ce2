namespace Cablewright.Engine.Sources;

/// <summary>How long a battery gives a continuous current.</summary>
/// <remarks>
/// <para>t = u H (C / (I H))^k: a capacity C that was rated over H hours gives the current I for t hours, of which the share u
/// may be used. (The form C / I^k holds only for a capacity that is drawn by one ampere.)</para>
/// <para>Batteries side by side share a current so that all reach their limits together: each gives I = (C/H) (u H / t)^(1/k),
/// and t is where these add up to the whole. The sum falls as t rises, and another battery adds to it at every t, so more
/// battery never shortens the time. For like batteries it is Peukert's law for their capacities added.</para>
/// </remarks>
internal static class Peukert
{
    private const double LongestHours = 1e6;
    private const int MostHalvings = 100;

    /// <summary>
    /// Hours until batteries side by side reach their limits; 0 where nothing may be used, infinite without load.
    /// </summary>
    public static double Hours(IReadOnlyList<Cell> cells, double amps)
    {
        Cell[] usable = [.. cells.Where(cell => cell.Share > 0)];
        if (amps <= 0) return double.PositiveInfinity;
        if (usable.Length == 0) return 0;
        if (usable.Length == 1) return Continuous(usable[0].Hours(amps));
        double low = 0, high = 1;
        while (AmpsFor(usable, high) > amps)
        {
            if (double.IsInfinity(Continuous(high))) return double.PositiveInfinity;
            (low, high) = (high, high * 2);
        }

        for (int i = 0; i < MostHalvings && high - low > 1e-12 * high; i++)
        {
            double middle = (low + high) / 2;
            if (AmpsFor(usable, middle) > amps) low = middle;
            else high = middle;
        }

        return high;
    }

    private static double Continuous(double hours) => hours > LongestHours ? double.PositiveInfinity : hours;

    /// <summary>The capacity that a further battery like one of them needs for a time; 0 where they last that long.</summary>
    public static double MissingAmpHours(IReadOnlyList<Cell> cells, Cell like, double amps, double hours)
    {
        double missing = amps - AmpsFor([.. cells.Where(cell => cell.Share > 0)], hours);
        return missing <= 0 ? 0 : missing * like.RatingHours / Math.Pow(like.Share * like.RatingHours / hours, 1 / like.Exponent);
    }

    private static double AmpsFor(Cell[] cells, double hours) => cells.Sum(cell =>
        cell.AmpHours / cell.RatingHours * Math.Pow(cell.Share * cell.RatingHours / hours, 1 / cell.Exponent));

    /// <summary>A battery as Peukert's law sees it.</summary>
    /// <param name="AmpHours">C, its capacity over its rating time.</param>
    /// <param name="RatingHours">H.</param>
    /// <param name="Exponent">k.</param>
    /// <param name="Share">u, 0 to 1.</param>
    public readonly record struct Cell(double AmpHours, double RatingHours, double Exponent, double Share)
    {
        /// <summary>Hours until it reaches its limit alone.</summary>
        public double Hours(double amps) => Share * RatingHours * Math.Pow(AmpHours / (amps * RatingHours), Exponent);

        /// <summary>What may be drawn of it over its rating time.</summary>
        public double UsableAmpHours => AmpHours * Share;
    }
}
