namespace Cablewright.Engine.Supply;

/// <summary>What one capacitor really gives.</summary>
/// <param name="At">Where it is connected.</param>
/// <param name="Farads">Its capacitance.</param>
/// <param name="SeriesMilliohms">Its equivalent series resistance.</param>
/// <param name="DrawAmps">The full draw that it stands beside.</param>
/// <param name="FallVolts">The fall that is allowed while it alone gives that.</param>
/// <param name="HoldsMilliseconds">How long it does; 0 where its own resistance takes the whole fall at once.</param>
/// <param name="GivesJoules">The energy that it gives over that fall.</param>
public sealed record CapacitorResult(
    string At, double Farads, double SeriesMilliohms, double DrawAmps, double FallVolts, double HoldsMilliseconds,
    double GivesJoules);
