using System.Globalization;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Sources;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: output curves of two alternators and a rating label as the table names them; the fits worked out by hand.
/// </summary>
public class AlternatorCurveTests
{
    /// <summary>The printed fits are rounded to 0.1 A and 10 turns a minute, which is up to 0.5 A on the steep part.</summary>
    private const double Rounding = 0.5;
    private const double Worst = 1.3;

    public static TheoryData<string, double, double, string> Fits()
    {
        var fits = new TheoryData<string, double, double, string>();
        foreach (PublishedRow row in PublishedTable.Read("alternator-fits"))
            fits.Add(row["unit"], row.Number("limit_a"), row.Number("start_rpm"), row["residuals_a"]);
        return fits;
    }

    public static TheoryData<string> Units() =>
        [.. PublishedTable.Read("alternator-output").Select(row => row["unit"]).Distinct()];

    [Theory]
    [MemberData(nameof(Fits))]
    public void The_nearest_curve_is_the_printed_fit_and_misses_no_point_by_more_than_1_3_amperes(
        string unit, double limit, double start, string residuals)
    {
        OutputPoint[] points = PointsOf(unit);
        var curve = AlternatorCurve.Nearest(points);
        Near.Relative(limit, curve.LimitAmps, 0.005, unit + " limit, A");
        Near.Absolute(start, curve.StartRpm, 10, unit + " start, rpm");
        double[] printed = [.. residuals.Split(';').Select(text => double.Parse(text, CultureInfo.InvariantCulture))];
        foreach ((OutputPoint point, double miss) in points.Zip(printed))
        {
            double own = curve.AmpsAt(point.ShaftRpm) - point.Amps;
            Near.Absolute(miss, own, Rounding, $"{unit} at {point.ShaftRpm} rpm, miss in A");
            Assert.True(Math.Abs(own) <= Worst + 0.05, $"{unit} misses {point.ShaftRpm} rpm by {own} A");
        }

        Assert.True(SquaresOf(points, curve) <= SquaresOf(points, new AlternatorCurve(limit, start)));
    }

    /// <summary>Least squares: moving the fit either way never brings it nearer to the points.</summary>
    [Theory]
    [MemberData(nameof(Units))]
    public void No_neighbouring_curve_is_nearer(string unit)
    {
        OutputPoint[] points = PointsOf(unit);
        var best = AlternatorCurve.Nearest(points);
        foreach (double amps in new[] { -0.5, 0, 0.5 })
        {
            foreach (double rpm in new[] { -5.0, 0, 5 })
            {
                var other = new AlternatorCurve(best.LimitAmps + amps, best.StartRpm + rpm);
                Assert.True(SquaresOf(points, best) <= SquaresOf(points, other) + 1e-6, $"{unit} {amps} A {rpm} rpm");
            }
        }
    }

    /// <summary>
    /// 50 A at 1500 and 120 A at 6000: I∞² = (120² − 50²/16) / (1 − 1/16) = 15 193.3, I∞ = 123.262 A; n₀ = 1500 √(1 − 50²/I∞²)
    /// = 1371.05.
    /// </summary>
    [Fact]
    public void The_curve_of_a_rating_label_passes_both_its_figures()
    {
        OutputPoint[] label = PointsOf("J");
        var curve = AlternatorCurve.Through(label[0], label[1]);
        Near.Relative(123.262, curve.LimitAmps, 1e-5, "limit, A");
        Near.Relative(1371.05, curve.StartRpm, 1e-5, "start, rpm");
        Assert.All(label, point => Near.Relative(point.Amps, curve.AmpsAt(point.ShaftRpm), 1e-12, "label, A"));
    }

    [Theory]
    [MemberData(nameof(Units))]
    public void The_speed_for_a_current_is_the_inverse_of_the_current_at_a_speed(string unit)
    {
        var curve = AlternatorCurve.Nearest(PointsOf(unit));
        for (double amps = 1; amps < curve.LimitAmps; amps += 7)
            Near.Relative(amps, curve.AmpsAt(curve.RpmFor(amps)!.Value), 1e-9, $"{unit}, A");
        Assert.Null(curve.RpmFor(curve.LimitAmps));
        Assert.Equal(0, curve.AmpsAt(curve.StartRpm));
        Assert.Equal(0, curve.AmpsAt(curve.StartRpm / 2));
    }

    /// <summary>
    /// The same unit by its curve and by its rating alone, which the curve gives at 6000 turns: what it gives at idle is within a
    /// tenth, and by a label of 50/120 A the same.
    /// </summary>
    [Theory]
    [InlineData("P", 0.1)]
    [InlineData("M cold", 0.1)]
    [InlineData("J", 1e-4)]
    public void A_unit_gives_as_much_at_idle_however_it_is_described(string unit, double tolerance)
    {
        OutputPoint[] points = PointsOf(unit);
        double rated = AlternatorCurve.Nearest(points).AmpsAt(6000);
        Near.Relative(
            IdleOf(new Alternator { RatedAmps = rated, OutputPoints = points }), IdleOf(new Alternator { RatedAmps = rated }),
            tolerance, unit + " at idle, A");
        if (unit != "J") return;
        Near.Relative(
            IdleOf(new Alternator { RatedAmps = 120, LowSpeedAmps = 50 }), IdleOf(new Alternator { RatedAmps = 120 }), tolerance,
            "by its label, A");
    }

    private static double IdleOf(Alternator alternator)
    {
        Build build = SampleBuilds.OneAmplifier();
        return Protection.Drawn.ModelOf(build with { Vehicle = build.Vehicle with { Alternator = alternator } })
            .Build.Supply.IdleAmps!.Value;
    }

    private static OutputPoint[] PointsOf(string unit) =>
        [.. PublishedTable.Read("alternator-output").Where(row => row["unit"] == unit)
            .Select(row => new OutputPoint(row.Number("shaft_rpm"), row.Number("amps")))];

    private static double SquaresOf(OutputPoint[] points, AlternatorCurve curve) =>
        points.Sum(point => Math.Pow(point.Amps - curve.AmpsAt(point.ShaftRpm), 2));
}
