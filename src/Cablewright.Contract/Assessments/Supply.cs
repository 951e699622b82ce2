using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>The supply as a whole.</summary>
public sealed record Supply
{
    /// <summary>The charging voltage that the wiring is judged at, in volts.</summary>
    [Figure("V", 13.8)]
    public required double OperatingVolts { get; init; }

    /// <summary>The lowest voltage at any amplifier over all operating cases, in volts.</summary>
    [Figure("V", 11.4)]
    public required double LowestVolts { get; init; }

    /// <summary>All amplifiers at full rated output, at the charging voltage, in amperes.</summary>
    [Figure("A", 134.2)]
    public required double PeakCurrentAmps { get; init; }

    /// <summary>All amplifiers on their programme, on average, in amperes.</summary>
    [Figure("A", 44.7)]
    public required double AverageCurrentAmps { get; init; }

    /// <summary>
    /// What the hot alternator has left above the base load, in amperes; negative where it has less than none, absent where no
    /// alternator is stated.
    /// </summary>
    [Figure("A", 59, Smallest = double.NegativeInfinity)]
    public double? AlternatorAvailableAmps { get; init; }

    /// <summary>The same at idle, in amperes.</summary>
    [Figure("A", 7, Smallest = double.NegativeInfinity)]
    public double? IdleAvailableAmps { get; init; }
}
