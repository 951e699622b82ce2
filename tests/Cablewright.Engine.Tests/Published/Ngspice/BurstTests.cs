using Cablewright.Engine.Builds;
using Cablewright.Engine.Supply;
using Cablewright.Engine.Tests.Supply;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Published.Ngspice;

/// <summary>
/// Source: ngspice (Debian), transient analysis of the same bursts: capacitors at the charging voltage and nothing settled at
/// first, alternators as current sources, constant-power loads as behavioural sources. The lowest voltage at every amplifier
/// from 10 µs to several times agrees to a thousandth, with the capacitors and without.
/// </summary>
public class BurstTests
{
    private const double Tolerance = 1e-3;
    private static readonly double[] Times = [0.001, 0.01, 0.1, 0.5];

    public static TheoryData<Tie, int> Builds()
    {
        var builds = new TheoryData<Tie, int>();
        foreach (Tie tie in new[] { Tie.Alone, Tie.Wire, Tie.Relay, Tie.Charger })
        {
            for (int number = 0; number < 6; number++) builds.Add(tie, 500 + number);
        }

        return builds;
    }

    public static TheoryData<string> Cases() => ["farad", "module", "two-capacitors", "settling", "weak", "current", "none"];

    [Theory]
    [MemberData(nameof(Builds))]
    public void The_lowest_voltage_in_a_burst_is_the_simulator_s(Tie tie, int number) =>
        Compare(new SupplyRig(SupplyBuilds.Make(number, tie)), 150 * new Random(number).NextDouble());

    [Theory]
    [MemberData(nameof(Cases))]
    public void So_it_is_in_bursts_chosen_by_hand(string which) => Compare(new SupplyRig(Chosen(which)), 70);

    private static void Compare(SupplyRig rig, double given)
    {
        double vehicle = rig.Complete.Supply.BaseLoadAmps;
        foreach (bool isStiffened in new[] { true, false })
        {
            SupplyNetlist supply = new(rig, given, vehicle);
            string netlist = supply.Transient(Times, isStiffened);
            double[]?[] engine = [.. Times.Select(seconds => Lowest(rig, given, seconds, isStiffened))];
            Dictionary<string, double> simulator = Simulator.Printed(netlist);
            for (int time = 0; time < Times.Length; time++)
            {
                bool isHeld = supply.IsHeld(simulator, Times[time]);
                Assert.True(isHeld == engine[time] is not null, $"until {Times[time]} s the engine says otherwise of\n{netlist}");
                for (int i = 0; isHeld && i < rig.Build.Amplifiers.Count; i++)
                {
                    string name = SupplyNetlist.Name(rig.Build.Amplifiers[i].Id, Times[time]);
                    Near.Relative(simulator[name], engine[time]![i], Tolerance, $"{name}, V of\n{netlist}");
                }
            }
        }
    }

    private static double[]? Lowest(SupplyRig rig, double given, double seconds, bool isStiffened) => Burst.LowestWithin(
        isStiffened ? rig.Complete : rig.Complete with { Capacitors = [] },
        isStiffened ? rig.Circuit : new SupplyRig(
            rig.Build with { Vehicle = rig.Build.Vehicle with { Capacitors = [] } }).Circuit,
        given,
        seconds);

    private static Build Chosen(string which)
    {
        Battery battery = new() { Id = "starter", Chemistry = Chemistry.Agm, InternalOhms = 0.004 };
        Vehicle vehicle = new() { ChargingVolts = 14.4, BodyReturnOhms = 0.0005, BaseLoadAmps = 40, Batteries = [battery] };
        Polarisation[] settling = [new Polarisation(0.003, 0.02), new Polarisation(0.004, 0.4)];
        Build loud = OneAmplifier().WithAmplifier(amplifier => amplifier with { RatedOutputWatts = 2000 });
        Build build = loud with { Vehicle = vehicle };
        return which switch
        {
            "farad" => Stiffened(build, Part("bass", 1, 0.002)),
            "module" => Stiffened(build, Part("bass", 500, 0.0021)),
            "two-capacitors" => Stiffened(build, Part("bass", 0.2, 0.0005), Part("starter", 20, 0.005)),
            "settling" => build with { Vehicle = vehicle with { Batteries = [battery with { Polarisation = settling }] } },
            "weak" => Stiffened(
                build with
                {
                    Vehicle = vehicle with
                    {
                        Batteries = [battery with { InternalOhms = 0.009, Polarisation = settling }],
                    }
                },
                Part("bass", 2, 0.001)),
            "current" => Stiffened(
                build.WithAmplifier(amplifier => amplifier with { PowerSupply = PowerSupply.Unregulated }),
                Part("bass", 1, 0.002)),
            _ => build,
        };
    }

    private static Build Stiffened(Build build, params Capacitor[] parts) =>
        build with { Vehicle = build.Vehicle with { Capacitors = parts } };

    private static Capacitor Part(string at, double farads, double ohms) => new() { At = at, Farads = farads, SeriesOhms = ohms };
}
