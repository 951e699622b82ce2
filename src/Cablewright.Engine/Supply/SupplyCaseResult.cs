using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

/// <summary>The energy balance in one case.</summary>
/// <param name="Name">The case.</param>
/// <param name="AvailableAmps">What is left above the vehicle's own draw; negative where that alone is too much.</param>
/// <param name="AverageBalanceAmps">Available less average draw; negative: the batteries give it.</param>
/// <param name="PeakBalanceAmps">Available less the draw at full output.</param>
/// <param name="MinutesToLimit">How long the batteries give the average deficit; <c>null</c> where there is none.</param>
/// <param name="LowestVolts">The lowest voltage at any amplifier at full output, with the batteries at their own voltage where
/// they have to give; <c>null</c> where the supply cannot hold full output.</param>
public sealed record SupplyCaseResult(
    SupplyCaseName Name, double AvailableAmps, double AverageBalanceAmps, double PeakBalanceAmps, double? MinutesToLimit,
    double? LowestVolts);
