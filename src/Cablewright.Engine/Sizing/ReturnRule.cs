using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>
/// That the returns of an amplifier together conduct no worse than its strongest supply run, metre for metre; and, where its
/// ground is to be the same cable as its supply, that it conducts just as well.
/// </summary>
internal sealed class ReturnRule
{
    private const double Near = 1e-4;

    private readonly int[] supply;
    private readonly int[] back;
    private readonly double[] strongest;
    private readonly bool binds;
    private readonly bool isSame;

    public ReturnRule(SizingTask task, Goal goal, ChoiceRules rules, IReadOnlyList<ConductorChoice>[] candidates, int amplifier)
    {
        string id = task.Build.Stated.Amplifiers[amplifier].Id;
        int[] at = [.. Enumerable.Range(0, candidates.Length)
            .Where(run => task.Build.Runs[run].EndsAt(id))];
        supply = [.. at.Where(run => task.Build.Runs[run].Side is Side.Supply)];
        back = [.. at.Where(run => task.Build.Runs[run].Side is Side.Return)];
        strongest = [.. back.Select(run => 1 / candidates[run][^1].OhmsPerMetreAt20)];
        isSame = goal.IsUsual && Array.Exists(back, run => task.SupplyOf[run] >= 0);
        binds = isSame || rules.ReturnBinds(amplifier);
    }

    /// <summary>The rule for each amplifier.</summary>
    public static ReturnRule[] Of(
        SizingTask task, Goal goal, ChoiceRules rules, IReadOnlyList<ConductorChoice>[] candidates) =>
        [.. Enumerable.Range(0, task.Build.Draws.Count)
            .Select(amplifier => new ReturnRule(task, goal, rules, candidates, amplifier))];

    /// <summary>Whether the rule holds, or may hold with what is not yet known.</summary>
    /// <param name="siemensMetres">How well each run conducts; not a number where it is not known.</param>
    public bool MayHold(double[] siemensMetres)
    {
        if (!binds) return true;
        if (isSame) return MayBeSame(siemensMetres[supply[0]], siemensMetres[back[0]]);
        double there = 0, returned = 0;
        foreach (int run in supply)
        {
            if (siemensMetres[run] > there) there = siemensMetres[run];
        }

        for (int i = 0; i < back.Length; i++)
        {
            double siemens = siemensMetres[back[i]];
            returned += double.IsNaN(siemens) ? strongest[i] : siemens;
        }

        return there <= returned || (there <= returned * (1 + Near) && !Significant.Exceeds(there, returned));
    }

    private static bool MayBeSame(double there, double returned) =>
        double.IsNaN(there) || double.IsNaN(returned) || Math.Abs(there - returned) <= Near * there;
}
