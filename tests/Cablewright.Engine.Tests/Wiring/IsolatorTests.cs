using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Numerics;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Supply;
using Cablewright.Engine.Tests.Published;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.PartedBuilds;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Wiring;

/// <summary>
/// What parts two batteries, in the circuit and for protection. By hand, with temperatures by the heat balance of an independent
/// program: the link is 2 m of 1/0 at 0.3560 mΩ/m, joints 0.2 and two fuses of 1 mΩ; the straps are 0.9 m of 1/0 and joints of
/// 0.4, the body 1 mΩ at each; the feed and its return 6 AWG at 1.4523 mΩ/m, joints of 0.4 and a fuse of 1 mΩ: 4.3045 mΩ.
/// </summary>
public class IsolatorTests
{
    /// <summary>
    /// Without an isolator the way to the rear battery has R = 5.6324 mΩ and the rear battery of 12.2 V behind 1 Ω takes
    /// (14 − 12.2 − 30 R)/(1 + R) = 1.6219 A: 14 − 31.6219 R − 30 · 4.3045 mΩ = 13.69276 V. A relay's contacts add 1 mΩ: 1.5905 A
    /// and 13.66135 V. A diode takes 0.7 V: (14 − 0.7 − 12.2 − 30 R)/(1 + R) = 0.9258 A and 12.99668 V.
    /// </summary>
    [Theory]
    [InlineData(null, 31.6219, 13.692759)]
    [InlineData(IsolatorKind.Relay, 31.5905, 13.661345)]
    [InlineData(IsolatorKind.Diode, 30.9258, 12.996684)]
    public void A_relay_adds_its_contacts_and_a_diode_takes_its_fall(IsolatorKind? kind, double linkAmps, double volts)
    {
        Assessment answer = Assessed.Of(PartedBuilds.Behind(Of(kind), 30));
        Near.Relative(linkAmps, answer.Runs[0].PeakCurrentAmps, 1e-4, "through the link, A");
        Near.Absolute(volts, answer.Amplifiers[0].TerminalVolts, 2e-5, "at the amplifier, V");
        Near.Absolute(14 - volts, answer.Amplifiers[0].DropVolts, 2e-5, "drop, V");
    }

    /// <summary>
    /// 14.4 V · 30 A/0.9 = 480 W over R = 0.7125 + 0.2 + 2 + 1 + 0.1425 + 0.2 = 4.2549 mΩ: u = (14 + √(14² − 4 · 480 R))/2 =
    /// 13.85256 V, 34.6506 A, whatever hangs behind.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(20)]
    public void Before_a_charger_the_run_carries_its_input(double loadAmps) =>
        Near.Relative(
            34.6506, Assessed.Of(PartedBuilds.Behind(Charger(30), loadAmps)).Runs[0].PeakCurrentAmps, 1e-4,
            "through the link, A");

    /// <summary>With the engine off it stops: at 12 V its 480 W would be 40.6 A, and 34.6506 A stay the most for long.</summary>
    [Fact]
    public void With_the_engine_off_a_charger_draws_nothing()
    {
        Build build = PartedBuilds.Behind(Charger(30), 20);
        Assessment answer = Assessed.Of(build with { Limits = build.Limits with { EngineOffMinutes = 10 } });
        Near.Relative(34.6506, answer.Runs[0].ThermalCurrentAmps, 1e-4, "through the link for long, A");
        Assert.Equal(-20, answer.Supply.Cases.Single(each => each.Case is SupplyCaseName.EngineOff).AverageBalanceAmps, 6);
    }

    /// <summary>
    /// An ANL of 40 A carries 32 A for long (125 % of a lasting current): too little for the charger's input of 34.65 A, enough
    /// for its output of 30 A; one of 35 A carries 28 A, too little for that.
    /// </summary>
    [Theory]
    [InlineData(50, 40, "")]
    [InlineData(40, 40, "/runs/0/fuse/rating")]
    [InlineData(50, 35, "/runs/0/farFuse/rating")]
    public void Each_side_of_a_charger_is_judged_by_its_own_current(double near, double far, string pointer)
    {
        Build build = PartedBuilds.Behind(Charger(30), 20)
            .WithRun("link", run => run with { Fuse = Anl(near), FarFuse = Anl(far) });
        Assert.Equal(
            pointer.Length > 0 ? [pointer] : Array.Empty<string>(),
            Assessed.Of(build).Findings.Where(finding => finding.Code == "fuse.below-load").Select(finding => finding.Pointer));
    }

    /// <summary>
    /// Behind a charger the battery alone holds 12.0 V, the lowest supply voltage: less 20 A over 2 · 1.4384 + 1.4 mΩ, 11.91447
    /// V.
    /// </summary>
    [Fact]
    public void Behind_a_charger_an_amplifier_is_judged_from_the_lowest_voltage_and_counts_as_charged()
    {
        Assessment answer = Assessed.Of(PartedBuilds.Behind(Charger(30), 20));
        Near.Absolute(11.914466, answer.Amplifiers[0].TerminalVolts, 3e-5, "at the amplifier, V");
        Near.Absolute(0.085534, answer.Amplifiers[0].DropVolts, 3e-5, "drop, V");
        Assert.DoesNotContain(answer.Findings, finding => finding.Code == "amplifier.supply-not-charged");
        Assert.Equal(30, answer.Runs[0].Isolator!.ThroughAmps);
    }

