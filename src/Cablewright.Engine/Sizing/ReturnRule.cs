using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>That the returns of an amplifier together conduct no worse than its strongest supply run, metre for metre.</summary>
internal sealed class ReturnRule
{
    private const double Near = 1e-4;

    private readonly int[] supply;
    private readonly int[] back;
    private readonly double[] strongest;
    private readonly bool binds;

    public ReturnRule(SizingTask task, ChoiceRules rules, IReadOnlyList<ConductorChoice>[] candidates, int amplifier)
    {
        string id = task.Build.Stated.Amplifiers[amplifier].Id;
        int[] at = [.. Enumerable.Range(0, candidates.Length)
            .Where(run => task.Build.Runs[run].From == id || task.Build.Runs[run].To == id)];
        supply = [.. at.Where(run => task.Build.Runs[run].Side is Side.Supply)];
        back = [.. at.Where(run => task.Build.Runs[run].Side is Side.Return)];
        strongest = [.. back.Select(run => 1 / candidates[run][^1].OhmsPerMetreAt20)];
        binds = rules.ReturnBinds(amplifier);
    }

    /// <summary>The rule for each amplifier.</summary>
    public static ReturnRule[] Of(SizingTask task, ChoiceRules rules, IReadOnlyList<ConductorChoice>[] candidates) =>
        [.. Enumerable.Range(0, task.Build.Draws.Count).Select(amplifier => new ReturnRule(task, rules, candidates, amplifier))];

    /// <summary>Whether the rule holds, or may hold with what is not yet known.</summary>
    /// <param name="siemensMetres">How well each run conducts; not a number where it is not known.</param>
    public bool MayHold(double[] siemensMetres)
    {
        if (!binds) return true;
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
}
