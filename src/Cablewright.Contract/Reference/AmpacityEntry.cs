using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Reference;

/// <summary>What copper of one size may carry under one insulation, as published.</summary>
public sealed record AmpacityEntry
{
    /// <summary>The size in writing.</summary>
    [Example("4 AWG")]
    public required string Size { get; init; }

    /// <summary>Temperature rating of the insulation, in degrees Celsius.</summary>
    [Figure("C", 105, Smallest = 60, Largest = 125)]
    public required double InsulationCelsius { get; init; }

    /// <summary>The current that it may carry without end, in amperes.</summary>
    [Figure("A", 160)]
    public required double CurrentAmps { get; init; }

    /// <summary>Where the figures come from.</summary>
    [Example("33 CFR 183.425 table 5")]
    public required string Source { get; init; }

    /// <summary>How they were come by: read, computed, from memory, or common practice with no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }
}
