using Cablewright.Engine.Builds;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

internal sealed class BudgetReached() : Rule(
    ViolationKind.BudgetReached, Severity.Info, "sizing.budget-reached", _ => Budget,
    "The work budget ended before the choice of the open conductors was finished.")
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Performance;

    /// <summary>The budget is the engine's own, not a ruleset's; its finding names it as it names figures.</summary>
    private static readonly Figure Budget = new(
        "sizing.work-budget", WorkBudgets.Sizing, "runs", "runs solved or gone over for fuses before a choice stops where it is",
        "counted, not timed, so that it is the same on every machine", "computed");

    /// <summary>The rule.</summary>
    public static BudgetReached Rule { get; } = new();

    /// <summary>How a choice violates it; <c>null</c> where it was finished.</summary>
    public Violation? Check(SizedBuild sized) => sized.IsComplete ? null : By(0);
}
