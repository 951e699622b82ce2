using Cablewright.Engine.Builds;

namespace Cablewright.Engine.Sources;

/// <summary>What an alternator can give at a speed of its shaft.</summary>
/// <remarks>
/// I(n) = I∞ √(1 − (n₀/n)²): above n₀ the voltage that the rotor induces passes that of the battery, and at high speed the
/// stator's own reactance, which grows with the speed like that voltage, holds the current at I∞. Through two points it follows
/// from I² = I∞² − I∞² n₀²/n², a straight line over 1/n²; through more by least squares in I.
/// </remarks>
/// <param name="LimitAmps">I∞.</param>
/// <param name="StartRpm">n₀, turns of the shaft in a minute.</param>
internal sealed record AlternatorCurve(double LimitAmps, double StartRpm)
{
    private const int MostHalvings = 60;
    private static readonly double GoldenSection = (Math.Sqrt(5) - 1) / 2;

    /// <summary>The curve through two points; flat where the current does not rise.</summary>
    public static AlternatorCurve Through(OutputPoint low, OutputPoint high)
    {
        if (high.Amps <= low.Amps || high.ShaftRpm <= low.ShaftRpm) return new AlternatorCurve(Math.Max(low.Amps, high.Amps), 0);
        double lowShare = 1 / (low.ShaftRpm * low.ShaftRpm), highShare = 1 / (high.ShaftRpm * high.ShaftRpm);
        double slope = (high.Amps * high.Amps - low.Amps * low.Amps) / (lowShare - highShare);
        double limitSquared = high.Amps * high.Amps + slope * highShare;
        return new AlternatorCurve(Math.Sqrt(limitSquared), Math.Sqrt(slope / limitSquared));
    }

    /// <summary>The curve nearest to points, two or more.</summary>
    public static AlternatorCurve Nearest(IReadOnlyList<OutputPoint> points)
    {
        double low = 0, high = points.Min(point => point.ShaftRpm);
        for (int i = 0; i < MostHalvings; i++)
        {
            double left = high - GoldenSection * (high - low), right = low + GoldenSection * (high - low);
            if (SquaresAt(points, left) <= SquaresAt(points, right)) high = right;
            else low = left;
        }

        return FromStart(points, (low + high) / 2);
    }

    /// <summary>Output current at a speed of the shaft; 0 below the one at which it begins.</summary>
    public double AmpsAt(double shaftRpm)
    {
        double share = StartRpm / shaftRpm;
        return share >= 1 ? 0 : LimitAmps * Math.Sqrt(1 - share * share);
    }

    /// <summary>The speed of the shaft from which it gives a current, or <c>null</c> where it never does.</summary>
    public double? RpmFor(double amps)
    {
        double share = amps / LimitAmps;
        return share >= 1 ? null : StartRpm / Math.Sqrt(1 - share * share);
    }

    private static AlternatorCurve FromStart(IReadOnlyList<OutputPoint> points, double startRpm)
    {
        var shape = new AlternatorCurve(1, startRpm);
        double product = points.Sum(point => point.Amps * shape.AmpsAt(point.ShaftRpm));
        double squares = points.Sum(point => shape.AmpsAt(point.ShaftRpm) * shape.AmpsAt(point.ShaftRpm));
        return shape with { LimitAmps = product / squares };
    }

    private static double SquaresAt(IReadOnlyList<OutputPoint> points, double startRpm)
    {
        AlternatorCurve curve = FromStart(points, startRpm);
        return points.Sum(point => (point.Amps - curve.AmpsAt(point.ShaftRpm)) * (point.Amps - curve.AmpsAt(point.ShaftRpm)));
    }
}
