using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
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

    public static Wording Collapse(Violation violation)
    {
        string share = Phrase.Percent(violation.Limit);
        return new Wording(
            "/amplifiers",
            "The wiring cannot carry the rated output: as more is drawn the voltage falls faster than the current rises. "
            + $"The most that it can carry is {share} of it; all other figures of this answer stand for that output.",
            "the changes worked out with this answer",
            $"the node equations with constant-power loads have no solution above {share} of the rated output; "
            + "for one source V behind one resistance R the limit is P = V^2 / (4 R)",
            "1");
    }

    public Wording Over(Violation violation)
    {
        int amplifier = violation.Index;
        double source = model.Circuit.SourceVoltsOf(amplifier);
        double terminal = evaluation.Envelope.TerminalVolts[amplifier], whole = Math.Max(0, source - terminal);
        string word = violation.Kind switch
        {
            ViolationKind.DropOverLimit => "above the limit",
            ViolationKind.DropHigh => "more than the usual",
            _ => "above the design target",
        };
        Part[] parts = Parts(amplifier);
        return new Wording(
            $"/amplifiers/{amplifier}",
            $"The conductors to amplifier \"{build.Stated.Amplifiers[amplifier].Id}\" and back lose "
            + $"{Phrase.Volts(violation.Measured)} of {Phrase.Volts(source)} ({Phrase.Percent(violation.Measured / source)})"
            + $"{Circumstance(amplifier)}, {word} of {Phrase.Percent(violation.Limit / source)}; it gets "
            + $"{Phrase.Volts(terminal)}{Effect(source, terminal)}.",
            (violation.Severity is Severity.Fail
                ? "the changes worked out with this answer"
                : "a larger conductor or a shorter way")
            + $"; most is lost in run \"{build.Runs[parts[0].Run].Id}\" "
            + $"({Phrase.Volts(parts[0].Volts)})",
            $"whole drop = {Phrase.Volts(source)} - {Phrase.Volts(terminal)} = {Phrase.Volts(whole)}; of it "
            + string.Join(", ", parts.Where(part => part.Volts > SmallestNamed * whole).Take(MostNamed).Select(Text))
            + Rest(whole - parts.Sum(part => part.Volts), whole)
            + $"; fuses, joints, body and straps left out: {Phrase.Volts(violation.Measured)}",
            "V");
    }

    public Wording OutsideRange(Violation violation)
    {
        string id = build.Stated.Amplifiers[violation.Index].Id;
        bool isHigh = violation.Measured > violation.Limit;
        return new Wording(
            $"/amplifiers/{violation.Index}",
            isHigh
                ? $"Amplifier \"{id}\" would be fed {Phrase.Volts(violation.Measured)}, and it is made for at most "
                    + $"{Phrase.Volts(violation.Limit)}: it may burn."
                : $"Amplifier \"{id}\" gets {Phrase.Volts(violation.Measured)} at full output, and it works from "
                    + $"{Phrase.Volts(violation.Limit)} up: it switches off.",
            isHigh
                ? "an amplifier made for this voltage, or a converter before it; state its supply range if it is wider"
                : "a larger conductor or a shorter way",
            $"{Phrase.Volts(violation.Measured)} {(isHigh ? ">" : "<")} {Phrase.Volts(violation.Limit)}",
            "V");
    }

    /// <summary>What an amplifier of a given resistance loses of its output; one that holds its output loses none.</summary>
    public static string Effect(double source, double terminal)
    {
        double decibels = terminal > 0 ? Math.Round(20 * Math.Log10(source / terminal), 1) : 0;
        return decibels > 0 ? $", up to {Phrase.Number(decibels)} dB less than at the battery" : "";
    }

    public Wording Return(Violation violation)
    {
        string id = build.Stated.Amplifiers[violation.Index].Id;
        return new Wording(
            $"/amplifiers/{violation.Index}",
            $"The return of amplifier \"{id}\" conducts only {Phrase.Percent(violation.Measured / violation.Limit)} of what its "
            + "supply does, metre for metre.",
            "a return of the same size and metal as the supply, or larger",
            $"metres to the ohm at 20 C: return {Phrase.Number(violation.Measured)}, supply {Phrase.Number(violation.Limit)}",
            "m/ohm");
    }

    public Wording SharedReturn(Violation violation) => new(
        build.Runs[violation.Index].Pointer + "/conductor",
        $"Several amplifiers share the return \"{build.Runs[violation.Index].Id}\", and it conducts only "
        + $"{Phrase.Percent(violation.Measured / violation.Limit)} of what supplies them, metre for metre.",
        "a shared return as large as the supply that feeds them all, or a return for each",
        $"metres to the ohm at 20 C: shared return {Phrase.Number(violation.Measured)}, supply {Phrase.Number(violation.Limit)}",
        "m/ohm");

    private string Circumstance(int amplifier) =>
        evaluation.Envelope.WorstPointOf(amplifier).Case is OperatingCase.Recharging ? " while the other batteries recharge" : "";

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
