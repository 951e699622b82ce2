using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Rulesets;

/// <summary>One ruleset: every limit and default that a verdict rests on.</summary>
public sealed record RulesetDetail
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

    /// <summary>The cautions that every answer under it carries.</summary>
    [Example("Disconnect the battery's negative terminal before any work, and connect it last.")]
    public required IReadOnlyList<string> SafetyNotes { get; init; }

    /// <summary>Every figure.</summary>
    public required IReadOnlyList<RulesetFigure> Figures { get; init; }

    /// <summary>Every kind of finding that an answer can carry.</summary>
    public required IReadOnlyList<FindingKind> Findings { get; init; }
}
