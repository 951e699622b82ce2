using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Heat;

/// <summary>How long a conductor withstands a current.</summary>
/// <remarks>
/// <para>Up to 5 s no heat leaves: t = (k S / I)², k² = Q (β + 20) / ρ₂₀ · ln((β + θf) / (β + θi)) (IEC 60364-4-43 and
/// -5-54).</para>
/// <para>Above 5 s some does, by <see cref="Warming"/>, and the time is without end once what leaves keeps up.</para>
/// <list type="table">
/// <item><term>S, I</term><description>Metal area, mm²; current in one conductor, A.</description></item>
/// <item><term>θi, θf</term><description>Temperature at the start, and the insulation's limit, °C.</description></item>
/// <item><term>Q, β, ρ₂₀</term><description>Volumetric heat, J/(K mm³); 1/α at 0 °C, °C; resistivity, Ω mm.</description></item>
/// </list>
/// </remarks>
public static class ShortCircuit
{
    private const double LongestAdiabaticSeconds = 5;

    /// <summary>The temperature that insulation of a rating may reach in a short circuit, °C.</summary>
    public static double LimitFor(double insulationCelsius, Ruleset ruleset) =>
        ruleset.Heat.ShortCircuitLimitOf(insulationCelsius).Value;

    /// <summary>The factor k, A √s / mm².</summary>
    /// <param name="metal">The conductor's metal; a clad one counts as its core.</param>
    /// <param name="startCelsius">Temperature at the start.</param>
    /// <param name="limitCelsius">Temperature at the end, above it.</param>
    /// <param name="constants">The constants of the ruleset.</param>
    public static double Factor(
        MaterialProperties metal, double startCelsius, double limitCelsius, ShortCircuitConstants constants)
    {
        double heat = constants.HeatOf(metal.Material), beta = constants.BetaOf(metal.Material);
        double resistivity = metal.ResistivityOhmMm2PerMetre * 1e-3;
        return Math.Sqrt(heat * (beta + 20) / resistivity * Math.Log((beta + limitCelsius) / (beta + startCelsius)));
    }

    /// <summary>How long a conductor withstands a current, in seconds; infinite where it never gets too hot.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <param name="amps">The current in it.</param>
    /// <param name="startCelsius">Its temperature before.</param>
    /// <param name="limitCelsius">What its insulation may reach.</param>
    /// <param name="airCelsius">The surrounding air.</param>
    /// <param name="constants">The constants of the ruleset.</param>
    public static double WithstandSeconds(
        Conductor conductor, double amps, double startCelsius, double limitCelsius, double airCelsius,
        ShortCircuitConstants constants)
    {
        if (startCelsius >= limitCelsius) return 0;
        if (HeatBalance.Of(conductor).CurrentAt(limitCelsius, airCelsius) >= amps) return double.PositiveInfinity;
        double root = Factor(conductor.Properties, startCelsius, limitCelsius, constants) * conductor.Size.MetalAreaMm2 / amps;
        double adiabatic = root * root;
        return adiabatic <= LongestAdiabaticSeconds
            ? adiabatic
            : Math.Max(
                LongestAdiabaticSeconds,
                new Warming(conductor, amps, airCelsius, constants).SecondsBetween(startCelsius, limitCelsius));
    }
}
