using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Network;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Published;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Reports.Assessments;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Network;

/// <summary>
/// Closed forms. A constant-power load P behind a source V and a resistance R has u = (V + √(V² − 4PR))/2, so the largest power
/// with a solution is V²/4R, at half the voltage.
/// </summary>
public class CollapseTests
{
    private static readonly ElectricalNetwork SupplyAndReturn = new(
        4, [new Branch(0, 1), new Branch(2, 3)], [], [new LoadPort(1, 2)], [0, 3]);

    [Theory]
    [InlineData(12, 0.01)]
    [InlineData(13.8, 0.0034)]
    [InlineData(14.4, 0.5)]
    [InlineData(27.6, 0.02)]
    public void The_largest_power_behind_one_resistance_is_a_quarter_of_V_squared_over_R(double volts, double ohms)
    {
        double largest = Loaded(volts, ohms, 1).LargestFactor();
        Near.Relative(volts * volts / (4 * ohms), largest, 1e-5, "largest power, W");
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(0.99)]
    [InlineData(0.999999)]
    public void The_upper_of_the_two_solutions_is_found(double shareOfLargest)
    {
        const double Volts = 13.8, Ohms = 0.01;
        double watts = shareOfLargest * Volts * Volts / (4 * Ohms);
        double[] solved = Loaded(Volts, Ohms, watts).Solve()!;
        double expected = (Volts + Math.Sqrt(Volts * Volts - 4 * watts * Ohms)) / 2;
        Near.Relative(expected, solved[1] - solved[2], 1e-9, "load voltage");
    }

    [Theory]
    [InlineData(1.00001)]
    [InlineData(1.1)]
    [InlineData(2)]
    [InlineData(1e6)]
    public void Beyond_the_largest_power_the_outcome_is_collapse_and_no_exception(double shareOfLargest) =>
        Assert.Null(Loaded(13.8, 0.01, shareOfLargest * 13.8 * 13.8 / 0.04).Solve());

    /// <summary>Two equal loads at R each behind a common R0 act as one of twice the current: P = V²/4(2 R0 + R) each.</summary>
    [Theory]
    [InlineData(0.004, 0.002)]
    [InlineData(0.001, 0.01)]
    public void Two_equal_loads_on_a_common_run_share_its_limit(double commonOhms, double ownOhms)
    {
        var network = new ElectricalNetwork(
            5, [new Branch(0, 2), new Branch(2, 1), new Branch(2, 3)], [], [new LoadPort(1, 4), new LoadPort(3, 4)], [0, 4]);
        LoadDraw one = new(LoadKind.ConstantPower, 1);
        var circuit = new Circuit(network, [commonOhms, ownOhms, ownOhms], [], [one, one], [13.8, 0]);
        Near.Relative(13.8 * 13.8 / (4 * (2 * commonOhms + ownOhms)), circuit.LargestFactor(), 1e-5, "largest power each, W");
    }

    /// <summary>
    /// A battery E behind r at the load's end: Thevenin of both sources, V' = (V/R + E/r)/(1/R + 1/r), R' = R r/(R + r).
    /// </summary>
    [Fact]
    public void A_battery_at_the_load_raises_the_limit_to_that_of_both_together()
    {
        const double Volts = 13.8, Ohms = 0.01, BatteryVolts = 12.5, BatteryOhms = 0.006;
        var network = new ElectricalNetwork(3, [new Branch(0, 1)], [new SourcePort(1, 2)], [new LoadPort(1, 2)], [0, 2]);
        var circuit = new Circuit(
            network, [Ohms], [new SourceState(BatteryVolts, BatteryOhms)], [new LoadDraw(LoadKind.ConstantPower, 1)], [Volts, 0]);
        double together = 1 / (1 / Ohms + 1 / BatteryOhms);
        double open = (Volts / Ohms + BatteryVolts / BatteryOhms) * together;
        Near.Relative(open * open / (4 * together), circuit.LargestFactor(), 1e-5, "largest power, W");
    }

    [Fact]
    public void A_battery_that_is_not_connected_changes_nothing()
    {
        var network = new ElectricalNetwork(3, [new Branch(0, 1)], [new SourcePort(1, 2)], [new LoadPort(1, 2)], [0, 2]);
        var circuit = new Circuit(
            network,
            [0.01],
            [new SourceState(12.5, double.PositiveInfinity)],
            [new LoadDraw(LoadKind.ConstantPower, 1)],
            [13.8, 0]);
        Near.Relative(13.8 * 13.8 / 0.04, circuit.LargestFactor(), 1e-5, "largest power, W");
    }

    private static Circuit Loaded(double volts, double ohms, double watts) =>
        new(SupplyAndReturn, [0.6 * ohms, 0.4 * ohms], [], [new LoadDraw(LoadKind.ConstantPower, watts)], [volts, 0]);

    /// <summary>Fifteen diodes of 1.2 V in a row leave nothing of any car's voltage, however little is drawn.</summary>
    [Fact]
    public void Diodes_that_take_the_whole_voltage_leave_nothing()
    {
        Build row = SlowShapes.Isolated(16, IsolatorKind.Diode);
        Assessment answer = Assessor.Assess(
            row with
            {
                Amplifiers = [row.Amplifiers[15]],
                Runs = [.. row.Runs.Where(run => run.Isolator is not null).Select(run => run with
                {
                    Isolator = run.Isolator! with { ForwardVolts = 1.2 },
                }), row.Runs[^1]],
            },
            RulesetLibrary.Newest);
        Assert.Equal(0, answer.Findings.Single(finding => finding.Code == "circuit.voltage-collapse").Limit);
        Assert.Equal(0, answer.Amplifiers[0].TerminalVolts);
    }
}
