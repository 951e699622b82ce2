using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using CsCheck;

namespace Cablewright.Engine.Tests.Heat;

/// <summary>
/// The warming by wide steps along the chord, beside small steps of temperature through C dθ/dt = I² R(θ) − W(θ): within 0.3 %
/// of the time, and 0.5 K or 0.3 % of the temperature.
/// </summary>
public class WarmingTests
{
    private static readonly ShortCircuitConstants Constants = RulesetLibrary.Newest.ShortCircuit;

    private const double SmallKelvin = 0.01;

    private static readonly Gen<Conductor> AnyConductor = Gen.Select(
        Gen.OneOfConst([.. ConductorSize.All]), Gen.Enum<Material>(), Conductor.Of);

    /// <summary>From just above the current that holds the end for ever to twenty times that.</summary>
    [Fact]
    public void The_time_is_that_of_small_steps() =>
        Gen.Select(AnyConductor, Gen.Double[-20, 80], Gen.Double[0, 60], Gen.Double[5, 200], Gen.Double[0, 1])
            .Sample((conductor, air, above, way, along) =>
            {
                double start = air + above, end = start + way;
                double amps = 1.02 * Math.Pow(20, along) * HeatBalance.Of(conductor).CurrentAt(end, air);
                var warming = new Warming(conductor, amps, air, Constants);
                Near.Relative(
                    SmallSteps(conductor, amps, air, start, end), warming.SecondsBetween(start, end), 0.003,
                    $"{conductor} at {amps} A from {start} to {end} C in {air} C, s");
            }, iter: 400);

    /// <summary>Towards a lasting temperature, or towards the hottest that is followed where there is none.</summary>
    [Fact]
    public void The_temperature_is_that_of_small_steps() =>
        Gen.Select(
                AnyConductor, Gen.Double[-20, 80], Gen.Double[0, 60], Gen.Double[5, 400], Gen.Double[0.02, 0.98],
                Gen.Double[0.5, 4])
            .Sample((conductor, air, above, way, share, times) =>
            {
                double amps = times * HeatBalance.Of(conductor).CurrentAt(air + above + way, air), start = air + above;
                double continuous = HeatBalance.Of(conductor)
                    .TemperatureAt(amps, air), end = start + share * (continuous - start);
                if (end <= start) return;
                double seconds = SmallSteps(conductor, amps, air, start, end);
                Near.Absolute(
                    end,
                    new Warming(conductor, amps, air, Constants).CelsiusAfter(seconds, start, continuous),
                    Math.Max(0.5, 0.003 * end),
                    $"{conductor} at {amps} A after {seconds} s from {start} C in {air} C, C");
            }, iter: 400);

    [Fact]
    public void Where_the_heat_that_leaves_keeps_up_it_never_gets_there() =>
        Gen.Select(AnyConductor, Gen.Double[-20, 80], Gen.Double[1, 200]).Sample((conductor, air, rise) =>
        {
            double holds = HeatBalance.Of(conductor).CurrentAt(air + rise, air);
            var warming = new Warming(conductor, 0.999 * holds, air, Constants);
            return double.IsPositiveInfinity(warming.SecondsBetween(air, air + rise));
        }, iter: 500);

    private static double SmallSteps(Conductor conductor, double amps, double air, double start, double end)
    {
        var balance = HeatBalance.Of(conductor);
        double stored = Stored(conductor, balance.OuterMetres), seconds = 0;
        int steps = (int)Math.Ceiling((end - start) / SmallKelvin);
        double width = (end - start) / steps;
        for (int i = 0; i < steps; i++)
        {
            double celsius = start + (i + 0.5) * width;
            double gained = amps * amps * conductor.OhmsPerMetre(celsius) - balance.LeavingWatts(celsius, air);
            seconds += stored * width / gained;
        }

        return seconds;
    }

    /// <summary>
    /// Heat of one metre, J/K: copper 3.45e6 and aluminium 2.5e6 J/(K m³) (IEC 60364-5-54), PVC 1.7e6 (IEC 60853-2) by van
    /// Wormer's share (IEC 60853).
    /// </summary>
    public static double Stored(Conductor conductor, double outer)
    {
        double inner = conductor.DiameterMetres, ratio = outer / inner;
        double share = 1 / (2 * Math.Log(ratio)) - 1 / (ratio * ratio - 1);
        double perCubicMetre = conductor.Material is Material.Copper or Material.TinnedCopper ? 3.45e6 : 2.5e6;
        return perCubicMetre * conductor.Size.MetalAreaMm2 * 1e-6 + share * 1.7e6 * Math.PI * (outer * outer - inner * inner) / 4;
    }
}
