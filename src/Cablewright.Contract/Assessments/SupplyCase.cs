using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>The energy balance in one case.</summary>
public sealed record SupplyCase
{
    /// <summary>At speed, at idle or with the engine off.</summary>
    public required SupplyCaseName Case { get; init; }

    /// <summary>What is left above the vehicle's own draw, in amperes; negative where that alone is too much.</summary>
    [Figure("A", 59, Smallest = double.NegativeInfinity)]
    public required double AvailableAmps { get; init; }

    /// <summary>Available current less average draw, in amperes; negative: the batteries give it.</summary>
    [Figure("A", 14.3, Smallest = double.NegativeInfinity)]
    public required double AverageBalanceAmps { get; init; }

    /// <summary>Available current less the draw at full output, in amperes; negative: the batteries give it.</summary>
    [Figure("A", -75.2, Smallest = double.NegativeInfinity)]
    public required double PeakBalanceAmps { get; init; }

    /// <summary>How long the batteries give the average deficit, in minutes; absent where there is none.</summary>
    [Figure("min", 154)]
    public double? MinutesToLimit { get; init; }

    /// <summary>
    /// The lowest voltage at any amplifier at full output, with the batteries at their own voltage where they have to give, in
    /// volts; absent where the supply cannot hold full output.
    /// </summary>
    [Figure("V", 11.9)]
    public double? LowestVolts { get; init; }
}
