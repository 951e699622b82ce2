using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Sizing;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>More to choose from where conductors are left open. Where prices are stated these say what there is.</summary>
internal sealed class ChoiceChanges(CompleteBuild build)
{
    private readonly SizingWishes wishes = build.Stated.Sizing;

    /// <summary>A size larger than those to choose from, ever larger.</summary>
    public Ladder LargerSize()
    {
        if (wishes.Sizes.Count == 0 || wishes.Prices.Count > 0)
            return Ladder.Of<int>([], _ => throw new InvalidOperationException());
        ConductorSize largest = wishes.Sizes.MaxBy(size => size.MetalAreaMm2)!;
        ConductorSize[] larger = [.. CandidateList.Offered(build.Stated.Units).Where(size => size.IsLargerThan(largest))];
        return Ladder.Of(larger, size => new Change
        {
            Kind = ChangeKind.Choice,
            Apply = changed => changed with { Sizing = changed.Sizing with { Sizes = [.. changed.Sizing.Sizes, size] } },
            Edits = [new Edit(new Target(Part.OfferedSize), null, Held.Of(size))],
            Steps = [new Step.OfferSize(size, largest)],
            Share = 1 - largest.MetalAreaMm2 / size.MetalAreaMm2,
        });
    }

    /// <summary>Copper among the metals to choose from, for all open runs or for one that states its metal.</summary>
    public IEnumerable<Change> Copper()
    {
        if (wishes.Prices.Count > 0) yield break;
        if (wishes.Materials.Count > 0 && !wishes.Materials.Contains(Material.Copper))
        {
            yield return new Change
            {
                Kind = ChangeKind.Choice,
                Apply = changed =>
                    changed with { Sizing = changed.Sizing with { Materials = [.. changed.Sizing.Materials, Material.Copper] } },
                Edits = [new Edit(new Target(Part.OfferedMaterial), null, Held.Of(Material.Copper))],
                Steps = [new Step.OfferCopper()],
                Share = Gain(wishes.Materials[0]),
            };
        }

        for (int run = 0; run < build.Stated.Runs.Count; run++)
        {
            if (build.Runs[run] is { Given: null, Wish.Material: Material.Aluminium or Material.CopperCladAluminium })
                yield return CopperIn(run);
        }
    }

    /// <summary>More conductors in parallel in an open run that states their count.</summary>
    public Ladder InParallel(int run)
    {
        int now = build.Runs[run].Wish.Count ?? ConductorChoice.MostInParallel;
        return new Ladder(ConductorChoice.MostInParallel - now, place => new Change
        {
            Kind = ChangeKind.Parallel,
            Apply = changed => changed.WithConductor(run, wish => wish with { Count = now + place }),
            Edits = [new Edit(new Target(Part.Conductor, run, Member.Count), Held.Of(now), Held.Of(now + place))],
            Steps = [new Step.LayInParallel(build.Runs[run].Id, now + place, now)],
            Share = (double)place / (now + place),
            Runs = [build.Runs[run].Id],
        });
    }

    private Change CopperIn(int run)
    {
        Material now = build.Runs[run].Wish.Material!.Value;
        return new Change
        {
            Kind = ChangeKind.Material,
            Apply = changed => changed.WithConductor(run, wish => wish with { Material = Material.Copper }),
            Edits = [new Edit(new Target(Part.Conductor, run, Member.Material), Held.Of(now), Held.Of(Material.Copper))],
            Steps = [new Step.UseMaterial(build.Runs[run].Id, Material.Copper, now)],
            Share = Gain(now),
            Runs = [build.Runs[run].Id],
        };
    }

    private static double Gain(Material now) =>
        1 - MaterialProperties.Of(Material.Copper).ResistivityOhmMm2PerMetre
            / MaterialProperties.Of(now).ResistivityOhmMm2PerMetre;
}
