using System.Collections.Frozen;
using Cablewright.Engine.Conductors;

namespace Cablewright.Engine.Heat;

/// <summary>The steady heat of an insulated conductor, alone and level in still air.</summary>
/// <remarks>
/// <para>Method: what the current makes leaves through the insulation and then by convection and radiation,
/// I² R(Tc) = (Tc − Ts) / Ri = π D [h (Ts − Ta) + ε σ (Ts⁴ − Ta⁴)].</para>
/// <para>h is that of Churchill and Chu (1975) for a level cylinder,
/// Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}², Ra = g β ΔT D³ Pr / ν², air at the film temperature.</para>
/// <list type="table">
/// <item><term>Tc, Ts, Ta</term><description>Conductor, surface and surrounding air, °C (kelvin inside).</description></item>
/// <item><term>D</term><description>Outer diameter, m.</description></item>
/// <item><term>Ri</term><description>Thermal resistance of one metre of insulation, ln(D/d) / 2πλ, K m/W.</description></item>
/// <item><term>h</term><description>Convection coefficient, Nu λair / D, W/(m² K).</description></item>
/// </list>
/// <para>Agreement with published free-air tables is within about 15 to 20 %, no better: the published table rules where it
/// reaches.</para>
/// </remarks>
public sealed class HeatBalance
{
    private const double ZeroCelsius = 273.15;
    private const double HottestReported = 1000;
    private const double Precision = 1e-7;
    private const int MostSteps = 80;
    private const int MostSecantSteps = 12;
    private const double SecantPrecision = 1e-6;
    private const double FirstGuessKelvin = 20;
    private const double SmallestRiseKelvin = 1e-3;

    private static readonly NamedFigure[] Figures = Embedded.Read("Heat/heat-balance.json", DataJson.Default.NamedFigureArray);
    private static readonly WallRow[] Walls = Embedded.Read("Heat/insulation-walls.json", DataJson.Default.WallRowArray);
    private static readonly double InsulationConductivity = Figures.Named("insulation-conductivity");
    private static readonly double Radiation = Figures.Named("emissivity") * Figures.Named("stefan-boltzmann");
    private static readonly double Gravity = Figures.Named("gravity");
    private static readonly double Conductivity0 = Figures.Named("air-conductivity-0c");
    private static readonly double ConductivityExponent = Figures.Named("air-conductivity-exponent");
    private static readonly double Viscosity0 = Figures.Named("air-viscosity-0c");
    private static readonly double Sutherland = Figures.Named("air-sutherland");
    private static readonly double DensityTemperature = Figures.Named("air-density-temperature");
    private static readonly double Prandtl = Figures.Named("air-prandtl");
    private static readonly double PrandtlTerm = 0.387 / Math.Pow(1 + Math.Pow(0.559 / Prandtl, 9.0 / 16), 8.0 / 27);

    private static readonly FrozenDictionary<Conductor, HeatBalance> Catalogue =
        Conductor.All.ToFrozenDictionary(conductor => conductor, conductor => new HeatBalance(conductor));

    private readonly Conductor conductor;
    private readonly double outerMetres;
    private readonly double insulationResistance;

    private HeatBalance(Conductor conductor)
    {
        this.conductor = conductor;
        double area = conductor.Size.NominalAreaMm2;
        double wall = (Array.Find(Walls, row => area <= row.UpToMm2) ?? Walls[^1]).WallMillimetres * 1e-3;
        outerMetres = conductor.DiameterMetres + 2 * wall;
        insulationResistance = Math.Log(outerMetres / conductor.DiameterMetres) / (2 * Math.PI * InsulationConductivity);
    }

    /// <summary>Outer diameter with insulation, in metres.</summary>
    public double OuterMetres => outerMetres;

    /// <summary>The balance of one conductor with the usual wall of insulation for its size.</summary>
    public static HeatBalance Of(Conductor conductor) => Catalogue[conductor];

    /// <summary>The current that holds the conductor at a temperature.</summary>
    /// <param name="conductorCelsius">The conductor's temperature, °C.</param>
    /// <param name="airCelsius">The surrounding air, °C.</param>
    /// <returns>Amperes; 0 where the air is as hot as the conductor may be.</returns>
    public double CurrentAt(double conductorCelsius, double airCelsius) =>
        Math.Sqrt(LeavingWatts(conductorCelsius, airCelsius) / conductor.OhmsPerMetre(conductorCelsius));

