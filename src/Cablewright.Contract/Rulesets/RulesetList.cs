
namespace Cablewright.Contract.Rulesets;

/// <summary>The rulesets that this release carries.</summary>
public sealed record RulesetList
{
    /// <summary>All of them, the newest first; the newest is applied where a build names none.</summary>
    public required IReadOnlyList<RulesetEntry> Rulesets { get; init; }
}
