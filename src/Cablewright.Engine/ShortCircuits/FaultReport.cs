using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>What short circuits and overloads would do to a decision.</summary>
/// <param name="Clearings">The worst clearing of each guarded supply run.</param>
/// <param name="LargestAmps">The largest fault current at each node where a fuse stands.</param>
/// <param name="Breaches">The rules that do not hold.</param>
internal sealed record FaultReport(
    IReadOnlyList<Clearing> Clearings, IReadOnlyDictionary<int, double> LargestAmps, IReadOnlyList<Breach> Breaches)
{
    private Dictionary<(int Run, bool IsFar), Clearing>? worst;

    /// <summary>The worst clearing that a fuse decides, or <c>null</c>.</summary>
    public Clearing? WorstOf(int run, bool isFar) => (worst ??= WorstByFuse()).GetValueOrDefault((run, isFar));

    private Dictionary<(int Run, bool IsFar), Clearing> WorstByFuse()
    {
        var byFuse = new Dictionary<(int Run, bool IsFar), Clearing>();
        foreach (Clearing clearing in Clearings)
        {
            (int, bool) fuse = (clearing.Guard.Run, clearing.Guard.IsFar);
            if (!byFuse.TryGetValue(fuse, out Clearing? known) || Significant.Exceeds(clearing.Strain, known.Strain))
                byFuse[fuse] = clearing;
        }

        return byFuse;
    }
}