    /// <summary>The heat that leaves one metre of a conductor at a temperature, in watts.</summary>
    public double LeavingWatts(double conductorCelsius, double airCelsius)
    {
        if (conductorCelsius <= airCelsius) return 0;
        double surface = Root(
            airCelsius, conductorCelsius, ts => LeavingSurface(ts, airCelsius) - (conductorCelsius - ts) / insulationResistance);
        return (conductorCelsius - surface) / insulationResistance;
    }

    /// <summary>The temperature of the conductor under a lasting current.</summary>
    /// <param name="amps">The current in one conductor, A.</param>
    /// <param name="airCelsius">The surrounding air, °C.</param>
    /// <param name="startCelsius">Where to begin looking; the answer does not depend on it beyond the last digits.</param>
    /// <returns>°C, at most 1000: a conductor that hot is no longer one.</returns>
    public double TemperatureAt(double amps, double airCelsius, double startCelsius = double.NaN)
    {
        double squared = amps * amps;
        if (squared == 0) return airCelsius;
        double x = startCelsius > airCelsius ? startCelsius : airCelsius + FirstGuessKelvin;
        double value = Excess(x, squared, airCelsius);
        double next = x - value;
        for (int i = 0; i < MostSecantSteps && next > airCelsius && next < HottestReported; i++)
        {
            double nextValue = Excess(next, squared, airCelsius);
            if (Math.Abs(nextValue) < SecantPrecision) return next - nextValue;
            (double slope, x, value) = ((nextValue - value) / (next - x), next, nextValue);
            next -= nextValue / slope;
        }

        double hottest = airCelsius + HottestReported;
        return Math.Min(HottestReported, Root(airCelsius, hottest, tc => Leaving(tc, squared, airCelsius)));
    }

    /// <summary>
    /// How far a temperature is above the one that its own losses lead to, K: Tc − Ta − I² R(Tc) (Ri + 1/G), with G what leaves
    /// the surface for each kelvin. It is 0 at the balance and nearly straight, so the secant finds it in three or four steps.
    /// </summary>
    private double Excess(double tc, double squaredAmps, double airCelsius)
    {
        double made = squaredAmps * conductor.OhmsPerMetre(tc);
        double surface = Math.Max(tc - made * insulationResistance, airCelsius + SmallestRiseKelvin);
        double conductance = LeavingSurface(surface, airCelsius) / (surface - airCelsius);
        return tc - airCelsius - made * (insulationResistance + 1 / conductance);
    }

    /// <summary>Heat that leaves less heat that is made when the conductor is at a temperature, W/m.</summary>
    private double Leaving(double tc, double squaredAmps, double airCelsius)
    {
        double made = squaredAmps * conductor.OhmsPerMetre(tc);
        return LeavingSurface(tc - made * insulationResistance, airCelsius) - made;
    }

    private double LeavingSurface(double surfaceCelsius, double airCelsius)
    {
        double difference = surfaceCelsius - airCelsius;
        if (difference <= 0) return difference;
        double surface = surfaceCelsius + ZeroCelsius,
            air = airCelsius + ZeroCelsius,
            film = (surface + air) / 2,
            share = film / ZeroCelsius;
        double viscosity = Viscosity0 * share * Math.Sqrt(share) * (ZeroCelsius + Sutherland) / (film + Sutherland);
        double kinematic = viscosity * film / DensityTemperature;
        double rayleigh =
            Gravity / film * difference * outerMetres * outerMetres * outerMetres * Prandtl / (kinematic * kinematic);
        double root = 0.60 + PrandtlTerm * Math.Cbrt(Math.Sqrt(rayleigh));
        double coefficient = root * root * Conductivity0 * Math.Pow(share, ConductivityExponent) / outerMetres;
        double radiated = Radiation * (surface * surface * surface * surface - air * air * air * air);
        return Math.PI * outerMetres * (coefficient * difference + radiated);
    }

    /// <summary>The root of a rising function between two bounds, by the secant with a fall-back to halving.</summary>
    private static double Root(double low, double high, Func<double, double> rising)
    {
        double lowValue = rising(low), highValue = rising(high);
        if (highValue <= 0) return high;
        double x = low;
        for (int i = 0; i < MostSteps && high - low > Precision; i++)
        {
            x = (i & 3) == 3 ? (low + high) / 2 : low - lowValue * (high - low) / (highValue - lowValue);
            double value = rising(x);
            if (Math.Abs(value) < 1e-12) return x;
            if (value > 0) (high, highValue, lowValue) = (x, value, lowValue / 2);
            else (low, lowValue, highValue) = (x, value, highValue / 2);
        }

        return x;
    }
}
