using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Reference;

/// <summary>A number with its source.</summary>
public sealed record SourcedFigure
{
    /// <summary>The number, in the unit that its place names.</summary>
    [Figure("see name", 32)]
    public required double Value { get; init; }

    /// <summary>Where the figures come from.</summary>
    [Example("33 CFR 183.425 table 5")]
    public required string Source { get; init; }

    /// <summary>How they were come by: read, computed, from memory, or common practice with no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }
}
