namespace Cablewright.Engine.Sizing;

/// <summary>A candidate for each of the runs that carry one amplifier's current alone.</summary>
/// <param name="Options">The candidates, in the order of those runs.</param>
/// <param name="Weight">What they weigh together.</param>
/// <param name="Ohms">The least resistance that they have together.</param>
/// <param name="MostOhms">The most that they have while fuses are chosen.</param>
internal readonly record struct Bundle(int[] Options, double Weight, double Ohms, double MostOhms);
