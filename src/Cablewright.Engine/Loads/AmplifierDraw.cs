using Cablewright.Engine.Network;

namespace Cablewright.Engine.Loads;

/// <summary>What one amplifier asks of its wiring.</summary>
/// <param name="Full">Its draw at full rated output.</param>
/// <param name="ThermalShare">Root-mean-square current that heats the wiring, over the current at full output, 0 to 1.</param>
/// <param name="AverageShare">Average current of the energy budget, over the current at full output, 0 to 1.</param>
/// <param name="RatedOutputWatts">Rated output, where it is known.</param>
/// <param name="RatingVolts">The voltage at which its figures are rated.</param>
/// <param name="Efficiency">Output over input at rated output; <c>null</c> where the draw was stated itself.</param>
public sealed record AmplifierDraw(
    LoadDraw Full, double ThermalShare, double AverageShare, double? RatedOutputWatts, double RatingVolts, double? Efficiency)
{
    /// <summary>What it would draw at its rated output if its own fuses let it, in amperes.</summary>
    public double RatedAmps { get; init; } = CircuitSolver.Amps(Full, RatingVolts);

    /// <summary>
    /// Rated output less what the voltage at its terminals lets it give, in watts; 0 where it holds its output.
    /// </summary>
    public double ShortfallWatts(double terminalVolts)
    {
        if (Full.Kind is not LoadKind.ConstantResistance || RatedOutputWatts is not { } rated) return 0;
        double share = terminalVolts / RatingVolts;
        return Math.Max(0, rated * (1 - share * share));
    }
}
