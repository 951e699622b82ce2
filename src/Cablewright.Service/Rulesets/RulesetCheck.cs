using Cablewright.Engine.Rulesets;
using Cablewright.Service.Json;
using Cablewright.Service.Validation;
using FluentValidation;

namespace Cablewright.Service.Rulesets;

/// <summary>Checks that this release carries the ruleset that a request names.</summary>
internal static class RulesetCheck
{
    /// <summary>The ruleset that a request without faults names, or the newest.</summary>
    public static Ruleset Named(string? id) => id is null ? RulesetLibrary.Newest : RulesetLibrary.Find(id)!;

    /// <summary>Reports an unknown ruleset.</summary>
    public static void Check<T>(string? id, ValidationContext<T> context)
    {
        if (id is null || RulesetLibrary.Find(id) is not null) return;
        string known = string.Join(", ", RulesetLibrary.All.Select(ruleset => ruleset.Id));
        context.AddFault(null, RulesetCodes.Unknown, "this release does not carry that ruleset", known, Excerpt.Of(id));
    }
}
