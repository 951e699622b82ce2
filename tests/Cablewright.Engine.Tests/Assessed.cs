using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Network;
using Cablewright.Engine.Tests.Published;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Assessments;

namespace Cablewright.Engine.Tests;

/// <summary>
/// Assesses a build and checks the answer against the circuit it is an answer about: with the resistances that the answer
/// reports, the circuit is solved once more, its balances are asserted, and currents and voltages must be those reported.
/// </summary>
internal static class Assessed
{
    private const double Tolerance = 1e-5;
    private const double CasesTolerance = 0.01;

    /// <summary>A conductor that carries too much is at very different temperatures in one case and the other.</summary>
    private const double OverheatedTolerance = 0.05;

    /// <summary>Without the questions to ask next and what would make it feasible, which take most of the time.</summary>
    public static Assessment Of(Build build) => Of(build, advises: false);

    public static Assessment WithAdvice(Build build) => Of(build, advises: true);

    /// <summary>With as much work for the choice of the open conductors, in runs solved, and without advice.</summary>
    public static Assessment WithinWork(Build build, double runs)
    {
        WorkMeter part = new WorkMeter(double.PositiveInfinity).Part(runs);
        return new AssessmentWriter(Variant.Of(build, RulesetLibrary.Newest, part)).Write([]);
    }

    private static Assessment Of(Build build, bool advises)
    {
        Assert.Empty(FaultFinder.Find(build));
        Assessment answer = Assessor.Assess(build, RulesetLibrary.Newest, advises);
        if (!answer.Findings.Any(finding => finding.Code == "circuit.voltage-collapse")) AgreesWithItsCircuit(build, answer);
        return answer;
    }

    private static void AgreesWithItsCircuit(Build build, Assessment answer)
    {
        CompleteBuild complete = BuildCompletion.Complete(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity));
        var wiring = new CircuitModel(complete);
        if (complete.Batteries.Count == 1 && !complete.PutsInCurrent)
            AgreesWithItsRunningCircuit(complete, wiring, answer);
        else LiesBetweenItsCases(complete, wiring, answer);
    }

    private static Circuit CircuitOf(
        CompleteBuild complete, CircuitModel wiring, Assessment answer, OperatingCase operatingCase) => new(
        wiring.Network,
        [.. answer.Runs.Select(run => run.ResistanceMilliohms / 1000), .. wiring.FixedOhms],
        wiring.SourcesIn(operatingCase),
        [.. complete.Draws.Select(draw => draw.Full), .. wiring.OthersIn(operatingCase)],
        wiring.FixedVoltsIn(operatingCase));

    /// <summary>
    /// With several batteries, or an alternator that puts in its current elsewhere, an answer takes the worst of several cases,
    /// run by run, each with its own temperatures: its figures are nearly those of the worse case at the resistances reported.
    /// </summary>
    private static void LiesBetweenItsCases(CompleteBuild complete, CircuitModel wiring, Assessment answer)
    {
        double tolerance = answer.Runs.Any(run => run.Utilisation is > 1) ? OverheatedTolerance : CasesTolerance;
        Circuit[] cases =
            [.. wiring.Cases.Where(known => known is not OperatingCase.LowVoltage)
                .Select(known => CircuitOf(complete, wiring, answer, known))];
        double[][] volts =
            [.. cases.Select(
                circuit => circuit.Solve() ?? throw new InvalidOperationException("The circuit of the answer collapses."))];
        for (int i = 0; i < answer.Amplifiers.Count; i++)
        {
            double worst = cases.Zip(volts, (circuit, solved) => circuit.VoltsAcross(i, solved)).Min();
            Near.Relative(worst, answer.Amplifiers[i].TerminalVolts, tolerance, answer.Amplifiers[i].Id + " terminal voltage");
        }
    }

    private static void AgreesWithItsRunningCircuit(CompleteBuild complete, CircuitModel wiring, Assessment answer)
    {
        Circuit circuit = CircuitOf(complete, wiring, answer, OperatingCase.Running);
        double[] ohms = circuit.BranchOhms,
            volts = circuit.Solve() ?? throw new InvalidOperationException("The circuit of the answer collapses.");
        for (int i = 0; i < answer.Amplifiers.Count; i++)
        {
            AmplifierResult amplifier = answer.Amplifiers[i];
            double across = circuit.VoltsAcross(i, volts);
            Near.Relative(across, amplifier.TerminalVolts, Tolerance, amplifier.Id + " terminal voltage");
            Near.Relative(
                CircuitSolver.Amps(circuit.Draws[i], across),
                amplifier.PeakCurrentAmps,
                Tolerance,
                amplifier.Id + " peak current");
            Near.Absolute(complete.ChargingVolts - across, amplifier.DropVolts, Tolerance, amplifier.Id + " drop");
        }

        for (int i = 0; i < answer.Runs.Count; i++)
        {
            RunResult run = answer.Runs[i];
            double drop = Math.Abs(volts[wiring.Network.Branches[i].From] - volts[wiring.Network.Branches[i].To]);
            Near.Absolute(drop, run.DropVolts, Tolerance, run.Id + " drop");
            Near.Absolute(drop / ohms[i], run.PeakCurrentAmps, Tolerance / ohms[i], run.Id + " peak current");
            HasTheResistanceOfItsParts(complete.Runs[i], run);
            Near.Relative(run.DropVolts * run.PeakCurrentAmps, run.LossWatts, Tolerance, run.Id + " loss");
            if (run.AmpacityAmps > 0)
                Near.Relative(
                    run.ThermalCurrentAmps / run.AmpacityAmps, run.Utilisation!.Value, Tolerance, run.Id + " utilisation");
        }
    }

    /// <summary>
    /// The reported temperature is the worst of all cases and the resistance that of one of them, so it lies between that of the
    /// air, in the mean over its length, and that of its hottest part.
    /// </summary>
    private static void HasTheResistanceOfItsParts(CompleteRun described, RunResult run)
    {
        var conductor = Conductor.Of(ConductorSize.Of(run.Conductor.Size), run.Conductor.Material);
        double metres = run.LengthMetres / run.Conductor.Count;
        double parts = described.SeriesOhms + FuseOhms(run.Fuse, described, run.Conductor.Count)
            + FuseOhms(run.FarFuse, described, run.Conductor.Count);
        double cold = parts + conductor.OhmsPerMetre(described.MeanAirCelsius) * metres,
            hot = parts + conductor.OhmsPerMetre(run.TemperatureCelsius) * metres;
        Assert.InRange(run.ResistanceMilliohms / 1000, cold * (1 - Tolerance), hot * (1 + Tolerance));
    }

    private static double FuseOhms(FuseResult? fuse, CompleteRun run, int conductors) =>
        fuse is null
            ? 0
            : (RulesetLibrary.Newest.FuseFamilies.Of(fuse.Family).Ohms(fuse.RatingAmps) + run.FuseTerminationOhms)
                / (fuse.PerConductor ? conductors : 1);
}
