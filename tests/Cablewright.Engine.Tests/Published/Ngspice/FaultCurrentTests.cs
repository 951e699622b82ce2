using System.Globalization;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Tests.Properties;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using CsCheck;

namespace Cablewright.Engine.Tests.Published.Ngspice;

/// <summary>
/// Source: ngspice (Debian) on a netlist put together here from the places' names: for the smallest fault one battery at 12.0 V
/// alone, conductors at 105 °C, joints, fuses (0.1 V at their rating), the body to the foot of each strap, and in the amplifier
/// its own return; for the largest both full (12.6 V flooded, 12.85 V glass mat), conductors at 20 °C, and nothing in the return.
/// </summary>
public class FaultCurrentTests
{
    private static readonly string[] Supply = ["starter", "rear", "block", "bass"];

    [Fact]
    public void Fault_currents_of_builds_are_those_of_the_simulator() => TwoBatteryBuilds.Any.Sample(build =>
    {
        (FaultCurrents faults, CircuitModel circuit) = TwoBatteryBuilds.FaultsOf(build);
        Dictionary<string, double> simulator = Simulator.Printed(Netlist(build));
        foreach (string place in Supply)
        {
            int node = NodeOf(build, circuit, place);
            Near.Relative(simulator[$"i(vl{place})"], faults.LargestAt(node), 1e-6, $"largest at {place}, A");
            for (int battery = 0; battery < 2; battery++)
                Near.Relative(simulator[$"i(v{battery}{place})"], faults.SmallestAt(node, battery).Amps, 1e-6,
                    $"smallest at {place} by battery {battery}, A");
        }
    }, iter: 60, threads: 1);

    private static int NodeOf(Build build, CircuitModel circuit, string place)
    {
        int run = Enumerable.Range(0, 4).First(i => build.Runs[i].From == place || build.Runs[i].To == place);
        return build.Runs[run].From == place ? circuit.EndsOf(run).From : circuit.EndsOf(run).To;
    }

    /// <summary>Every fault is a circuit of its own, with a prefix to its nodes; all stand in one netlist.</summary>
    private static string Netlist(Build build)
    {
        List<string> lines = ["* faults of a build with two batteries"];
        foreach (string place in Supply)
        {
            lines.AddRange(Largest(build, place));
            lines.AddRange(Smallest(build, place, 0));
            lines.AddRange(Smallest(build, place, 1));
        }

        lines.AddRange([".options reltol=1e-10 abstol=1e-14 vntol=1e-12 gmin=1e-15", ".control", "set numdgt=15", "op"]);
        lines.AddRange(Supply.SelectMany(place => new[] { $"print i(vl{place})", $"print i(v0{place})", $"print i(v1{place})" }));
        return string.Join('\n', [.. lines, "quit 0", ".endc", ".end", ""]);
    }

    private static IEnumerable<string> Largest(Build build, string place)
    {
        string at = "l" + place;
        for (int battery = 0; battery < 2; battery++)
        {
            Battery given = build.Vehicle.Batteries[battery];
            yield return Line($"VE{battery}{at} {at}e{battery} 0 {(given.Chemistry is Chemistry.Agm ? 12.85 : 12.6):R}");
            yield return Line($"RE{battery}{at} {at}e{battery} {at}{given.Id} {given.InternalOhms!.Value:R}");
        }

        foreach (Run run in build.Runs.Take(4))
            yield return Line($"R{Name(run)}{at} {at}{run.From} {at}{run.To} {Ohms(run, 20):R}");
        yield return Line($"V{at} {at}{place} 0 0");
    }

    private static IEnumerable<string> Smallest(Build build, string place, int battery)
    {
        string at = Line($"{battery}{place}");
        Battery given = build.Vehicle.Batteries[battery];
        string foot = battery == 0 ? "footfront" : "footrear";
        yield return Line($"VE{at} {at}e {at}minus 12.0");
        yield return Line($"RE{at} {at}e {at}{given.Id} {given.InternalOhms!.Value:R}");
        foreach (Run run in build.Runs.Take(4))
            yield return Line(
                $"R{Name(run)}{at} {at}{run.From} {at}{run.To} {Ohms(run, 105) + run.JointOhms!.Value + FuseOhms(run):R}");
        Run strap = build.Runs[5 + battery];
        yield return Line($"Rstrap{at} {at}minus {at}{foot} {Ohms(strap, 105) + strap.JointOhms!.Value:R}");
        yield return Line($"Rbody{at} {at}{foot} 0 {build.Vehicle.BodyReturnOhms!.Value:R}");
        Run back = build.Runs[4];
        yield return Line($"Rreturn{at} {at}{back.From}minus 0 {Ohms(back, 105) + back.JointOhms!.Value:R}");
        yield return Line($"V{at} {at}{place} {(place == back.From ? at + place + "minus" : "0")} 0");
    }

    private static double Ohms(Run run, double celsius) =>
        Conductor.Of(run.Conductor.Size!, run.Conductor.Material!.Value)
            .OhmsPerMetre(celsius) * run.LengthMetres / run.Conductor.Count!.Value;

    private static double FuseOhms(Run run) =>
        new[] { run.Fuse, run.FarFuse }.Sum(fuse => fuse?.RatingAmps is { } rating ? 0.1 / rating : 0);

    private static string Name(Run run) => run.Id.Replace("-", "", StringComparison.Ordinal);

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
