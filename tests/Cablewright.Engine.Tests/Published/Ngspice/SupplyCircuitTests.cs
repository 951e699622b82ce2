using Cablewright.Engine.Tests.Supply;


namespace Cablewright.Engine.Tests.Published.Ngspice;

/// <summary>
/// Source: ngspice (Debian), on the supply of whole builds: alternators as current sources, batteries behind their resistance,
/// constant-power loads and chargers as behavioural sources, isolating diodes as diodes.
/// </summary>
public class SupplyCircuitTests
{
    private const int BuildsOfEachKind = 24;

    /// <summary>The simulator's diode gives way to some millivolts over and above its forward voltage.</summary>
    private const double DiodeTolerance = 3e-4;

    public static TheoryData<Tie, int> Builds()
    {
        var builds = new TheoryData<Tie, int>();
        foreach (Tie tie in Enum.GetValues<Tie>())
        {
            for (int number = 0; number < BuildsOfEachKind; number++) builds.Add(tie, number);
        }

        return builds;
    }

    [Theory]
    [MemberData(nameof(Builds))]
    public void The_voltage_at_every_amplifier_is_the_simulator_s(Tie tie, int number)
    {
        var rig = new SupplyRig(SupplyBuilds.Make(number, tie));
        var random = new Random(number);
        double? given = number % 4 == 0 ? null : 220 * random.NextDouble();
        double vehicle = given is null ? 5 * random.NextDouble() : 50 * random.NextDouble();
        string netlist = new SupplyNetlist(rig, given, vehicle).OperatingPoint();
        Dictionary<string, double> simulator = Simulator.Printed(netlist);
        double[]? engine = rig.Circuit.Solve(rig.Circuit.Resting(), given, vehicle);
        if (engine is null)
        {
            Assert.True(simulator.Count == 0 || simulator.Values.Any(volts => volts < 4),
                $"the simulator finds a solution of\n{netlist}");
            return;
        }

        double tolerance = tie is Tie.Diode ? DiodeTolerance : 1e-6;
        for (int i = 0; i < engine.Length; i++)
            Near.Relative(simulator["across_" + rig.Build.Amplifiers[i].Id], engine[i], tolerance, $"a{i}, V of\n{netlist}");
    }

    /// <summary>Else most builds would be beyond collapse, and nothing compared.</summary>
    [Fact]
    public void Most_builds_have_a_solution()
    {
        SupplyRig[] rigs =
            [.. from tie in Enum.GetValues<Tie>() from number in Enumerable.Range(0, BuildsOfEachKind)
                select new SupplyRig(SupplyBuilds.Make(number, tie))];
        Assert.True(rigs.Count(rig => rig.Circuit.Solve(rig.Circuit.Resting(), 100, 30) is not null) > 0.7 * rigs.Length);
    }
}
