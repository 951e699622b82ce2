using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Reference;

/// <summary>A list of numbers with their source.</summary>
public sealed record SourcedFigures
{
    /// <summary>The numbers, rising, in the unit that their place names.</summary>
    [Figure("see name", 30)]
    public required IReadOnlyList<double> Values { get; init; }

    /// <summary>Where the figures come from.</summary>
    [Example("33 CFR 183.425 table 5")]
    public required string Source { get; init; }

    /// <summary>How they were come by: read, computed, from memory, or common practice with no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }
}
