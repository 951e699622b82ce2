using System.Globalization;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Contract.Assessments;
using Cablewright.Vocabulary;
using CsCheck;

namespace Cablewright.Engine.Tests.Properties;

/// <summary>
/// What must hold of any wiring. Temperatures are found to 0.01 K, so a drop is known to some 0.05 mV and a temperature to 0.05
/// K: changes smaller than that count as none.
/// </summary>
public class WiringPropertyTests
{
    private const int Builds = 200;
    private const double Volts = 1e-4;
    private const double Kelvin = 0.05;

    [Fact]
    public void A_longer_run_never_drops_less() =>
        Gen.Select(GivenBuilds.Trees, Gen.Int[0, 99], Gen.Double[1.02, 3]).Sample((build, pick, factor) =>
            DropsNoLess(build, Changed(build, pick, run => run with { LengthMetres = run.LengthMetres * factor })), iter: Builds);

    [Fact]
    public void A_thicker_conductor_never_drops_more() =>
        Gen.Select(GivenBuilds.Trees, Gen.Int[0, 99], Gen.Int[1, 4]).Sample((build, pick, steps) =>
            DropsNoLess(Changed(build, pick, run => Thicker(run, steps)), build), iter: Builds);

    [Fact]
    public void More_parallel_conductors_never_run_hotter_nor_drop_more() =>
        Gen.Select(GivenBuilds.Trees, Gen.Int[0, 99]).Sample((build, pick) =>
        {
            Build more = Changed(
                build, pick, run => run with { Conductor = run.Conductor with { Count = run.Conductor.Count + 1 } });
            DropsNoLess(more, build);
            if (Collapses(Assessed.Of(build))) return;
            string id = build.Runs[pick % build.Runs.Count].Id;
            Assert.True(TemperatureOf(more, id) <= TemperatureOf(build, id) + Kelvin);
        }, iter: Builds);

    [Fact]
    public void A_bigger_load_never_raises_the_voltage_of_another() =>
        Gen.Select(GivenBuilds.Trees, Gen.Int[0, 99], Gen.Double[1.02, 3]).Sample((build, pick, factor) =>
        {
            int chosen = pick % build.Amplifiers.Count;
            Build bigger = build with
            {
                Amplifiers =
                    [
                        .. build.Amplifiers.Select(
                            (amplifier, i) =>
                                i == chosen
                                    ? amplifier with { RatedOutputWatts = factor * amplifier.RatedOutputWatts }
                                    : amplifier)],
            };
            DropsNoLess(build, bigger);
        }, iter: Builds);

    /// <summary>
    /// The balance itself is asserted wherever a build is assessed; here on loops and with every kind of converter.
    /// </summary>
    [Fact]
    public void Currents_balance_at_every_node_of_any_build() =>
        GivenBuilds.Loops.Sample(
            build => Assert.Equal(build.Amplifiers.Count, Assessed.Of(build).Amplifiers.Count), iter: Builds);

    /// <summary>
    /// The same lengths from feet and from metres differ in their last binary digit; nothing that is shown may.
    /// </summary>
    [Fact]
    public void Feet_and_metres_give_the_same_verdict_and_numbers() =>
        Gen.Select(GivenBuilds.Loops, Gen.Int[1, 20].Array[16]).Sample((build, feet) =>
        {
            Build us = build with
            {
                Units = UnitSystem.Us,
                Runs = [.. build.Runs.Select((run, i) => run with { LengthMetres = feet[i % 16] * 0.3048 })],
            };
            Build metric = build with
            {
                Units = UnitSystem.Metric,
                Runs = [.. build.Runs.Select((run, i) => run with { LengthMetres = (double)(feet[i % 16] * 0.3048m) })],
            };
            SameButForTheSixthDigit(Shown(Assessed.Of(us)), Shown(Assessed.Of(metric)));
        }, iter: Builds);

    /// <summary>
    /// The two lengths may differ in their last bit, as here on purpose, so a number on the edge of rounding may show the next
    /// sixth digit; every word, and every number but for that, is the same.
    /// </summary>
    private static void SameButForTheSixthDigit(string one, string other)
    {
        string[] some = one.Split([' ', '\n']), others = other.Split([' ', '\n']);
        Assert.Equal(some.Length, others.Length);
        foreach ((string a, string b) in some.Zip(others))
        {
            if (a == b) continue;
            Assert.True(
                double.TryParse(a, CultureInfo.InvariantCulture, out double x)
                && double.TryParse(b, CultureInfo.InvariantCulture, out double y)
                && Math.Abs(x - y) <= 1.01e-5 * Math.Abs(x),
                $"{a} against {b} in\n{one}\nagainst\n{other}");
        }
    }

    [Fact]
    public void The_same_build_gives_the_same_answer_again() =>
        GivenBuilds.Loops.Sample(build => Assert.Equal(Shown(Assessed.Of(build)), Shown(Assessed.Of(build))), iter: 50);

    private static void DropsNoLess(Build lesser, Build greater)
    {
        Assessment less = Assessed.Of(lesser), more = Assessed.Of(greater);
        if (Collapses(less)) Assert.True(Collapses(more), "It collapses, and with more to lose it does not.");
        if (Collapses(less) || Collapses(more)) return;
        Assert.All(less.Amplifiers.Zip(more.Amplifiers), pair =>
            Assert.True(
                pair.Second.DropVolts >= pair.First.DropVolts - Volts,
                $"{pair.First.Id}: {pair.Second.DropVolts} V against {pair.First.DropVolts} V"));
    }

    private static bool Collapses(Assessment answer) =>
        answer.Findings.Any(finding => finding.Code == "circuit.voltage-collapse");

    private static double TemperatureOf(Build build, string run) =>
        Assessed.Of(build).Runs.Single(result => result.Id == run).TemperatureCelsius;

    private static Build Changed(Build build, int pick, Func<Run, Run> change) =>
        build.WithRun(build.Runs[pick % build.Runs.Count].Id, change);

    private static Run Thicker(Run run, int steps)
    {
        string[] gauges = GivenBuilds.Gauges;
        int index = Array.IndexOf(gauges, run.Conductor.Size!.Label[..^4]);
        return run with
        {
            Conductor = run.Conductor with
            {
                Size = ConductorSize.Of(gauges[Math.Min(index + steps, gauges.Length - 1)] + " AWG"),
            },
        };
    }

    private static string Shown(Assessment answer) => string.Join('\n',
    [
        answer.Verdict.Word(),
        .. answer.Findings.Select(finding => $"{finding.Code} {finding.Pointer} {Six(finding.Measured)} {Six(finding.Limit)}"),
        .. answer.Amplifiers.Select(
            amplifier =>
                $"{amplifier.Id} {Six(amplifier.TerminalVolts)} {Six(amplifier.PeakCurrentAmps)} "
                + $"{Six(amplifier.ThermalCurrentAmps)}"),
        .. answer.Runs.Select(
            run =>
                $"{run.Id} {Six(run.PeakCurrentAmps)} {Six(run.DropVolts)} {Six(run.TemperatureCelsius)} "
                + $"{Six(run.AmpacityAmps)} {Six(run.Conductor.MassGrams)}"),
    ]);

    private static string Six(double? value) =>
        value is { } number ? Significant.Round(number).ToString("R", System.Globalization.CultureInfo.InvariantCulture) : "-";
}
