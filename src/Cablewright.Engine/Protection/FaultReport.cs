using Cablewright.Engine.Findings;

namespace Cablewright.Engine.Protection;

/// <summary>What short circuits and overloads would do to a decision.</summary>
/// <param name="Clearings">The worst clearing of each guarded supply run.</param>
/// <param name="LargestAmps">The largest fault current at each node where a fuse stands.</param>
/// <param name="Breaches">The rules that do not hold.</param>
internal sealed record FaultReport(
    IReadOnlyList<Clearing> Clearings, IReadOnlyDictionary<int, double> LargestAmps, IReadOnlyList<Breach> Breaches)
{
    /// <summary>The worst clearing that a fuse decides, or <c>null</c>.</summary>
    public Clearing? WorstOf(int run, bool isFar) =>
        Clearings.Where(clearing => clearing.Guard.Run == run && clearing.Guard.IsFar == isFar)
            .MaxBy(clearing => Significant.Round(clearing.Strain));
}
