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
    public static IReadOnlyList<int> Order(Variant present, IReadOnlyList<Breach> fails)
    {
        WorstCurrents currents = present.Sized.Evaluation.Currents;
        double[] volts = new double[present.Build.Runs.Count];
        foreach (Breach breach in fails.Where(breach => breach.Kind is BreachKind.DropOverLimit))
        {
            OperatingPoint point = currents.WorstPointOf(breach.Index);
            double[] division = present.Evaluator.Division(breach.Index, point);
            for (int run = 0; run < volts.Length; run++)
                volts[run] = Math.Max(volts[run], Math.Abs(division[run] * point.PeakAmps[run] * point.Ohms[run]));
        }

        HashSet<int> failing = [.. fails.Where(breach => IsAboutRun(breach.Kind)).Select(breach => breach.Index)];
        return [.. Enumerable.Range(0, present.Build.Stated.Runs.Count)
            .OrderByDescending(failing.Contains)
            .ThenByDescending(run => Significant.Round(volts[run]))
            .ThenByDescending(run => Significant.Round(currents.Ohms[run] * currents.PeakAmps[run] * currents.PeakAmps[run]))];
    }

    /// <summary>The amplifiers, the one that draws most first.</summary>
    public static int[] Amplifiers(Variant present) =>
        [.. Enumerable.Range(0, present.Build.Draws.Count)
            .OrderByDescending(amplifier => Significant.Round(present.Sized.Evaluation.Currents.LoadAmps[amplifier]))];

    private static bool IsAboutRun(BreachKind kind) =>
        kind is not (BreachKind.DropOverLimit or BreachKind.VoltageCollapse or BreachKind.EngineOffTooShort);
}
