using System.Collections.Frozen;
using Cablewright.Engine.DesignRules;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Rules;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Supply;

namespace Cablewright.Engine.Designs;

/// <summary>Every rule that a build is held against.</summary>
internal static class RuleBook
{
    private static readonly FrozenDictionary<ViolationKind, Rule> ByKind = All.ToFrozenDictionary(rule => rule.Kind);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Rule> All =>
        [
            VoltageCollapse.Rule, .. DesignRuleBook.All, .. FaultRuleBook.All, .. SupplyRuleBook.All, BeyondStock.Rule,
            BudgetReached.Rule,
        ];

    /// <summary>The rule that a violation is of.</summary>
    public static Rule Of(ViolationKind kind) => ByKind[kind];
}