    /// <summary>
    /// Any isolator may fail closed: at the rear battery 12.6 V/1 Ω and 12.6 V over 5 mΩ and 2 · 0.328867 mΩ of cold link:
    /// 2239.64 A. (A closed contact counts as 1 µΩ in the circuit, which is 0.02 %.)
    /// </summary>
    [Theory]
    [InlineData(null)]
    [InlineData(IsolatorKind.Relay)]
    [InlineData(IsolatorKind.Diode)]
    [InlineData(IsolatorKind.DcDcCharger)]
    public void In_a_short_circuit_an_isolator_counts_as_closed(IsolatorKind? kind)
    {
        Assessment answer = Assessed.Of(PartedBuilds.Behind(Of(kind), 20));
        Near.Relative(2239.6396, answer.Runs[0].FarFuse!.LargestFaultAmps!.Value, 2e-4, "at the rear battery, A");
        Near.Relative(2239.6396, answer.Runs[1].Fuse!.LargestFaultAmps!.Value, 2e-4, "at the feed, A");
    }

    [Theory]
    [InlineData(null)]
    [InlineData(IsolatorKind.Relay)]
    [InlineData(IsolatorKind.Diode)]
    [InlineData(IsolatorKind.DcDcCharger)]
    public void A_run_with_an_isolator_wants_a_fuse_at_each_battery(IsolatorKind? kind)
    {
        Build build = PartedBuilds.Behind(Of(kind), 20);
        Assert.Equal(["/runs/0/fuse"], Missing(build.WithRun("link", run => run with { Fuse = NoFuse })));
        Assert.Equal(["/runs/0/farFuse"], Missing(build.WithRun("link", run => run with { FarFuse = NoFuse })));
        Assert.Empty(Missing(build));
    }

    /// <summary>With the engine running relay and diode conduct and a charger parts; with it off all of them part.</summary>
    [Theory]
    [InlineData(null, 1, 1)]
    [InlineData(IsolatorKind.Relay, 1, 2)]
    [InlineData(IsolatorKind.Diode, 1, 2)]
    [InlineData(IsolatorKind.DcDcCharger, 2, 2)]
    public void Batteries_stand_together_or_apart(IsolatorKind? kind, int running, int engineOff)
    {
        CompleteBuild build = BuildCompletion.Complete(PartedBuilds.Behind(Of(kind), 20), RulesetLibrary.Newest,
            new WorkMeter(double.PositiveInfinity));
        var model = BuildModel.Of(build);
        IReadOnlyList<SupplyGroup> groups = SupplyGroup.Of(model, model.Circuit.PartsRunning);
        IReadOnlyList<SupplyGroup> off = SupplyGroup.Of(model, model.Circuit.PartsWithEngineOff);
        Assert.Equal((running, engineOff), (groups.Count, off.Count));
        Assert.All(new[] { groups, off }, each => Assert.Equal([0, 1], each.SelectMany(group => group.Batteries).Order()));
        Assert.Equal([0], groups.Single(group => group.Batteries.Contains(1)).Amplifiers);
        Assert.Equal([0], off.Single(group => group.Batteries.Contains(1)).Amplifiers);
        if (kind is not IsolatorKind.DcDcCharger) return;
        Assert.Equal([0], groups.Single(group => group.Batteries.Contains(0)).ChargersFrom);
        Assert.Equal([0], groups.Single(group => group.Batteries.Contains(1)).ChargersTo);
    }

    /// <summary>
    /// At full output a charger draws 480 W, 34.2857 A at 14 V; on average what hangs behind it: two thirds of that, 22.8571 A. A
    /// hot alternator of 0.8 · 100 A has 35 A left above 45 A of base load.
    /// </summary>
    [Fact]
    public void The_alternator_is_asked_for_what_the_charger_draws()
    {
        SupplyCase atSpeed = Assessed.Of(PartedBuilds.Behind(Charger(30), 20).WithAlternator(100)).Supply.Cases
            .Single(each => each.Case is SupplyCaseName.AtSpeed);
        Near.Relative(35, atSpeed.AvailableAmps, 1e-9, "left, A");
        Near.Relative(35 - 34.285714, atSpeed.PeakBalanceAmps, 1e-5, "left at full output, A");
        Near.Relative(35 - 22.857143, atSpeed.AverageBalanceAmps, 1e-6, "left on average, A");
    }

    private static Isolator? Of(IsolatorKind? kind) => kind switch
    {
        null => null,
        IsolatorKind.Relay => Relay(),
        IsolatorKind.Diode => Diode(),
        _ => Charger(30),
    };

    private static string[] Missing(Build build) =>
        [.. Assessed.Of(build).Findings.Where(finding => finding.Code == "fuse.missing-at-battery")
            .Select(finding => finding.Pointer)];
}
