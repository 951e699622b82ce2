using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Heat;

/// <summary>The warming of an insulated conductor under a current that stays.</summary>
/// <remarks>
/// <para>C dθ/dt = f(θ) = I² R(θ) − W(θ), with C the heat that a kelvin stores in conductor and insulation (the latter by van
/// Wormer's share, since it is cooler outside) and W what leaves at that temperature.</para>
/// <para>Method: f is nearly straight. Along its chord g between two temperatures the way is known,
/// θ(u) = θ₁ + g₁ (e^(λu) − 1) / λ in the time u, with λ the chord's slope; the true time follows from dt/du = g/f, which is 1
/// at both ends and near 1 between. One way it is a sum by Simpson's rule, the other way four-stage Runge and Kutta. Steps
/// are <see cref="Step"/> / |λ|, so that the neglected term is below some 3e-3 of the time, mostly below 1e-4, or 0.5 K.</para>
/// <para>W bends upwards, so f lies above its chord and the true way is never slower than the chord's.</para>
/// </remarks>
internal sealed class Warming
{
    private const double Step = 0.4;
    private const double SettledKelvin = 1e-3;

    /// <summary>How much shorter the steps are for a bend of f above its chord; found by trial against small steps.</summary>
    private const double BendFactor = 16;

    /// <summary>How many times longer a step may be for each e-fold that the way has settled, as its bend fades.</summary>
    private const double StepGrowth = 0.25;

    /// <summary>More than any way takes that means something; beyond, the end of the way stands for where it comes to.</summary>
    private const int MostSteps = 10_000;

    private readonly Conductor conductor;
    private readonly HeatBalance balance;
    private readonly double squaredAmps;
    private readonly double airCelsius;
    private readonly double stored;

    /// <summary>The warming of one conductor.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <param name="amps">The current in it.</param>
    /// <param name="airCelsius">The surrounding air.</param>
    /// <param name="constants">The constants of the ruleset.</param>
    public Warming(Conductor conductor, double amps, double airCelsius, ShortCircuitConstants constants)
    {
        this.conductor = conductor;
        this.airCelsius = airCelsius;
        balance = HeatBalance.Of(conductor);
        squaredAmps = amps * amps;
        stored = StoredJoulesPerKelvin(conductor, balance, constants);
    }

    /// <summary>The time from one temperature to a higher one, s; infinite where it never gets there.</summary>
    public double SecondsBetween(double fromCelsius, double toCelsius)
    {
        double first = Rate(fromCelsius), last = Rate(toCelsius);
        if (first <= 0 || last <= 0) return double.PositiveInfinity;
        var chord = new Chord(fromCelsius, first, (last - first) / (toCelsius - fromCelsius));
        double whole = chord.SecondsTo(toCelsius);
        int panels = 2 * (int)Math.Min(MostSteps, Math.Ceiling(whole / (2 * StepFor(chord, toCelsius, whole))));
        double sum = 2;
        for (int i = 1; i < panels; i++) sum += ((i & 1) == 1 ? 4 : 2) / Pace(chord, whole * i / panels);
        return whole * sum / (3 * panels);
    }

    /// <summary>The temperature after a time, °C.</summary>
    /// <param name="seconds">The time.</param>
    /// <param name="startCelsius">The temperature before, at most <paramref name="hottestCelsius"/>.</param>
    /// <param name="hottestCelsius">Where it comes to in the end, or where it is followed to.</param>
    public double CelsiusAfter(double seconds, double startCelsius, double hottestCelsius)
    {
        double first = Rate(startCelsius), way = hottestCelsius - startCelsius;
        if (way <= SettledKelvin || first <= 0) return hottestCelsius;
        var chord = new Chord(startCelsius, first, (Math.Max(0, Rate(hottestCelsius)) - first) / way);
        double settled = chord.SecondsTo(hottestCelsius - SettledKelvin), u = 0;
        double shortest = StepFor(chord, hottestCelsius, settled);
        for (int taken = 0; u < settled && seconds > 0; taken++)
        {
            if (taken == MostSteps) return hottestCelsius;
            double step = Math.Min(seconds, shortest * (1 + StepGrowth * Math.Abs(chord.Slope) * u));
            double k1 = Pace(chord, u), k2 = Pace(chord, u + k1 * step / 2);
            double k3 = Pace(chord, u + k2 * step / 2), k4 = Pace(chord, u + k3 * step);
            u += step / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            seconds -= step;
        }

        return u < settled ? chord.CelsiusAt(u) : hottestCelsius;
    }

    /// <summary>
    /// The temperature after a time if no heat left: never below <see cref="CelsiusAfter"/>, and found without a step, since R is
    /// straight in θ.
    /// </summary>
    public double CelsiusWithoutLoss(double seconds, double startCelsius)
    {
        double first = squaredAmps * conductor.OhmsPerMetre(startCelsius) / stored;
        double second = squaredAmps * conductor.OhmsPerMetre(startCelsius + 1) / stored;
        return new Chord(startCelsius, first, second - first).CelsiusAt(seconds);
    }

    /// <summary>A step in which neither the chord's own exponential nor the bend above the chord goes far.</summary>
    private double StepFor(Chord chord, double toCelsius, double whole)
    {
        double middle = (chord.FromCelsius + toCelsius) / 2;
        double bend = Rate(middle) / chord.RateAt(middle) - 1;
        return Step / (Math.Abs(chord.Slope) + BendFactor * Math.Abs(bend) / whole);
    }

    /// <summary>f/g: how much faster the way is gone than along the chord.</summary>
    private double Pace(Chord chord, double u)
    {
        double celsius = chord.CelsiusAt(u);
        return Rate(celsius) / chord.RateAt(celsius);
    }

    private double Rate(double celsius) =>
        (squaredAmps * conductor.OhmsPerMetre(celsius) - balance.LeavingWatts(celsius, airCelsius)) / stored;

    private static double StoredJoulesPerKelvin(Conductor conductor, HeatBalance balance, ShortCircuitConstants constants)
    {
        double metal = constants.HeatOf(conductor.Material) * conductor.Size.MetalAreaMm2 * 1e3;
        double ratio = balance.OuterMetres / conductor.DiameterMetres;
        double vanWormer = 1 / (2 * Math.Log(ratio)) - 1 / (ratio * ratio - 1);
        double insulation =
            Math.PI / 4 * (balance.OuterMetres * balance.OuterMetres - conductor.DiameterMetres * conductor.DiameterMetres);
        return metal + vanWormer * constants.InsulationHeat * insulation;
    }

    /// <summary>A rate of warming, K/s, that is straight in the temperature.</summary>
    private readonly record struct Chord(double FromCelsius, double FirstRate, double Slope)
    {
        /// <summary>Below this the exponential is its own first terms to the last digit.</summary>
        private const double Straight = 1e-5;

        public double RateAt(double celsius) => FirstRate + Slope * (celsius - FromCelsius);

        public double CelsiusAt(double seconds)
        {
            double x = Slope * seconds;
            double mean = Math.Abs(x) < Straight ? 1 + x / 2 : (Math.Exp(x) - 1) / x;
            return FromCelsius + FirstRate * seconds * mean;
        }

        public double SecondsTo(double celsius)
        {
            double x = Slope * (celsius - FromCelsius) / FirstRate;
            double mean = Math.Abs(x) < Straight ? 1 - x / 2 : Math.Log(1 + x) / x;
            return (celsius - FromCelsius) / FirstRate * mean;
        }
    }
}
