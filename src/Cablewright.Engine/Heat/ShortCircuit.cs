using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Heat;

/// <summary>How long a conductor withstands a current.</summary>
/// <remarks>
/// <para>Up to 5 s no heat leaves: t = (k S / I)², k² = Q (β + 20) / ρ₂₀ · ln((β + θf) / (β + θi)) (IEC 60364-4-43 and
/// -5-54).</para>
/// <para>Above 5 s some does: C dθ/dt = I² R(θ) − W(θ), with C the heat that a kelvin stores in conductor and insulation (the
/// latter by van Wormer's share, since it is cooler outside) and W what leaves at that temperature; the time is the sum of
/// C Δθ / (I² R − W) over small steps of θ, and without end once W keeps up.</para>
/// <list type="table">
/// <item><term>S, I</term><description>Metal area, mm²; current in one conductor, A.</description></item>
/// <item><term>θi, θf</term><description>Temperature at the start, and the insulation's limit, °C.</description></item>
/// <item><term>Q, β, ρ₂₀</term><description>Volumetric heat, J/(K mm³); 1/α at 0 °C, °C; resistivity, Ω mm.</description></item>
/// </list>
/// </remarks>
public static class ShortCircuit
{
    private const double LongestAdiabaticSeconds = 5;
    private const double StepKelvin = 2;

    /// <summary>The last way to a lasting temperature is gone in ever smaller steps, so that none passes it.</summary>
    private const double ShareOfRest = 0.1;
    private const double SettledKelvin = 1e-3;

    private static readonly NamedFigure[] Figures = Embedded.Read("Heat/short-circuit.json", DataJson.Default.NamedFigureArray);
    private static readonly double CopperHeat = Figures.Named("copper-heat");
    private static readonly double CopperBeta = Figures.Named("copper-beta");
    private static readonly double AluminiumHeat = Figures.Named("aluminium-heat");
    private static readonly double AluminiumBeta = Figures.Named("aluminium-beta");
    private static readonly double InsulationHeat = Figures.Named("insulation-heat");

    /// <summary>The temperature that insulation of a rating may reach in a short circuit, °C.</summary>
    public static double LimitFor(double insulationCelsius, Ruleset ruleset) =>
        ruleset[insulationCelsius >= 125 ? "heat.short-circuit-limit-125" : "heat.short-circuit-limit"].Value;

    /// <summary>The factor k, A √s / mm².</summary>
    /// <param name="metal">The conductor's metal; a clad one counts as its core.</param>
    /// <param name="startCelsius">Temperature at the start.</param>
    /// <param name="limitCelsius">Temperature at the end, above it.</param>
    public static double Factor(MaterialProperties metal, double startCelsius, double limitCelsius)
    {
        bool copper = metal.Material is Material.Copper or Material.TinnedCopper;
        double heat = copper ? CopperHeat : AluminiumHeat, beta = copper ? CopperBeta : AluminiumBeta;
        double resistivity = metal.ResistivityOhmMm2PerMetre * 1e-3;
        return Math.Sqrt(heat * (beta + 20) / resistivity * Math.Log((beta + limitCelsius) / (beta + startCelsius)));
    }

    /// <summary>How long a conductor withstands a current, in seconds; infinite where it never gets too hot.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <param name="amps">The current in it.</param>
    /// <param name="startCelsius">Its temperature before.</param>
    /// <param name="limitCelsius">What its insulation may reach.</param>
    /// <param name="airCelsius">The surrounding air.</param>
    public static double WithstandSeconds(
        Conductor conductor, double amps, double startCelsius, double limitCelsius, double airCelsius)
    {
        if (startCelsius >= limitCelsius) return 0;
        if (HeatBalance.Of(conductor).CurrentAt(limitCelsius, airCelsius) >= amps) return double.PositiveInfinity;
        double root = Factor(conductor.Properties, startCelsius, limitCelsius) * conductor.Size.MetalAreaMm2 / amps;
        double adiabatic = root * root;
        return adiabatic <= LongestAdiabaticSeconds
            ? adiabatic
            : Math.Max(LongestAdiabaticSeconds, SecondsBetween(conductor, amps, startCelsius, limitCelsius, airCelsius));
    }

    /// <summary>The temperature after a current has flowed for a time, °C.</summary>
    public static double TemperatureAfter(
        Conductor conductor, double amps, double seconds, double startCelsius, double hottestCelsius, double airCelsius)
    {
        double celsius = startCelsius;
        while (hottestCelsius - celsius > SettledKelvin && seconds > 0)
        {
            double width = Math.Min(StepKelvin, ShareOfRest * (hottestCelsius - celsius));
            double step = SecondsBetween(conductor, amps, celsius, celsius + width, airCelsius);
            if (step > seconds) return double.IsInfinity(step) ? hottestCelsius : celsius + width * seconds / step;
            (celsius, seconds) = (celsius + width, seconds - step);
        }

        return seconds > 0 ? hottestCelsius : celsius;
    }

    private static double SecondsBetween(
        Conductor conductor, double amps, double startCelsius, double endCelsius, double airCelsius)
    {
        HeatBalance balance = HeatBalance.Of(conductor);
        double stored = StoredJoulesPerKelvin(conductor, balance);
        int steps = (int)Math.Ceiling((endCelsius - startCelsius) / StepKelvin);
        double width = (endCelsius - startCelsius) / steps, seconds = 0;
        for (int i = 0; i < steps; i++)
        {
            double celsius = startCelsius + (i + 0.5) * width;
            double gained = amps * amps * conductor.OhmsPerMetre(celsius) - balance.LeavingWatts(celsius, airCelsius);
            if (gained <= 0) return double.PositiveInfinity;
            seconds += stored * width / gained;
        }

        return seconds;
    }

    private static double StoredJoulesPerKelvin(Conductor conductor, HeatBalance balance)
    {
        bool copper = conductor.Material is Material.Copper or Material.TinnedCopper;
        double metal = (copper ? CopperHeat : AluminiumHeat) * conductor.Size.MetalAreaMm2 * 1e3;
        double ratio = balance.OuterMetres / conductor.DiameterMetres;
        double vanWormer = 1 / (2 * Math.Log(ratio)) - 1 / (ratio * ratio - 1);
        double insulation =
            Math.PI / 4 * (balance.OuterMetres * balance.OuterMetres - conductor.DiameterMetres * conductor.DiameterMetres);
        return metal + vanWormer * InsulationHeat * insulation;
    }
}
