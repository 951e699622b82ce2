using Cablewright.Contract.Assessments;
using Cablewright.Engine.Tests.Properties;
using CsCheck;

namespace Cablewright.Engine.Tests.Published.Ngspice;

/// <summary>
/// Source: ngspice (Debian), on whole builds: how the engine reads places and sides is not used to write the netlist.
/// </summary>
public class AnswerTests
{
    [Fact]
    public void An_answer_is_what_the_simulator_says_of_the_same_build() => GivenBuilds.Loops.Sample(build =>
    {
        Assessment answer = Assessed.Of(build);
        if (answer.Findings.Any(finding => finding.Code == "circuit.voltage-collapse")) return;
        Dictionary<string, double> printed = Simulator.Printed(new AnswerNetlist(build, answer).Text());
        double allowed = 1e-5 * build.Vehicle.ChargingVolts!.Value;
        foreach (AmplifierResult amplifier in answer.Amplifiers)
            Near.Absolute(
                printed["across_" + amplifier.Id], amplifier.TerminalVolts, allowed, amplifier.Id + " terminal voltage");
        foreach (RunResult run in answer.Runs)
            Near.Absolute(Math.Abs(printed["drop_" + AnswerNetlist.Name(run.Id)]), run.DropVolts, allowed, run.Id + " drop");
    }, iter: 60);
}
