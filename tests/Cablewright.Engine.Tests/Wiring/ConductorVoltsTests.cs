using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Tests.Properties;
using Cablewright.Engine.Tests.Published;
using Cablewright.Engine.Wiring;
using CsCheck;
using static Cablewright.Engine.Tests.Protection.Drawn;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Wiring;

/// <summary>What an amplifier loses in the conductors of supply and return alone.</summary>
public class ConductorVoltsTests
{
    /// <summary>
    /// The golden case "one-amplifier-one-run": of its 4.326580 mΩ the main run's conductor has 0.328867 · 4.8768 · 1.106955 =
    /// 1.775356 mΩ and the return's 0.218425 mΩ; the fuse 0.666667, joints 0.4, the body 1 and the strap 0.266132 mΩ are left
    /// out. 1.993781 mΩ · 91.8955 A = 0.183220 V, 1.308711 % of 14 V.
    /// </summary>
    [Fact]
    public void Fuse_joints_body_and_strap_are_left_out()
    {
        AmplifierResult bass = Assessed.Of(OneAmplifier()).Amplifiers[0];
        Near.Relative(0.183220, bass.ConductorDropVolts, 2e-5, "conductors, V");
        Near.Relative(1.308711, bass.ConductorDropPercent, 2e-5, "conductors, %");
        Near.Relative(0.397593, bass.DropVolts, 2e-5, "all, V");
    }

    /// <summary>
    /// 60 A and 40 A over one main run of two conductors, each with a fuse of 0.1 V at 100 A: to the first 100 A · R + 60 A · (R'
    /// + R''), to the second 100 A · R + 40 A · (R' + R''), each R what the answer says less 0.2 mΩ of joints and the fuses: half
    /// a milliohm on the main run and one on each feed. A return wired back to the battery is no strap.
    /// </summary>
    [Fact]
    public void On_a_shared_run_the_current_of_all_counts()
    {
        Build build = OneAmplifier() with
        {
            Amplifiers = [new Amplifier { Id = "a", OnBoardFuseAmps = 60 }, new Amplifier { Id = "b", OnBoardFuseAmps = 40 }],
            Runs =
            [
                Run("main", "starter", "block", 3, "4 AWG").Times(2) with { Fuse = Anl(100) with { PerConductor = true } },
                Run("feed-a", "block", "a", 1, "4 AWG") with { Fuse = Anl(100) },
                Run("feed-b", "block", "b", 2, "6 AWG") with { Fuse = Anl(100) },
                Run("return-a", "a", "starter", 3, "4 AWG"),
                Run("return-b", "b", "starter", 4, "4 AWG"),
            ],
        };
        Assessment answer = Assessed.Of(build);
        double[] others = [0.7, 1.2, 1.2, 0.2, 0.2];
        double[] ohms = [.. answer.Runs.Zip(others, (run, other) => (run.ResistanceMilliohms - other) / 1000)];
        Near.Relative(
            100 * ohms[0] + 60 * (ohms[1] + ohms[3]), answer.Amplifiers[0].ConductorDropVolts, 1e-6, "to the first, V");
        Near.Relative(
            100 * ohms[0] + 40 * (ohms[2] + ohms[4]), answer.Amplifiers[1].ConductorDropVolts, 1e-6, "to the second, V");
    }

    /// <summary>
    /// By Tellegen's theorem: the conductors' part, and that of fuses, joints, the strap and the body before it, make up the
    /// whole loss, which comes from the potentials alone.
    /// </summary>
    [Fact]
    public void With_the_other_parts_it_is_the_whole_loss() => GivenBuilds.Loops.Sample(build =>
    {
        BuildModel model = ModelOf(build);
        var evaluator = new Evaluator(model.Build);
        if (evaluator.TryEvaluate(DesignOf(model)) is not { } evaluation) return;
        for (int amplifier = 0; amplifier < build.Amplifiers.Count; amplifier++)
        {
            double conductors = evaluator.ConductorVolts(amplifier, evaluation);
            Assert.True(conductors > 0);
            Near.Absolute(
                evaluator.Model.Circuit.LostVolts(amplifier, evaluation.Envelope),
                conductors + OtherVolts(evaluator, amplifier, evaluation), 1e-6, build.Amplifiers[amplifier].Id + ", V");
        }
    }, iter: 300);

    private static double OtherVolts(Evaluator evaluator, int amplifier, DesignEvaluation evaluation)
    {
        OperatingPoint point = evaluation.Envelope.WorstPointOf(amplifier);
        double[] division = evaluator.Division(amplifier, point);
        Build build = evaluator.Model.Build.Stated;
        double volts = 0;
        for (int run = 0; run < division.Length; run++)
        {
            double ohms = build.Runs[run].Id == "strap"
                ? point.Ohms[run] + build.Vehicle.BodyReturnOhms!.Value
                : build.Runs[run].JointOhms!.Value + evaluation.Design.FuseOhms(run);
            volts += division[run] * point.PeakAmps[run] * ohms;
        }

        return volts;
    }
}
