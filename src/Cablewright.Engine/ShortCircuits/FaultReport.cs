using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>What short circuits and overloads would do to a design.</summary>
/// <param name="Clearings">The worst clearing of each protected supply run.</param>
/// <param name="LargestAmps">The largest fault current at each node where a fuse stands.</param>
/// <param name="Violations">The rules that do not hold.</param>
internal sealed record FaultReport(
    IReadOnlyList<Clearing> Clearings, IReadOnlyDictionary<int, double> LargestAmps, IReadOnlyList<Violation> Violations)
{
    private Dictionary<RunEnd, Clearing>? worst;

    /// <summary>The worst clearing that a fuse decides, or <c>null</c>.</summary>
    public Clearing? WorstOf(RunEnd fuse) => (worst ??= WorstByFuse()).GetValueOrDefault(fuse);

    private Dictionary<RunEnd, Clearing> WorstByFuse()
    {
        var byFuse = new Dictionary<RunEnd, Clearing>();
        foreach (Clearing clearing in Clearings)
        {
            RunEnd fuse = clearing.ProtectiveDevice.End;
            if (!byFuse.TryGetValue(fuse, out Clearing? known) || Significant.Exceeds(clearing.Strain, known.Strain))
                byFuse[fuse] = clearing;
        }

        return byFuse;
    }
}
