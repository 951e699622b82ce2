using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Rulesets;

/// <summary>One ruleset in brief.</summary>
public sealed record RulesetEntry
{
    /// <summary>Its id, as a build names it.</summary>
    [Example("2026.2")]
    public required string Id { get; init; }

    /// <summary>The date of publication (ISO 8601).</summary>
    [Example("2026-11-25")]
    public required string Published { get; init; }

    /// <summary>What it covers, in a sentence.</summary>
    [Example("Drop, heat and first protection rules.")]
    public required string Summary { get; init; }
}
