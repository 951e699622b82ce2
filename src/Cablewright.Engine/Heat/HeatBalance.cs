using System.Collections.Frozen;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Data;

namespace Cablewright.Engine.Heat;

/// <summary>The steady heat of an insulated conductor, alone and level in still air.</summary>
/// <remarks>
/// <para>Method: what the current makes leaves through the insulation and then by convection and radiation,
/// I² R(Tc) = (Tc − Ts) / Ri = W(Ts), W by <see cref="LevelCylinder"/>.</para>
/// <list type="table">
/// <item><term>Tc, Ts, Ta</term><description>Conductor, surface and surrounding air, °C.</description></item>
/// <item><term>D</term><description>Outer diameter, m.</description></item>
/// <item><term>Ri</term><description>Thermal resistance of one metre of insulation, ln(D/d) / 2πλ, K m/W.</description></item>
/// <item><term>G</term><description>What leaves the surface for each kelvin above the air, W/(Ts − Ta); it changes little with
/// Ts, which is what the iterations rest on.</description></item>
/// </list>
/// <para>Agreement with published free-air tables is within about 15 to 20 %, no better: the published table rules where it
/// reaches.</para>
/// </remarks>
public sealed class HeatBalance
{
    private const double HottestReported = 1000;
    private const int MostSteps = 16;
    private const double Precision = 1e-6;

    /// <summary>Where the surface is usually found between air and conductor; only the first guess.</summary>
    private const double UsualSurfaceShare = 0.85;

    /// <summary>The surface's rise to begin with where nothing better is known, K.</summary>
    private const double FirstGuessKelvin = 100;

    /// <summary>How fast the error of the surface's rise grows with it, about; only for the first step.</summary>
    private const double UsualSlope = 1.3;

    private static readonly NamedFigure[] Figures = Embedded.Read("Heat/heat-balance.json", DataJson.Default.NamedFigureArray);
    private static readonly WallRow[] Walls = Embedded.Read("Heat/insulation-walls.json", HeatJson.Default.WallRowArray);
    private static readonly double InsulationConductivity = Figures.Named("insulation-conductivity");

    private static readonly FrozenDictionary<Conductor, HeatBalance> Catalogue =
        Conductor.All.ToFrozenDictionary(conductor => conductor, conductor => new HeatBalance(conductor));

    private readonly Conductor conductor;
    private readonly LevelCylinder outside;
    private readonly double insulationResistance;

    private HeatBalance(Conductor conductor)
    {
        this.conductor = conductor;
        double area = conductor.Size.NominalAreaMm2;
        double wall = (Array.Find(Walls, row => area <= row.UpToMm2) ?? Walls[^1]).WallMillimetres * 1e-3;
        OuterMetres = conductor.DiameterMetres + 2 * wall;
        outside = new LevelCylinder(OuterMetres);
        insulationResistance = Math.Log(OuterMetres / conductor.DiameterMetres) / (2 * Math.PI * InsulationConductivity);
    }

    /// <summary>Outer diameter with insulation, in metres.</summary>
    public double OuterMetres { get; }

    /// <summary>The balance of one conductor with the usual wall of insulation for its size.</summary>
    public static HeatBalance Of(Conductor conductor) => Catalogue[conductor];

    /// <summary>The current that holds the conductor at a temperature.</summary>
    /// <param name="conductorCelsius">The conductor's temperature, °C.</param>
    /// <param name="airCelsius">The surrounding air, °C.</param>
    /// <returns>Amperes; 0 where the air is as hot as the conductor may be.</returns>
    public double CurrentAt(double conductorCelsius, double airCelsius) =>
        Math.Sqrt(LeavingWatts(conductorCelsius, airCelsius) / conductor.OhmsPerMetre(conductorCelsius));

