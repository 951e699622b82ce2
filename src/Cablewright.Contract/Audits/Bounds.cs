using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Audits;

/// <summary>
/// A figure with the bounds between which it lies if every measurement lies within its uncertainty. Its unit stands in the name
/// of the member that holds it.
/// </summary>
public sealed record Bounds
{
    /// <summary>The best guess.</summary>
    [Figure("see the member's name", 17.7, Smallest = double.NegativeInfinity)]
    public required double Estimate { get; init; }

    /// <summary>The lower bound, included.</summary>
    [Figure("see the member's name", 17.2, Smallest = double.NegativeInfinity)]
    public required double Least { get; init; }

    /// <summary>The upper bound, included.</summary>
    [Figure("see the member's name", 18.3, Smallest = double.NegativeInfinity)]
    public required double Most { get; init; }
}
