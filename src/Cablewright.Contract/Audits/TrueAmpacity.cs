using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Audits;

/// <summary>What a conductor of the true size and metal may carry without end, alone in still air.</summary>
public sealed record TrueAmpacity
{
    /// <summary>The surroundings, in degrees Celsius.</summary>
    [Figure("C", 40, Smallest = -60)]
    public required double SurroundingsCelsius { get; init; }

    /// <summary>At the estimated area, in amperes; absent outside 22 to 4/0 AWG.</summary>
    [Figure("A", 132)]
    public double? AmpacityAmps { get; init; }

    /// <summary>At the least area that the measurements allow, in amperes; absent likewise.</summary>
    [Figure("A", 130)]
    public double? LeastAmpacityAmps { get; init; }

    /// <summary>What the claimed size and metal would carry, in amperes; absent where no size is claimed.</summary>
    [Figure("A", 149)]
    public double? ClaimedAmpacityAmps { get; init; }
}
