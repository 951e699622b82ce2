using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>Words for what is lost on the way.</summary>
internal sealed class DropWording(Variant variant)
{
    private readonly CompleteBuild build = variant.Build;
    private readonly BuildModel model = variant.Evaluator.Model;
    private readonly DesignEvaluation evaluation = variant.Sized.Evaluation;

    private const int MostNamed = 6;
    private const double SmallestNamed = 0.005;
    private const double WholeShare = 0.995;

    public static Wording Collapse(Violation violation) =>
        new("/amplifiers", new Params { ["outputShare"] = violation.Limit }, Unit: "1");

    public Wording Over(Violation violation)
    {
        int amplifier = violation.Index;
        double source = model.Circuit.SourceVoltsOf(amplifier);
        double terminal = evaluation.Envelope.TerminalVolts[amplifier], whole = Math.Max(0, source - terminal);
        double decibels = Decibels(source, terminal);
        Part[] parts = Parts(amplifier);
        return new Wording(
            $"/amplifiers/{amplifier}",
            new Params
            {
                ["amplifier"] = build.Stated.Amplifiers[amplifier].Id,
                ["dropVolts"] = violation.Measured,
                ["sourceVolts"] = source,
                ["dropShare"] = violation.Measured / source,
                ["limitShare"] = violation.Limit / source,
                ["terminalVolts"] = terminal,
                ["lostDecibels"] = decibels,
            },
            $"whole drop = {Phrase.Volts(source)} - {Phrase.Volts(terminal)} = {Phrase.Volts(whole)}; of it "
            + string.Join(", ", parts.Where(part => part.Volts > SmallestNamed * whole).Take(MostNamed).Select(Text))
            + Rest(whole - parts.Sum(part => part.Volts), whole)
            + $"; fuses, joints, body and straps left out: {Phrase.Volts(violation.Measured)}",
            "V")
        {
            Variant = (IsRecharging(amplifier) ? ".recharging" : "") + (decibels > 0 ? ".quieter" : ""),
            Remedy = build.Speech.Text(
                violation.Severity is Severity.Fail ? "remedy.drop.changes" : "remedy.drop.larger-conductor",
                new Params { ["mostRun"] = build.Runs[parts[0].Run].Id, ["mostVolts"] = parts[0].Volts }),
        };
    }

    public Wording OutsideRange(Violation violation)
    {
        string id = build.Stated.Amplifiers[violation.Index].Id;
        bool isHigh = violation.Measured > violation.Limit;
        return new Wording(
            $"/amplifiers/{violation.Index}",
            new Params { ["amplifier"] = id, ["volts"] = violation.Measured, ["limitVolts"] = violation.Limit },
            $"{Phrase.Volts(violation.Measured)} {(isHigh ? ">" : "<")} {Phrase.Volts(violation.Limit)}",
            "V")
        {
            Variant = isHigh ? ".above" : ".below",
            Remedy = build.Speech.Text("remedy.amplifier.outside-supply-range" + (isHigh ? ".above" : ".below"), []),
        };
    }

    /// <summary>What an amplifier of a given resistance loses of its output; one that holds its output loses none.</summary>
    public static double Decibels(double source, double terminal) =>
        terminal > 0 ? Math.Round(20 * Math.Log10(source / terminal), 1) : 0;

    public Wording Return(Violation violation)
    {
        string id = build.Stated.Amplifiers[violation.Index].Id;
        return new Wording(
            $"/amplifiers/{violation.Index}",
            new Params { ["amplifier"] = id, ["ofSupplyShare"] = violation.Measured / violation.Limit },
            $"metres to the ohm at 20 C: return {Phrase.Number(violation.Measured)}, supply {Phrase.Number(violation.Limit)}",
            "m/ohm");
    }

    public Wording SharedReturn(Violation violation) => new(
        build.Runs[violation.Index].Pointer + "/conductor",
        new Params
        {
            ["run"] = build.Runs[violation.Index].Id,
            ["ofSupplyShare"] = violation.Measured / violation.Limit,
        },
        $"metres to the ohm at 20 C: shared return {Phrase.Number(violation.Measured)}, supply {Phrase.Number(violation.Limit)}",
        "m/ohm");

    private bool IsRecharging(int amplifier) =>
        evaluation.Envelope.WorstPointOf(amplifier).Case is OperatingCase.Recharging;

    private static string Rest(double volts, double drop) =>
        volts > SmallestNamed * drop ? $", and {Phrase.Volts(volts)} in the body and the battery's strap" : "";

    /// <summary>
    /// Where an amplifier's drop arises, the largest part first. By Tellegen's theorem the drop is the sum over all runs of the
    /// run's voltage times its share of a current drawn by this amplifier alone.
    /// </summary>
    private Part[] Parts(int amplifier)
    {
        OperatingPoint point = evaluation.Envelope.WorstPointOf(amplifier);
        double[] division = variant.Evaluator.Division(amplifier, point);
        return [.. Enumerable.Range(0, build.Runs.Count)
            .Select(run => new Part(
                run,
                division[run] * point.PeakAmps[run] * point.Ohms[run],
                Math.Abs(point.PeakAmps[run]),
                point.Ohms[run],
                Math.Abs(division[run])))
            .OrderByDescending(part => Significant.Round(part.Volts))];
    }

    private string Text(Part part) =>
        $"{Phrase.Volts(part.Volts)} in \"{build.Runs[part.Run].Id}\" ({Phrase.Amps(part.Amps)} x "
        + $"{Phrase.Milliohms(part.Ohms)}{(part.Share < WholeShare ? $" x {Phrase.Percent(part.Share)} of its current" : "")})";

    /// <summary>One run's part in an amplifier's drop.</summary>
    private readonly record struct Part(int Run, double Volts, double Amps, double Ohms, double Share);
}
