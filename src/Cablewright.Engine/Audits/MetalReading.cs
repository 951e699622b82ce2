using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Audits;

/// <summary>Which metals the measurements allow, and the area in the one that is taken.</summary>
internal sealed class MetalReading
{
    private MetalReading(
        MetalRange taken, IReadOnlyList<AreaByWay> areas, Interval? common, IReadOnlyList<MetalCandidate> candidates)
    {
        Taken = taken;
        Areas = areas;
        IsConsistent = common is not null;
        AreaMm2 = common ?? AreaFinder.Hull(areas);
        Candidates = candidates;
    }

    public MetalRange Taken { get; }

    public IReadOnlyList<AreaByWay> Areas { get; }

    public Interval AreaMm2 { get; }

    public IReadOnlyList<MetalCandidate> Candidates { get; }

    /// <summary>Whether some metal reconciles all ways.</summary>
    public bool IsConsistent { get; }

    /// <summary>Whether the metal was tested at all: one way alone fits every metal.</summary>
    public bool IsTested => Areas.Count > 1;

    public bool? CanBeCopper => IsTested && IsConsistent
        ? IsPossible(Material.Copper) || IsPossible(Material.TinnedCopper)
        : null;

    public double CopperEquivalentMm2 => AreaMm2.Estimate
        * MaterialProperties.Of(Material.Copper).ResistivityOhmMm2PerMetre / Taken.Properties.ResistivityOhmMm2PerMetre;

    /// <summary>
    /// The claimed metal where it is possible; else copper where that is possible; else the one whose ways agree best.
    /// </summary>
    public static MetalReading Of(Bench bench, BenchReport report, AssumptionList assumptions)
    {
        var trials = MetalRange.All
            .Select(metal => (Metal: metal, Areas: AreaFinder.ByEachWay(bench, metal)))
            .Select(trial => (trial.Metal, trial.Areas, Common: AreaFinder.Common(trial.Areas)))
            .ToArray();
        Material wished = report.ClaimedMaterial ?? Material.Copper;
        bool isAssumed = report.ClaimedMaterial is null && trials[0].Areas.Count == 1 && report.Strands is null;
        if (isAssumed)
            assumptions.Note(
                new AssumedWord(AssumptionKind.UntestedMaterial, Target.Of(Part.Claim, Member.Material), wished));
        var taken = trials
            .OrderByDescending(trial => trial.Common is not null)
            .ThenByDescending(trial => trial.Metal.Material == wished)
            .ThenByDescending(trial => trial.Metal.Material is Material.Copper)
            .ThenBy(trial => AreaFinder.Spread(trial.Areas))
            .First();
        return new MetalReading(
            taken.Metal, taken.Areas, taken.Common,
            [.. trials.Select(trial => new MetalCandidate(trial.Metal.Material, trial.Common is not null))]);
    }

    public bool IsPossible(Material material) => Candidates[(int)material].IsPossible;

    /// <summary>The metals that the measurements allow.</summary>
    public IEnumerable<Material> Possible =>
        Candidates.Where(candidate => candidate.IsPossible).Select(candidate => candidate.Material);
}
