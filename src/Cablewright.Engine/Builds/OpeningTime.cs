namespace Cablewright.Engine.Builds;

/// <summary>One point of a fuse's own time-current curve.</summary>
/// <param name="ShareOfRating">Current over rated current.</param>
/// <param name="FastestSeconds">It holds for at least this long.</param>
/// <param name="SlowestSeconds">It has opened after this long; <c>null</c> where it need not open.</param>
public sealed record OpeningTime(double ShareOfRating, double FastestSeconds, double? SlowestSeconds);