    /// <summary>The heat that leaves one metre of a conductor at a temperature, in watts.</summary>
    /// <remarks>
    /// The surface stands where Ts − Ta = (Tc − Ta) / (1 + Ri G(Ts)). The right side hardly moves with Ts, so that a step there
    /// gains a digit or more and the secant through two such steps the square of that: three values of G in all.
    /// </remarks>
    public double LeavingWatts(double conductorCelsius, double airCelsius)
    {
        if (conductorCelsius <= airCelsius) return 0;
        double rise = conductorCelsius - airCelsius;
        double last = UsualSurfaceShare * rise, lastError = Error(last), x = last - lastError;
        for (int i = 0; i < MostSteps; i++)
        {
            double error = Error(x);
            double step = error == 0 ? 0 : error * (x - last) / (error - lastError);
            (last, lastError, x) = (x, error, x - step);
            if (Math.Abs(step) <= Precision * rise) break;
        }

        return (rise - x) / insulationResistance;

        double Error(double surfaceRise) =>
            surfaceRise - rise / (1 + insulationResistance * Conductance(surfaceRise, airCelsius));
    }

    /// <summary>The temperature of the conductor under a continuous current.</summary>
    /// <remarks>
    /// With q = I² R(0 °C) and R linear in Tc, the surface stands where
    /// Ts − Ta = q (1 + α Ta) / [G(Ts) (1 − q α Ri) − q α], and the same secant finds it. Where the bracket is not positive
    /// the losses do not keep up at that temperature, and it is looked for by halving, if there is one.
    /// </remarks>
    /// <param name="amps">The current in one conductor, A.</param>
    /// <param name="airCelsius">The surrounding air, °C.</param>
    /// <param name="startCelsius">Where to begin looking; the answer does not depend on it beyond the last digits.</param>
    /// <returns>°C, at most 1000: a conductor that hot is no longer one.</returns>
    public double TemperatureAt(double amps, double airCelsius, double startCelsius = double.NaN)
    {
        double squared = amps * amps;
        if (squared == 0) return airCelsius;
        double madeInAir = squared * conductor.OhmsPerMetre(airCelsius);
        double perKelvin = squared * (conductor.OhmsPerMetre(airCelsius + 1) - conductor.OhmsPerMetre(airCelsius));
        double inside = 1 - perKelvin * insulationResistance;
        double begun = startCelsius - airCelsius - squared * conductor.OhmsPerMetre(startCelsius) * insulationResistance;
        double last = begun > 0 ? begun : FirstGuessKelvin, lastError = Error(last), x = last - lastError / UsualSlope;
        for (int i = 0; i < MostSteps && x > 0 && x < HottestReported - airCelsius; i++)
        {
            double error = Error(x);
            double step = error == 0 ? 0 : error * (x - last) / (error - lastError);
            (last, lastError, x) = (x, error, x - step);
            if (Math.Abs(step) <= Precision) return ConductorAt(x);
        }

        return ByHalving(squared, airCelsius);

        double ConductorAt(double surfaceRise) =>
            Math.Min(HottestReported, airCelsius + (surfaceRise + madeInAir * insulationResistance) / inside);

        double Error(double surfaceRise)
        {
            double left = Conductance(surfaceRise, airCelsius) * inside - perKelvin;
            return left > 0 ? surfaceRise - madeInAir / left : double.NaN;
        }
    }

    /// <summary>What leaves the surface for each kelvin that it is above the air, W/(m K).</summary>
    private double Conductance(double surfaceRise, double airCelsius) =>
        outside.LeavingWatts(airCelsius + surfaceRise, airCelsius) / surfaceRise;

    /// <summary>
    /// Where the secant leaves its range. What leaves grows faster than what is made: if it is less at the hottest temperature,
    /// it is less at every other.
    /// </summary>
    private double ByHalving(double squaredAmps, double airCelsius)
    {
        double low = airCelsius, high = HottestReported;
        if (!IsAbove(high)) return high;
        while (high - low > Precision)
        {
            double middle = (low + high) / 2;
            if (IsAbove(middle)) high = middle;
            else low = middle;
        }

        return high;

        bool IsAbove(double tc) => LeavingWatts(tc, airCelsius) > squaredAmps * conductor.OhmsPerMetre(tc);
    }
}
