using Cablewright.Engine.Builds;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Fuses;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Kits;

/// <summary>Which of a kit's fuses goes where a fuse is needed.</summary>
internal sealed class FusePick
{
    private readonly Dictionary<RunEnd, KitPart> bySlot = [];
    private readonly Dictionary<RunEnd, int> partOf = [];
    private readonly List<(RunEnd, DesignedRun, FittedFuse)> missing = [];

    /// <summary>The greatest need first, each takes the fuse whose rating is nearest to the one that would be chosen.</summary>
    public FusePick(Kit kit, Variant wired)
    {
        List<(KitPart Part, int Index)> stock = [.. kit.Parts.Select((part, index) => (part, index))
            .Where(entry => entry.part.Kind is KitPartKind.Fuse)
            .SelectMany(entry => Enumerable.Repeat(entry, entry.part.Count))];
        var slots = wired.Runs
            .SelectMany((run, index) => new[] { (End: RunEnd.Near(index), Run: run, Fuse: run.Near),
                (End: RunEnd.Far(index), Run: run, Fuse: run.Far) })
            .Where(slot => slot.Fuse is not null)
            .OrderByDescending(slot => slot.Fuse!.RatingAmps);
        foreach ((RunEnd end, DesignedRun run, FittedFuse? fuse) in slots)
        {
            for (int piece = 0; piece < (fuse!.PerConductor ? run.Choice.Count : 1); piece++)
            {
                if (stock.Count == 0)
                {
                    missing.Add((end, run, fuse));
                    continue;
                }

                var best = stock.MinBy(entry => Math.Abs(Math.Log(entry.Part.RatingAmps!.Value / fuse.RatingAmps)));
                stock.Remove(best);
                bySlot.TryAdd(end, best.Part);
                partOf.TryAdd(end, best.Index);
            }
        }
    }

    /// <summary>The part at each place.</summary>
    public IReadOnlyDictionary<RunEnd, KitPart> BySlot => bySlot;

    /// <summary>Its index among the kit's parts.</summary>
    public IReadOnlyDictionary<RunEnd, int> PartOf => partOf;

    /// <summary>Where none is left, and the fuse that would be chosen there.</summary>
    public IReadOnlyList<(RunEnd End, DesignedRun Run, FittedFuse Chosen)> Missing => missing;
}
