using Cablewright.Engine.Data;
using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Fuses;

/// <summary>One point of a time-current band.</summary>
/// <param name="ShareOfRating">Current over rated current.</param>
/// <param name="FastestSeconds">The fuse holds for at least this long.</param>
/// <param name="SlowestSeconds">It has opened after this long; <c>null</c> where it need not open.</param>
/// <param name="Source">Where the point comes from.</param>
/// <param name="Provenance">How it was come by.</param>
public sealed record TimeCurrentPoint(
    double ShareOfRating, double FastestSeconds, double? SlowestSeconds, string Source, string Provenance);

/// <summary>What is left of a fuse's continuous current in hot air.</summary>
/// <param name="Celsius">Air around the fuse.</param>
/// <param name="Share">Continuous current over continuous current at room temperature.</param>
/// <param name="Source">Where the point comes from.</param>
/// <param name="Provenance">How it was come by.</param>
public sealed record DeratingPoint(double Celsius, double Share, string Source, string Provenance);

/// <summary>
/// Between which times a fuse opens at a current: the published band of its family, straight between its points on logarithmic
/// scales. Beyond its last point both edges go on as a constant I²t, as short circuits do, the slow one never below the time that
/// the arc burns.
/// </summary>
public sealed class TimeCurrentBand
{
    private readonly TimeCurrentPoint[] points;
    private readonly TimeCurrentPoint[] certain;

    /// <summary>A band.</summary>
    /// <param name="points">Its points, the smallest current first.</param>
    /// <param name="uncertainty">By which factor its times may be off, either way; 1 where it was read.</param>
    /// <param name="arcingSeconds">How long the arc burns when the element has melted.</param>
    internal TimeCurrentBand(IReadOnlyList<TimeCurrentPoint> points, SourcedNumber uncertainty, SourcedNumber arcingSeconds)
    {
        Uncertainty = uncertainty;
        ArcingSeconds = arcingSeconds;
        this.points = [.. points];
        certain = [.. points.Where(point => point.SlowestSeconds is not null)];
    }

    /// <summary>The points, the smallest current first.</summary>
    public IReadOnlyList<TimeCurrentPoint> Points => points;

    /// <summary>The smallest current, over rated current, at which opening is certain.</summary>
    public double CertainFrom => certain[0].ShareOfRating;

    /// <summary>By which factor its times may be off, either way, and why.</summary>
    public SourcedNumber Uncertainty { get; }

    /// <summary>How long the arc burns when the element has melted.</summary>
    public SourcedNumber ArcingSeconds { get; }

    /// <summary>Whether its times may be taken as they stand.</summary>
    public bool IsRead => !Significant.Exceeds(Uncertainty.Value, 1);

    /// <summary>Where the band comes from.</summary>
    public string Source => certain[0].Source;

    /// <summary>The longest time until the fuse has opened, in seconds; <c>null</c> where opening is not certain.</summary>
    public double? SlowestSeconds(double shareOfRating) => shareOfRating < CertainFrom
        ? null
        : Between(
            certain, shareOfRating, point => point.SlowestSeconds!.Value,
            Math.Max(
                ArcingSeconds.Value,
                certain[^1].SlowestSeconds!.Value * Squared(certain[^1].ShareOfRating / shareOfRating)));

    /// <summary>The shortest time that the fuse holds, in seconds; infinite where it carries the current continuously.</summary>
    public double FastestSeconds(double shareOfRating)
    {
        if (shareOfRating < points[0].ShareOfRating) return double.PositiveInfinity;
        double beyond = points[^1].FastestSeconds * Squared(points[^1].ShareOfRating / shareOfRating);
        return Between(points, shareOfRating, point => point.FastestSeconds, beyond);
    }

    private static double Squared(double ratio) => ratio * ratio;

    private static double Between(TimeCurrentPoint[] edge, double share, Func<TimeCurrentPoint, double> seconds, double beyond)
    {
        int above = Array.FindIndex(edge, point => point.ShareOfRating >= share);
        if (above < 0) return beyond;
        if (above == 0 || edge[above].ShareOfRating == share) return seconds(edge[above]);
        TimeCurrentPoint from = edge[above - 1], to = edge[above];
        double along = Math.Log(share / from.ShareOfRating) / Math.Log(to.ShareOfRating / from.ShareOfRating);
        return seconds(from) * Math.Pow(seconds(to) / seconds(from), along);
    }
}
