using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Audits;

/// <summary>From a metal area of any amount back to the sizes of the trade.</summary>
internal static class TrueSize
{
    private static readonly ConductorSize[] Gauges = [.. ConductorSize.All.Where(size => !size.IsMetric)];

    private static readonly ConductorSize[] Metrics = [.. ConductorSize.All.Where(size => size.IsMetric)];

    /// <summary>
    /// The AWG number of an area, as a real number: the inverse of ASTM B258's d = 0.127 mm × 92^((36 − n)/39).
    /// </summary>
    public static double Gauge(double areaMm2)
    {
        double diameterMm = Math.Sqrt(4 / Math.PI * areaMm2);
        return 36 - 39 * Math.Log(diameterMm / 0.127) / Math.Log(92);
    }

    public static Interval Gauge(Interval areaMm2) => new(Gauge(areaMm2.Estimate), Gauge(areaMm2.Most), Gauge(areaMm2.Least));

    /// <summary>The least area that a label allows, in mm².</summary>
    public static double LeastAreaOf(ConductorSize size, Ruleset ruleset) =>
        size.IsMetric ? size.MetalAreaMm2 : size.MetalAreaMm2 * ruleset.Audit.LeastOfClaim.Value;

    public static ConductorSize? LargestGaugeFor(double areaMm2, Ruleset ruleset) => LargestFor(Gauges, areaMm2, ruleset);

    public static ConductorSize? LargestMetricFor(double areaMm2, Ruleset ruleset) => LargestFor(Metrics, areaMm2, ruleset);

    /// <summary>What may be carried continuously, between two gauges along the straight line of the logarithms.</summary>
    /// <returns>Amperes; <c>null</c> outside 22 to 4/0 AWG.</returns>
    public static double? AmpsOf(
        double areaMm2, Material material, double insulationCelsius, double airCelsius, Ruleset ruleset)
    {
        int above = Array.FindIndex(Gauges, size => size.MetalAreaMm2 >= areaMm2);
        if (above < 0 || (above == 0 && areaMm2 < Gauges[0].MetalAreaMm2)) return null;
        double upper = Amps(Gauges[above]);
        if (above == 0) return upper;
        double lower = Amps(Gauges[above - 1]), smaller = Gauges[above - 1].MetalAreaMm2;
        double share = Math.Log(areaMm2 / smaller) / Math.Log(Gauges[above].MetalAreaMm2 / smaller);
        return lower <= 0 ? 0 : lower * Math.Pow(upper / lower, share);

        double Amps(ConductorSize size) =>
            Ampacity.Of(Conductor.Of(size, material), insulationCelsius, airCelsius, 1, ruleset).LimitAmps;
    }

    private static ConductorSize? LargestFor(ConductorSize[] sizes, double areaMm2, Ruleset ruleset) =>
        Array.FindLast(sizes, size => !Significant.Exceeds(LeastAreaOf(size, ruleset), areaMm2));
}
