using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Text;
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
        double terminal = evaluation.Envelope.TerminalVolts[amplifier];
        string id = build.Stated.Amplifiers[amplifier].Id;
        string word = violation.Severity is Severity.Fail ? "limit" : "target";
        Part[] parts = Parts(amplifier);
        return new Wording(
            $"/amplifiers/{amplifier}",
            $"Amplifier \"{id}\" gets {Phrase.Volts(terminal)} of {Phrase.Volts(source)}: "
            + $"{Phrase.Volts(violation.Measured)} ({Phrase.Percent(violation.Measured / source)}) is lost on the way there and "
            + $"back{Circumstance(amplifier)}, above the {word} of {Phrase.Volts(violation.Limit)} "
            + $"({Phrase.Percent(violation.Limit / source)}).",
            (violation.Severity is Severity.Fail
                ? "the changes worked out with this answer"
                : "a larger conductor or a shorter way")
            + $"; most is lost in run \"{build.Runs[parts[0].Run].Id}\" "
            + $"({Phrase.Volts(parts[0].Volts)})",
            $"drop = {Phrase.Volts(source)} - {Phrase.Volts(terminal)} = {Phrase.Volts(violation.Measured)}; of it "
            + string.Join(", ", parts.Where(part => part.Volts > SmallestNamed * violation.Measured).Take(MostNamed).Select(Text))
            + Rest(violation.Measured - parts.Sum(part => part.Volts), violation.Measured),
            "V");
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
