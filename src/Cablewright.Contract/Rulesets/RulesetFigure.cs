using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Rulesets;

/// <summary>A number that a verdict rests on.</summary>
public sealed record RulesetFigure
{
    /// <summary>Stable, dotted id.</summary>
    [Example("drop.target")]
    public required string Id { get; init; }

    /// <summary>The number, in <c>unit</c>.</summary>
    [Figure("see unit", 0.03, Smallest = double.NegativeInfinity)]
    public required double Value { get; init; }

    /// <summary>Its unit; 1 for a ratio.</summary>
    [Example("1")]
    public required string Unit { get; init; }

    /// <summary>What it limits or stands for.</summary>
    [Example("design target for the drop from battery to amplifier and back")]
    public required string Meaning { get; init; }

    /// <summary>Where the figures come from.</summary>
    [Example("33 CFR 183.425 table 5")]
    public required string Source { get; init; }

    /// <summary>How they were come by: read, computed, from memory, or common practice with no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }
}
