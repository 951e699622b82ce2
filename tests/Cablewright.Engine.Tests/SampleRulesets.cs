using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Tests;

internal static class SampleRulesets
{
    /// <summary>The newest ruleset with another value of one figure.</summary>
    public static Ruleset With(string id, double value)
    {
        Ruleset newest = RulesetLibrary.Newest;
        return new Ruleset(newest.Id, newest.Published, newest.Summary, newest.SafetyNotes,
            [.. newest.Figures.Select(figure => figure.Id == id ? figure with { Value = value } : figure)]);
    }
}
