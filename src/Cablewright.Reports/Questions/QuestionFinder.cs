using Cablewright.Engine.Builds;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Assessments;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Questions;

/// <summary>Finds the questions whose answers would change the verdict most.</summary>
/// <remarks>
/// Method: for each kind of value that was assumed, assess the build again with the best and the worst answer that one would
/// expect in its place, for all amplifiers or runs that lack it; what is chosen then is a good choice, not a proven one. What
/// moves is the verdict first, then how many rules fail, then what is wrong with a supply that cannot be judged yet, then, where
/// something is chosen, how much metal it takes. A question that moves nothing is not asked. Of those that are, the ones come
/// first that whoever wants the build can answer.
/// </remarks>
internal static class QuestionFinder
{
    private const int MostAsked = 5;
    private const double MetalThatMatters = 0.05;

    /// <summary>The questions to ask about a build.</summary>
    /// <param name="present">The build, worked out.</param>
    /// <param name="meter">Counts the work.</param>
    public static Asked For(Variant present, WorkMeter meter)
    {
        WhatIf[] whatIfs = [.. WhatIfs.For(present.Build).Where(whatIf => MayMatter(whatIf, present))];
        if (whatIfs.Length == 0) return Asked.Nothing;
        WorkMeter all = meter.Part(WorkBudgets.Questions);
        Outcome now = OutcomeOf(present);
        Speech speech = present.Build.Speech;
        var assumptions = new AssumptionWriter(present.Build.Speech);
        Outcome?[][] outcomes = [.. whatIfs.Select(whatIf => whatIf.Answers
            .Select(answer => OutcomeOf(whatIf, answer, present, all)).ToArray())];
        FollowUp[] questions = [.. whatIfs
            .Select((whatIf, order) => (WhatIf: whatIf, Order: order, Outcomes: outcomes[order].OfType<Outcome>().ToArray()))
            .Where(asked => asked.Outcomes.Length > 0)
            .Select(asked => (asked.WhatIf, asked.Order, Sensitivity: Sensitivity.Between(now, asked.Outcomes)))
            .Where(asked => asked.Sensitivity.Matters)
            .OrderByDescending(asked => asked.Sensitivity.Verdicts)
            .ThenByDescending(asked => asked.Sensitivity.Fails)
            .ThenByDescending(asked => asked.Sensitivity.Supply)
            .ThenByDescending(asked => Significant.Round(asked.Sensitivity.Metal))
            .ThenBy(asked => asked.Order)
            .Take(MostAsked)
            .OrderBy(asked => asked.WhatIf.By)
            .Select(asked => asked.WhatIf.Ask(
                asked.Sensitivity.Why(speech), assumptions.ValueAt(asked.WhatIf.At, present.Build.Assumptions), speech))];
        return new Asked(questions, outcomes.All(of => of.All(outcome => outcome is not null)));
    }

    /// <summary>Whether there is anything that an answer could change: what is chosen, or a rule that it could cure.</summary>
    private static bool MayMatter(WhatIf whatIf, Variant present) => whatIf.Cures.Count == 0
        || present.Build.Runs.Any(run => run.Given is null)
        || present.Violations.Any(violation => violation.Severity > Severity.Info && whatIf.Cures.Contains(violation.Kind));

    /// <summary>
    /// What becomes of the build with an answer put in; <c>null</c> where that takes more work than a question is worth.
    /// </summary>
    private static Outcome? OutcomeOf(WhatIf whatIf, Build answered, Variant present, WorkMeter meter)
    {
        Ruleset ruleset = present.Build.Ruleset;
        Variant? variant = meter.Within(WorkBudgets.Variant, part => whatIf.IsOfSupply
            ? present.WithSupplyOf(answered, part)
            : present.Near(answered, part) ?? Variant.Of(answered, ruleset, part));
        return variant is { Sized.IsComplete: true } ? OutcomeOf(variant) : null;
    }

