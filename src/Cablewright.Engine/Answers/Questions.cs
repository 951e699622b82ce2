using Cablewright.Engine.Builds;
using Cablewright.Engine.Completing;
using Cablewright.Engine.Findings;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Variations;

namespace Cablewright.Engine.Answers;

/// <summary>Finds the questions whose answers would change the verdict most.</summary>
/// <remarks>
/// Method: for each kind of value that was assumed, assess the build again with the best and the worst answer that one would
/// expect in its place, for all amplifiers or runs that lack it; what is chosen then is a good choice, not a proven one. What moves is the verdict first, then how many rules fail,
/// then, where something is chosen, how much metal it takes. A question that moves nothing is not asked.
/// </remarks>
internal static class Questions
{
    private const int MostAsked = 5;
    private const double MetalThatMatters = 0.05;

    public static IReadOnlyList<Question> For(Variant present)
    {
        WhatIf[] whatIfs = [.. WhatIfs.For(present.Build)];
        if (whatIfs.Length == 0) return [];
        Outcome now = OutcomeOf(present);
        return [.. whatIfs
            .Select((whatIf, order) => (
                WhatIf: whatIf,
                Order: order,
                Outcomes: whatIf.Answers.Select(answer => OutcomeOf(answer, present.Build.Ruleset)).OfType<Outcome>().ToArray()))
            .Where(asked => asked.Outcomes.Length > 0)
            .Select(asked => (asked.WhatIf, asked.Order, Swing: Swing.Between(now, asked.Outcomes)))
            .Where(asked => asked.Swing.Matters)
            .OrderByDescending(asked => asked.Swing.Verdicts)
            .ThenByDescending(asked => asked.Swing.Fails)
            .ThenByDescending(asked => Significant.Round(asked.Swing.Metal))
            .ThenBy(asked => asked.Order)
            .Take(MostAsked)
            .Select(asked => new Question(asked.WhatIf.Pointer, asked.WhatIf.Text, asked.Swing.Why()))];
    }

    /// <summary>
    /// What becomes of the build with an answer put in; <c>null</c> where that takes more work than a question is worth.
    /// </summary>
    private static Outcome? OutcomeOf(Build answered, Ruleset ruleset)
    {
        var variant = Variant.Of(answered, ruleset, ruleset["ask.work-budget"].Value, proves: false);
        return variant.Sized.IsComplete ? OutcomeOf(variant) : null;
    }

    private static Outcome OutcomeOf(Variant variant)
    {
        IReadOnlyList<CompleteRun> runs = variant.Build.Runs;
        double metal = runs.Any(run => run.Given is null)
            ? Enumerable.Range(0, runs.Count)
                .Sum(run => variant.Sized.Evaluation.Decision.Conductors[run].KilogramsPerMetre * runs[run].LengthMetres)
            : 0;
        return new Outcome(variant.Verdict, variant.Breaches.Count(breach => breach.Severity is Severity.Fail), metal);
    }

    private readonly record struct Outcome(Verdict Verdict, int Fails, double Metal);

    /// <summary>How far the answers to one question lie apart from what is assumed now.</summary>
    private readonly record struct Swing(Verdict Now, Verdict Best, Verdict Worst, int Fails, double Metal)
    {
        public int Verdicts => Math.Max(Now - Best, Worst - Now);

        public bool Matters => Verdicts > 0 || Fails > 0 || Metal > MetalThatMatters;

        public static Swing Between(Outcome now, Outcome[] answers) => new(
            now.Verdict,
            answers.Min(answer => answer.Verdict),
            answers.Max(answer => answer.Verdict),
            answers.Max(answer => Math.Abs(answer.Fails - now.Fails)),
            now.Metal == 0 ? 0 : answers.Max(answer => Math.Abs(answer.Metal / now.Metal - 1)));

        public string Why()
        {
            if (Best < Now) return $"The verdict is {Now.Word()} now and could become {Best.Word()}.";
            if (Worst > Now) return $"The verdict is {Now.Word()} now and could become {Worst.Word()}.";
            return Fails > 0
                ? $"It could change {Fails} of the rules that do not hold."
                : $"It could change the metal that the chosen conductors take by {Phrase.Percent(Metal)}.";
        }
    }
}
