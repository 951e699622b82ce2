using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using CsCheck;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Properties;

/// <summary>What must hold of fault currents and of the fuses that end them.</summary>
public class ProtectionPropertyTests
{
    private const int Builds = 300;
    private const double Rounding = 1e-9;

    private static readonly Gen<FuseFamily> AnyFamily = Gen.OneOfConst([.. RulesetLibrary.Newest.FuseFamilies.All]);

    /// <summary>
    /// One run, a load that draws the same at any voltage: only the fuse changes, and with it the resistance that it adds.
    /// </summary>
    [Fact]
    public void A_bigger_fuse_never_opens_sooner_and_never_protects_better() =>
        Gen.Select(AnyFamily, Gen.OneOfConst(GivenBuilds.Gauges), Gen.Double[0.3, 30], Gen.Double[5, 500], Gen.Double[1.01, 4])
            .Sample((family, gauge, metres, rating, factor) =>
        {
            FuseResult smaller = Fuse(rating), bigger = Fuse(rating * factor);
            double opens = smaller.OpensSeconds ?? double.PositiveInfinity,
                opensBigger = bigger.OpensSeconds ?? double.PositiveInfinity;
            Assert.True(opensBigger >= opens * (1 - Rounding), $"{opensBigger} s against {opens} s");
            Assert.True(Strain(bigger) >= Strain(smaller) * (1 - Rounding), $"strain {Strain(bigger)} against {Strain(smaller)}");

            FuseResult Fuse(double amps) => Assessed.Of(ConstantCurrent(2) with
            {
                Runs =
                [
                    Run("main", "starter", "bass", metres,
                        gauge + " AWG") with { Fuse = Anl(amps) with { Family = family.Name } },
                    Run("return", "bass", "starter", 1, "4 AWG"),
                ],
            }).Runs[0].Fuse!;
        }, iter: Builds);

    [Fact]
    public void A_longer_path_never_raises_a_fault_current() =>
        Gen.Select(TwoBatteryBuilds.Any, Gen.Int[0, 3], Gen.Double[1.02, 3]).Sample((build, pick, factor) =>
            FaultsNoLarger(build.WithRun(build.Runs[pick].Id, run => run with { LengthMetres = factor * run.LengthMetres }),
                build), iter: Builds);

    [Fact]
    public void A_larger_conductor_never_lowers_a_fault_current() =>
        Gen.Select(TwoBatteryBuilds.Any, Gen.Int[0, 3], Gen.Int[1, 4]).Sample((build, pick, steps) =>
            FaultsNoLarger(build, build.WithRun(build.Runs[pick].Id, run => Larger(run, steps))), iter: Builds);

    [Fact]
    public void A_body_of_more_resistance_never_raises_the_smallest_fault() =>
        Gen.Select(TwoBatteryBuilds.Any, Gen.Double[1.02, 10]).Sample((build, factor) =>
            FaultsNoLarger(build with { Vehicle = build.Vehicle with { BodyReturnOhms = factor * build.Vehicle.BodyReturnOhms } },
                build), iter: Builds);

    [Fact]
    public void The_smallest_fault_is_never_above_the_largest() => TwoBatteryBuilds.Any.Sample(build =>
    {
        (FaultCurrents faults, CircuitModel circuit) = TwoBatteryBuilds.FaultsOf(build);
        foreach (int node in Nodes(circuit)) Assert.All(Enumerable.Range(0, 2), battery =>
            Assert.True(faults.SmallestAt(node, battery).Amps <= faults.LargestAt(node)));
    }, iter: Builds);

    /// <summary>
    /// Without an alternator and with batteries of one chemistry: where one stands above the other, a way between them may take
    /// from a fault.
    /// </summary>
    private static void FaultsNoLarger(Build lesser, Build greater)
    {
        (FaultCurrents less, CircuitModel circuit) = TwoBatteryBuilds.FaultsOf(Flooded(lesser));
        (FaultCurrents more, _) = TwoBatteryBuilds.FaultsOf(Flooded(greater));
        foreach (int node in Nodes(circuit))
        {
            NoLarger(less.LargestAt(node), more.LargestAt(node), "largest");
            NoLarger(less.SmallestAt(node, 0).Amps, more.SmallestAt(node, 0).Amps, "smallest by the starter battery");
            NoLarger(less.SmallestAt(node, 1).Amps, more.SmallestAt(node, 1).Amps, "smallest by the rear battery");
        }

        static void NoLarger(double less, double more, string which) =>
            Assert.True(less <= more * (1 + Rounding), $"{which}: {less} A against {more} A");
    }

    private static Build Flooded(Build build) => build with
    {
        Vehicle = build.Vehicle with
        {
            Batteries = [.. build.Vehicle.Batteries.Select(battery => battery with { Chemistry = Chemistry.Flooded })],
        },
    };

    private static IEnumerable<int> Nodes(CircuitModel circuit) =>
        Enumerable.Range(0, 4).SelectMany(run => new[] { circuit.EndsOf(run).From, circuit.EndsOf(run).To }).Distinct();

    private static double Strain(FuseResult fuse) => fuse.OpensSeconds is { } opens
        ? opens / (fuse.ConductorWithstandSeconds ?? double.PositiveInfinity) : double.PositiveInfinity;

    private static Run Larger(Run run, int steps)
    {
        string[] gauges = GivenBuilds.Gauges;
        int index = Array.IndexOf(gauges, run.Conductor.Size!.Label[..^4]);
        string gauge = gauges[Math.Min(index + steps, gauges.Length - 1)];
        return run with { Conductor = run.Conductor with { Size = ConductorSize.Of(gauge + " AWG") } };
    }
}
