using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Audits;

/// <summary>The true area of a cable from what was measured, by each way and by all together.</summary>
/// <remarks>
/// <para>From strands A = n π d² / 4. From resistance A = ρ₂₀ k l (1 + α (T − 20)) / R. From mass A = m / (D k l).</para>
/// <para>Only the first does without the metal. A metal is possible where the intervals by all ways have an area in
/// common.</para>
/// <list type="table">
/// <item><term>n, d</term><description>Count and diameter of the strands, mm.</description></item>
/// <item><term>k</term><description>Lay factor: strand length over cable length; 1 for a solid wire.</description></item>
/// <item><term>ρ₂₀, α, D</term><description>Resistivity at 20 °C, its temperature coefficient, density of the
/// metal.</description></item>
/// </list>
/// </remarks>
internal static class AreaFinder
{
    private const double CubicMetresPerMetreMm2 = 1e-6;

    /// <summary>The area by each way that was measured, in mm², had the cable this metal.</summary>
    public static IReadOnlyList<AreaByWay> ByEachWay(Bench bench, MetalRange metal)
    {
        List<AreaByWay> areas = [];
        if (bench.AreaByStrands is { } strands) areas.Add(new AreaByWay(AuditWay.Strands, strands));
        if (bench.OhmsPerMetreAt20(metal.Properties) is { } ohms)
            areas.Add(new AreaByWay(AuditWay.Resistance, metal.ResistivityOhmMm2PerMetre / ohms));
        if (bench.KilogramsPerMetre is { } kilograms)
            areas.Add(new AreaByWay(
                AuditWay.Mass, kilograms / metal.DensityKilogramsPerCubicMetre.Times(CubicMetresPerMetreMm2)));
        return areas;
    }

    /// <summary>
    /// The area that all ways have in common, best guessed by the way that leaves the least open; <c>null</c> where they have
    /// none.
    /// </summary>
    public static Interval? Common(IReadOnlyList<AreaByWay> areas)
    {
        double least = areas.Max(way => way.AreaMm2.Least), most = areas.Min(way => way.AreaMm2.Most);
        if (least > most) return null;
        double guess = areas.MinBy(way => way.AreaMm2.Most / way.AreaMm2.Least)!.AreaMm2.Estimate;
        return new Interval(Math.Clamp(guess, least, most), least, most);
    }

    /// <summary>Everything between the least and the most that any way allows.</summary>
    public static Interval Hull(IReadOnlyList<AreaByWay> areas)
    {
        double least = areas.Min(way => way.AreaMm2.Least), most = areas.Max(way => way.AreaMm2.Most);
        return new Interval(areas.Average(way => way.AreaMm2.Estimate), least, most);
    }

    /// <summary>How far apart the best guesses by the several ways are, as a ratio; 1 where they agree.</summary>
    public static double Spread(IReadOnlyList<AreaByWay> areas) =>
        areas.Max(way => way.AreaMm2.Estimate) / areas.Min(way => way.AreaMm2.Estimate);
}
