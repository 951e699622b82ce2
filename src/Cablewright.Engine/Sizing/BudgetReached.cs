using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

internal sealed class BudgetReached() : Rule(
    ViolationKind.BudgetReached, Severity.Info, "sizing.budget-reached", rules => rules.Sizing.WorkBudget,
    "The work budget ended before the choice of the open conductors was finished.")
{
    /// <summary>The rule.</summary>
    public static BudgetReached Rule { get; } = new();

    /// <summary>How a choice violates it; <c>null</c> where it was finished.</summary>
    public Violation? Check(SizedBuild sized) => sized.IsComplete ? null : By(0);
}
