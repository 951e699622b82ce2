namespace Cablewright.Engine.Sizing;

/// <summary>One candidate of a run where its current is taken as a number.</summary>
/// <param name="Volts">What it loses.</param>
/// <param name="Weight">What it weighs.</param>
internal readonly record struct DropOption(double Volts, double Weight);
