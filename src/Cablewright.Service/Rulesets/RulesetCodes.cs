using Cablewright.Vocabulary;

namespace Cablewright.Service.Rulesets;

/// <summary>What can be wrong with the ruleset that a request names.</summary>
internal static class RulesetCodes
{
    [Meaning("A ruleset that this release does not carry.")]
    public const string Unknown = "ruleset.unknown";
}
