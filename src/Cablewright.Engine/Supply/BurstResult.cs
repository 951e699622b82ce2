namespace Cablewright.Engine.Supply;

/// <summary>A burst of full output on what the alternator has left, the batteries and the capacitors.</summary>
/// <param name="Milliseconds">How long it lasts.</param>
/// <param name="AmplifierId">The amplifier whose voltage ends lowest.</param>
/// <param name="LowestVolts">Its lowest voltage in that time; <c>null</c> where the supply cannot hold full output.</param>
/// <param name="LowestVoltsWithoutCapacitors">The same with the capacitors taken away.</param>
public sealed record BurstResult(
    double Milliseconds, string AmplifierId, double? LowestVolts, double? LowestVoltsWithoutCapacitors);
