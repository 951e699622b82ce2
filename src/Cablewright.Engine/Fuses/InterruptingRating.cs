namespace Cablewright.Engine.Fuses;

/// <summary>The largest current that a fuse of a family is known to interrupt at a voltage.</summary>
/// <param name="Volts">Direct voltage.</param>
/// <param name="Amps">Interrupting rating.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Provenance">How it was come by.</param>
public sealed record InterruptingRating(double Volts, double Amps, string Source, string Provenance);
