using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>What one capacitor really gives.</summary>
public sealed record CapacitorResult
{
    /// <summary>The place where it is connected.</summary>
    [Example("bass")]
    public required string At { get; init; }

    /// <summary>Its capacitance, in farads.</summary>
    [Figure("F", 1)]
    public required double Farads { get; init; }

    /// <summary>Its equivalent series resistance, in milliohms.</summary>
    [Figure("mohm", 2)]
    public required double SeriesMilliohms { get; init; }

    /// <summary>The full draw that it stands beside, in amperes.</summary>
    [Figure("A", 92.4)]
    public required double DrawAmps { get; init; }

    /// <summary>The fall that is allowed while it alone gives that, in volts.</summary>
    [Figure("V", 0.5)]
    public required double FallVolts { get; init; }

    /// <summary>How long it alone does, in milliseconds; 0 where its own resistance takes the whole fall at once.</summary>
    [Figure("ms", 3.4)]
    public required double HoldsMilliseconds { get; init; }

    /// <summary>The energy that it gives over that fall, in joules.</summary>
    [Figure("J", 4.3)]
    public required double GivesJoules { get; init; }
}
