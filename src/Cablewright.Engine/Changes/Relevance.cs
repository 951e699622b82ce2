using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Changes;

/// <summary>Which parts of a failing build matter most, so that work that runs out is spent where it helps.</summary>
internal static class Relevance
{
    /// <summary>
    /// The stated runs: those that fail first, then by the voltage that they take of the amplifiers that lose too much, then by
    /// loss.
    /// </summary>
    public static IReadOnlyList<int> Order(Variant present, IReadOnlyList<Violation> fails)
    {
        OperatingEnvelope envelope = present.Sized.Evaluation.Envelope;
        double[] volts = new double[present.Build.Runs.Count];
        foreach (Violation violation in fails.Where(violation => violation.Kind is ViolationKind.DropOverLimit))
        {
            OperatingPoint point = envelope.WorstPointOf(violation.Index);
            double[] division = present.Evaluator.Division(violation.Index, point);
            for (int run = 0; run < volts.Length; run++)
                volts[run] = Math.Max(volts[run], Math.Abs(division[run] * point.PeakAmps[run] * point.Ohms[run]));
        }

        HashSet<int> failing = [.. fails.Where(violation => IsAboutRun(violation.Kind)).Select(violation => violation.Index)];
        return [.. Enumerable.Range(0, present.Build.Stated.Runs.Count)
            .OrderByDescending(failing.Contains)
            .ThenByDescending(run => Significant.Round(volts[run]))
            .ThenByDescending(run => Significant.Round(envelope.Ohms[run] * envelope.PeakAmps[run] * envelope.PeakAmps[run]))];
    }

    /// <summary>The amplifiers, the one that draws most first.</summary>
    public static int[] Amplifiers(Variant present) =>
        [.. Enumerable.Range(0, present.Build.Draws.Count)
            .OrderByDescending(amplifier => Significant.Round(present.Sized.Evaluation.Envelope.LoadAmps[amplifier]))];

    private static bool IsAboutRun(ViolationKind kind) =>
        kind is not (ViolationKind.DropOverLimit or ViolationKind.VoltageCollapse or ViolationKind.EngineOffTooShort);
}
