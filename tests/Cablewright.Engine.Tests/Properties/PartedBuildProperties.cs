using Cablewright.Engine.Builds;
using Cablewright.Contract.Assessments;
using Cablewright.Vocabulary;
using CsCheck;
using static Cablewright.Engine.Tests.PartedBuilds;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Properties;

/// <summary>
/// Random builds with an isolator between two batteries, the alternator at the battery or at a place of its own. That an answer
/// agrees with its circuit is asserted wherever a build is assessed.
/// </summary>
public class PartedBuildProperties
{
    private const int Builds = 300;

    private static readonly Run[] OwnRuns =
    [
        Run("charge", "alternator", "starter", 1.5, "2 AWG") with { FarFuse = Anl(300) },
        Run("engine-strap", "alternator", "body", 0.5, "2 AWG") with { Side = Side.Return },
    ];

    private static readonly Gen<Isolator?> AnyIsolator = Gen.Select(
        Gen.Int[0, 3], Gen.Double[10, 200], (kind, amps) => kind switch
        {
            0 => null,
            1 => Relay(amps),
            2 => Diode(amps),
            _ => Charger(amps / 2),
        });

    /// <summary>One way between the batteries, since an isolator with another way past it parts nothing.</summary>
    private static readonly Gen<Build> Any = Gen.Select(
        TwoBatteryBuilds.Any, AnyIsolator, Gen.Double[40, 300], Gen.Bool, Gen.Double[50, 1200],
        (build, isolator, amps, apart, watts) =>
        {
            Build parted = build.WithAlternator(amps).WithRun("tie", run => run with { Isolator = isolator })
                .WithAmplifier(amplifier => amplifier with { RatedOutputWatts = watts });
            return (apart ? AtOwnPlace(parted) : parted) with
            {
                Runs = [.. parted.Runs.Where(run => run.Id != "second-way"), .. apart ? OwnRuns : []],
            };
        });

    [Fact]
    public void Every_one_has_an_answer_of_finite_numbers() => Any.Sample(build =>
    {
        Assessment answer = Assessed.Of(build);
        Assert.All(
            answer.Runs,
            run => Assert.All([run.PeakCurrentAmps, run.ThermalCurrentAmps, run.DropVolts, run.TemperatureCelsius], Finite));
        Assert.All(answer.Amplifiers, amplifier => Assert.All([amplifier.TerminalVolts, amplifier.DropVolts], Finite));
    }, iter: Builds);

    [Fact]
    public void A_diode_never_leaves_more_voltage_than_a_wire() => Any.Sample(build =>
    {
        Assessment diode = With(build, Diode()), wire = With(build, null);
        if (Collapses(diode) || Collapses(wire)) return;
        double without = wire.Amplifiers[0].TerminalVolts, behind = diode.Amplifiers[0].TerminalVolts;
        Assert.True(behind < without, $"{behind} V behind a diode, {without} V without");
    }, iter: Builds);

    [Fact]
    public void What_hangs_behind_a_charger_does_not_show_before_it() =>
        Gen.Select(Any, Gen.Double[1.1, 3]).Sample((build, factor) =>
        {
            Build bigger = build.WithAmplifier(
                amplifier => amplifier with { RatedOutputWatts = factor * amplifier.RatedOutputWatts });
            Assessment less = With(build, Charger(30)), more = With(bigger, Charger(30));
            if (Collapses(less) || Collapses(more)) return;
            Assert.Equal(less.Runs[0].PeakCurrentAmps, more.Runs[0].PeakCurrentAmps, 1e-3);
        }, iter: Builds);

    private static Build AtOwnPlace(Build build) => build with
    {
        Vehicle = build.Vehicle with { Alternator = build.Vehicle.Alternator! with { At = "alternator" } },
    };

    private static Assessment With(Build build, Isolator? isolator) =>
        Assessed.Of(build.WithRun("tie", run => run with { Isolator = isolator }));

    private static bool Collapses(Assessment answer) =>
        answer.Findings.Any(finding => finding.Code == "circuit.voltage-collapse");

    private static void Finite(double value) => Assert.True(double.IsFinite(value));
}
