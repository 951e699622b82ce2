using Cablewright.Engine.Data;

namespace Cablewright.Engine.Heat;

/// <summary>The heat that the surface of a level cylinder gives to still air and, by radiation, to what is around it.</summary>
/// <remarks>
/// <para>π D [h ΔT + ε σ (Ts⁴ − Ta⁴)], with h = Nu λ / D by Churchill and Chu (1975),
/// Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}², Ra = g ΔT D³ Pr / (Tf ν²), air at the film temperature.</para>
/// <para>With Sutherland's viscosity μ = μ₀ (Tf/T₀)^(3/2) (T₀ + S)/(Tf + S) and the density of an ideal gas, ρT/Tf, all powers
/// of Tf in Ra come together: Ra^(1/6) = k √D ∛(√ΔT (Tf + S)) / Tf, k⁶ = g Pr (ρT)² T₀³ / [μ₀ (T₀ + S)]². One root in place
/// of many, since this is asked more often than anything else.</para>
/// <list type="table">
/// <item><term>Ts, Ta, Tf</term><description>Surface, air, and the mean of both, K; ΔT = Ts − Ta.</description></item>
/// <item><term>D</term><description>Diameter, m.</description></item>
/// <item><term>λ, μ, ν</term><description>Conductivity and viscosity of the air, ν = μ Tf / ρT.</description></item>
/// </list>
/// </remarks>
internal sealed class LevelCylinder(double diameterMetres)
{
    private const double ZeroCelsius = 273.15;

    private static readonly NamedFigure[] Figures = Embedded.Read("Heat/heat-balance.json", DataJson.Default.NamedFigureArray);
    private static readonly double Radiation = Figures.Named("emissivity") * Figures.Named("stefan-boltzmann");
    private static readonly double Conductivity0 = Figures.Named("air-conductivity-0c");
    private static readonly double ConductivityExponent = Figures.Named("air-conductivity-exponent");
    private static readonly double Sutherland = Figures.Named("air-sutherland");
    private static readonly double NusseltFactor = FindNusseltFactor();

    private readonly double rootFactor = NusseltFactor * Math.Sqrt(diameterMetres);

    /// <summary>Watts that leave one metre; negative by the kelvin where the surface is cooler than the air.</summary>
    public double LeavingWatts(double surfaceCelsius, double airCelsius)
    {
        double difference = surfaceCelsius - airCelsius;
        if (difference <= 0) return difference;
        double surface = surfaceCelsius + ZeroCelsius, air = airCelsius + ZeroCelsius, film = (surface + air) / 2;
        double root = 0.60 + rootFactor * Math.Cbrt(Math.Sqrt(difference) * (film + Sutherland)) / film;
        double convected = root * root * Conductivity0 * Math.Pow(film / ZeroCelsius, ConductivityExponent) * difference;
        double radiated = Radiation * difference * (surface + air) * (surface * surface + air * air);
        return Math.PI * (convected + diameterMetres * radiated);
    }

    private static double FindNusseltFactor()
    {
        double prandtl = Figures.Named("air-prandtl");
        double viscous = Figures.Named("air-viscosity-0c")
            * (ZeroCelsius + Sutherland) / Figures.Named("air-density-temperature");
        double sixth = Figures.Named("gravity") * prandtl * Math.Pow(ZeroCelsius, 3) / (viscous * viscous);
        return 0.387 / Math.Pow(1 + Math.Pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27) * Math.Pow(sixth, 1.0 / 6);
    }
}
