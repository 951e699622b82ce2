using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Properties;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Protection;

/// <summary>Supply networks drawn run by run, whose currents and temperatures are set by hand.</summary>
internal static class Drawn
{
    /// <summary>
    /// The runs, an amplifier "bass" that returns over 1 m of 6 AWG, and the batteries "starter" and "rear", the latter where a
    /// run names it; 5 mΩ each, 40 °C.
    /// </summary>
    public static Build Of(params Run[] runs)
    {
        bool hasRear = runs.Any(run => run.From == "rear" || run.To == "rear");
        Battery rear = Starter() with { Id = "rear" };
        Run back = Run("rear-return", "rear", "starter", 1, "1/0 AWG") with { Side = Side.Return };
        return OneAmplifier() with
        {
            Vehicle = OneAmplifier().Vehicle with { Batteries = hasRear ? [Starter(), rear] : [Starter()] },
            Runs = [.. runs, Run("return", "bass", "starter", 1, "6 AWG"), .. hasRear ? [back] : Array.Empty<Run>()],
        };
    }

    /// <summary>A supply run of 1 m about whose fuses nothing is said.</summary>
    public static Run Wire(string id, string from, string to, string size = "1/0 AWG") =>
        Run(id, from, to, 1, size) with { Side = Side.Supply };

    /// <summary>The same with an ANL fuse at its start.</summary>
    public static Run Fused(string id, string from, string to, double amps = 100, string size = "1/0 AWG") =>
        Wire(id, from, to, size) with { Fuse = Anl(amps) };

    public static Run Times(this Run run, int count) => run with { Conductor = run.Conductor with { Count = count } };

    public static BuildModel ModelOf(Build build) =>
        BuildModel.Of(BuildCompletion.Complete(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity)));

    /// <summary>The design that a build gives in full: what it leaves open of fuses is not there.</summary>
    public static Design DesignOf(BuildModel model) => TwoBatteryBuilds.DesignOf(model.Build);

    /// <summary>That design with every conductor at one temperature.</summary>
    public static DesignEvaluation EvaluationAt(double celsius, BuildModel model)
    {
        Design design = DesignOf(model);
        return new DesignEvaluation(
            design, EnvelopeOf(model, celsius, _ => (0, 0)), new ProtectionMap(model.Topology, design), [], 1);
    }

    /// <summary>Currents by the id of a run: the largest and the continuous one.</summary>
    public static OperatingEnvelope EnvelopeOf(BuildModel model, double celsius, Func<string, (double Peak, double Thermal)> amps)
    {
        (double Peak, double Thermal)[] ofRuns = [.. model.Build.Runs.Select(run => amps(run.Id))];
        double[] peak = [.. ofRuns.Select(each => each.Peak)], thermal = [.. ofRuns.Select(each => each.Thermal)];
        double[] hot = [.. ofRuns.Select(_ => celsius)];
        return new OperatingEnvelope([new OperatingPoint(OperatingCase.Running, peak, thermal, hot, peak, [12], [0], [0], 0, [])],
            false);
    }

    /// <summary>Where a fuse stands, in words: <c>main near</c>.</summary>
    public static string Words(BuildModel model, RunEnd end) => $"{model.Build.Runs[end.Run].Id} {(end.IsFar ? "far" : "near")}";

    /// <summary>A fuse in words: <c>100 A ANL</c>.</summary>
    public static string Words(FittedFuse fuse) => $"{fuse.RatingAmps} A {fuse.Family.Name.Word()}";
}
