using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Reference;

/// <summary>One source and what rests on it.</summary>
public sealed record SourceEntry
{
    /// <summary>Where the figures come from.</summary>
    [Example("33 CFR 183.425 table 5")]
    public required string Source { get; init; }

    /// <summary>How they were come by: read, computed, from memory, or common practice with no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }

    /// <summary>What rests on it: figures of rulesets and rows of tables.</summary>
    [Example("ruleset 2026.2: drop.target")]
    public required IReadOnlyList<string> Figures { get; init; }
}