    private static Outcome OutcomeOf(Variant variant)
    {
        double metal = variant.Build.Runs.Any(run => run.Given is null) ? variant.ConductorGrams : 0;
        return new Outcome(
            variant.Verdict,
            variant.Violations.Count(violation => violation.Severity is Severity.Fail),
            metal,
            variant.Supply.Violations.Count(violation => violation.Severity > Severity.Info),
            variant.Build.Supply.HotAmps is { } hot
                ? variant.Supply.Balance.Available(hot) - variant.Supply.Balance.AverageAmps
                : null);
    }

    /// <summary>What a build comes to.</summary>
    /// <param name="Verdict">The verdict.</param>
    /// <param name="Fails">Rules that fail.</param>
    /// <param name="Metal">Grams of all conductors, where any is chosen.</param>
    /// <param name="SupplyCautions">Rules about the supply that do not hold.</param>
    /// <param name="SpareAmps">What the average draw leaves of what charges; <c>null</c> where that is not known.</param>
    private readonly record struct Outcome(Verdict Verdict, int Fails, double Metal, int SupplyCautions, double? SpareAmps);

    /// <summary>How far the answers to one question lie apart from what is assumed now.</summary>
    private readonly record struct Sensitivity(
        Verdict Now, Verdict Best, Verdict Worst, int Fails, double Metal, int Supply,
        double? LeastSpareAmps, double? MostSpareAmps)
    {
        public int Verdicts => Math.Max(Now - Best, Worst - Now);

        public bool Matters => Verdicts > 0 || Fails > 0 || Supply > 0 || Metal > MetalThatMatters;

        public static Sensitivity Between(Outcome now, Outcome[] answers) => new(
            now.Verdict,
            answers.Min(answer => answer.Verdict),
            answers.Max(answer => answer.Verdict),
            answers.Max(answer => Math.Abs(answer.Fails - now.Fails)),
            now.Metal == 0 ? 0 : answers.Max(answer => Math.Abs(answer.Metal / now.Metal - 1)),
            now.SpareAmps is null ? answers.Max(answer => answer.SupplyCautions - now.SupplyCautions) : 0,
            now.SpareAmps is null ? answers.Min(answer => answer.SpareAmps) : null,
            now.SpareAmps is null ? answers.Max(answer => answer.SpareAmps) : null);

        public Message Why(Speech speech)
        {
            Message[] reasons = [.. new[] { WhyRules(speech), WhySupply(speech) }.OfType<Message>()];
            return new Message(
                string.Join(' ', reasons.Select(reason => reason.Text)),
                reasons.Aggregate(new Params(), (all, reason) => all.And(reason.Params)));
        }

        private Message? WhyRules(Speech speech)
        {
            if (Best < Now) return speech.Say("why.verdict", VerdictBecomes(Best));
            if (Worst > Now) return speech.Say("why.verdict", VerdictBecomes(Worst));
            if (Fails > 0) return speech.Say("why.rules", new Params { ["rules"] = Fails });
            return Metal > MetalThatMatters ? speech.Say("why.metal", new Params { ["metalShare"] = Metal }) : null;
        }

        private Params VerdictBecomes(Verdict verdict) => new() { ["nowVerdict"] = Now.Word(), ["verdict"] = verdict.Word() };

        /// <summary>What an answer would show of a supply that cannot be judged without it.</summary>
        private Message? WhySupply(Speech speech)
        {
            if (Supply <= 0 || LeastSpareAmps is not { } least || MostSpareAmps is not { } most) return null;
            if (least >= 0) return speech.Say("why.supply-voltage", []);
            return most >= 0
                ? speech.Say("why.supply-short-or-not", new Params { ["shortAmps"] = -least, ["spareAmps"] = most })
                : speech.Say("why.supply-short", new Params { ["shortAmps"] = -least, ["leastShortAmps"] = -most });
        }
    }
}

/// <summary>Questions to ask next.</summary>
/// <param name="Questions">The question that could change the most first.</param>
/// <param name="IsComplete">Whether every expected answer was tried out; <c>false</c>: the work budget ended first.</param>
internal sealed record Asked(IReadOnlyList<FollowUp> Questions, bool IsComplete)
{
    /// <summary>No question.</summary>
    public static Asked Nothing { get; } = new([], true);
}
