using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Reference;

/// <summary>What all fuses of one family have in common.</summary>
public sealed record FuseFamilyEntry
{
    /// <summary>The family.</summary>
    public required FuseFamilyName Family { get; init; }

    /// <summary>The standard or pattern that it follows.</summary>
    [Example("ISO 8820-3 type C")]
    public required string Standard { get; init; }

    /// <summary>The rated currents it is made in, in amperes.</summary>
    public required SourcedFigures RatingsAmps { get; init; }

    /// <summary>Rated voltage, in volts.</summary>
    public required SourcedFigure VoltageRatingVolts { get; init; }

    /// <summary>Share of the rated current that it carries without end.</summary>
    public required SourcedFigure ContinuousUseFactor { get; init; }

    /// <summary>Drop across it at its rated current, in volts.</summary>
    public required SourcedFigure DropAtRatingVolts { get; init; }

    /// <summary>
    /// The largest current that a fuse of the family is known to interrupt at its rated voltage, in amperes; a part may be rated
    /// for more.
    /// </summary>
    public required SourcedFigure InterruptingRatingAmps { get; init; }

    /// <summary>
    /// The same at each voltage for which it is known, the lowest first. The one for the next voltage above the system's highest
    /// counts, or above the part's own voltage rating where that is stated.
    /// </summary>
    public required IReadOnlyList<InterruptingEntry> InterruptingRatings { get; init; }

    /// <summary>Between which times it opens, by share of its rated current.</summary>
    public required IReadOnlyList<OpeningEntry> OpeningBand { get; init; }

    /// <summary>By which factor those times may be off, either way; 1 where they were read.</summary>
    public required SourcedFigure OpeningBandUncertainty { get; init; }

    /// <summary>How long the arc burns once its element has melted, in seconds: it never opens sooner.</summary>
    public required SourcedFigure ArcingSeconds { get; init; }

    /// <summary>What is left of its lasting current in hot air, straight lines between the points.</summary>
    public required IReadOnlyList<DeratingEntry> TemperatureDerating { get; init; }
}
