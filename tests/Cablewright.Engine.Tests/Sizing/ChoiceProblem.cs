using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Sizing;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>A build whose every choice can be worked out, one by one, by the full assessment.</summary>
internal sealed class ChoiceProblem
{
    private readonly Evaluator evaluator;

    /// <summary>Completes a build.</summary>
    /// <param name="build">The build.</param>
    /// <param name="budget">The most that a search may count, in runs solved.</param>
    public ChoiceProblem(Build build, double budget = double.PositiveInfinity)
    {
        Build = BuildCompletion.Complete(build, RulesetLibrary.Newest, new WorkMeter(budget));
        evaluator = new Evaluator(Build);
        Task = new SizingTask(evaluator);
    }

    public CompleteBuild Build { get; }

    public SizingTask Task { get; }

    /// <summary>The goals in the order in which they are tried.</summary>
    public Goal[] Goals => [.. new DropGoals(Task).All];

    /// <summary>Every choice of every open run; grounds are the same cable as their supply where that is usual.</summary>
    public IEnumerable<ConductorChoice[]> All(Stock stock)
    {
        IEnumerable<ConductorChoice[]> choices = [[]];
        foreach (IReadOnlyList<ConductorChoice> of in Task.Candidates(stock))
            choices = choices.SelectMany(choice => of, (choice, next) => (ConductorChoice[])[.. choice, next]);
        var taper = new TaperRule(Task, Task.Candidates(stock));
        return choices.Where(choice =>
            (stock is Stock.Any || GroundRule.IsKeptBy(choice, Task.SupplyOf)) && taper.IsKeptBy(choice));
    }

    /// <summary>
    /// The best choice for the first goal that any choice keeps, by going through all of them, the best first, until one keeps it
    /// and every rule.
    /// </summary>
    public ConductorChoice[]? Best(Prefer prefer = Prefer.Cost)
    {
        var known = new Dictionary<Stock, (ConductorChoice[] Choice, Lazy<DesignEvaluation?> Evaluation)[]>();
        foreach (Goal goal in Goals)
        {
            if (!known.ContainsKey(goal.Stock)) known.Add(goal.Stock, BestFirst(goal.Stock, prefer));
            foreach ((ConductorChoice[] choice, Lazy<DesignEvaluation?> evaluation) in known[goal.Stock])
            {
                if (evaluation.Value is { } worked && Keeps(worked, goal)) return choice;
            }
        }

        return null;
    }

    private (ConductorChoice[] Choice, Lazy<DesignEvaluation?> Evaluation)[] BestFirst(Stock stock, Prefer prefer) =>
        [.. All(stock)
            .OrderBy(choice => prefer is Prefer.FewestSizes ? choice.Select(each => each.Conductor).Distinct().Count() : 0)
            .ThenBy(Task.WeightOf)
            .Select(choice => (choice, new Lazy<DesignEvaluation?>(() => Task.Evaluate(choice))))];

    /// <summary>
    /// Whether a choice keeps a goal and every rule: no fail among the findings of the full assessment, and no return weaker than
    /// its supply.
    /// </summary>
    public bool Keeps(DesignEvaluation evaluation, Goal goal)
    {
        for (int amplifier = 0; amplifier < goal.Volts.Length; amplifier++)
        {
            double drop = evaluator.Model.Circuit.SourceVoltsOf(amplifier) - evaluation.Envelope.TerminalVolts[amplifier];
            if (Significant.Exceeds(drop, goal.Volts[amplifier])) return false;
        }

        if (goal.IsUsual && Task.Open.Any(run => IsOverfull(run, evaluation))) return false;
        if (evaluation.Violations.Any(violation => violation.Kind is ViolationKind.DropOverLimit)) return false;
        return !evaluation.Violations.Any(violation => ChoiceRules.MustHold(violation) || IsReturnToChoose(violation))
            && !FaultRuleBook.Report(evaluator.Model, evaluation).Violations.Any(ChoiceRules.MustHold);
    }

    /// <summary>Whether a supply conductor carries less than full output continuously.</summary>
    private bool IsOverfull(int run, DesignEvaluation evaluation) => Build.Runs[run].Side is Side.Supply
        && Significant.Exceeds(
            evaluation.Envelope.PeakAmps[run],
            evaluator.Model.Ampacities.OfAll(run, evaluation.Design.Conductors[run]));

    private bool IsReturnToChoose(Violation violation) => violation.Kind is ViolationKind.ReturnBelowSupply
        && Build.Runs.Any(run =>
        run.Given is null && run.Side is Side.Return && run.From == Build.Stated.Amplifiers[violation.Index].Id);
}
