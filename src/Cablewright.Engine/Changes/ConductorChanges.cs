using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>Another conductor in a run whose conductor is given.</summary>
internal sealed class ConductorChanges(CompleteBuild build)
{
    /// <summary>Ever larger conductors of the same metal, of the sizes to choose from, or else the usual ones.</summary>
    public Ladder Larger(int run) => Sizes(run, size => size.IsLargerThan(Now(run).Conductor.Size), descending: false);

    /// <summary>Ever smaller ones, for terminals that do not accept what is given.</summary>
    public Ladder Smaller(int run) => Sizes(run, size => Now(run).Conductor.Size.IsLargerThan(size), descending: true);

    /// <summary>
    /// As much of the best as there is, in hotter insulation and over the shortest way: more than any change of the run.
    /// </summary>
    public Change Best(int run)
    {
        ConductorSize largest = Known.MaxBy(size => size.MetalAreaMm2)!, now = Now(run).Conductor.Size;
        var best = new ConductorChoice(Conductor.Of(largest.IsLargerThan(now) ? largest : now, Material.Copper),
            ConductorChoice.MostInParallel);
        double metres = build.Runs[run].LengthMetres * WrittenSteps.LeastPercent / 100;
        return To(run, best).And(Change.Unsaid(changed => changed.WithRun(run, each => each with
        {
            LengthMetres = metres,
            Conductor = each.Conductor with { InsulationCelsius = build.Ruleset.Ampacity.HighestRating },
        })));
    }

    /// <summary>The metals that conduct better, of those to choose from, or else copper, the worst of them first.</summary>
    public Ladder Metals(int run)
    {
        ConductorChoice now = Now(run);
        IEnumerable<Material> known =
            build.Stated.Sizing.Materials is { Count: > 0 } stated ? stated.Distinct() : [Material.Copper];
        Material[] better = [.. known
            .Where(metal => Conductor.Of(now.Conductor.Size, metal).OhmsPerMetreAt20 < now.Conductor.OhmsPerMetreAt20)
            .OrderByDescending(metal => Conductor.Of(now.Conductor.Size, metal).OhmsPerMetreAt20)];
        return Ladder.Of(better, metal => Metal(run, metal));
    }

    /// <summary>Copper in every given run that is not of copper; <c>null</c> where fewer than two are.</summary>
    public Change? CopperInAll()
    {
        Change[] each = [.. Enumerable.Range(0, build.Stated.Runs.Count)
            .Where(run => build.Runs[run].Given is { Material: Material.Aluminium or Material.CopperCladAluminium })
            .Select(run => Metal(run, Material.Copper))];
        if (each.Length < 2) return null;
        return each.Aggregate((one, other) => one.And(other)) with { Steps = [new Step.UseCopperEverywhere()] };
    }

    /// <summary>Ever more of the same in parallel, where there are several already or none larger is kept.</summary>
    public Ladder InParallel(int run)
    {
        int now = Now(run).Count, most = Math.Max(now, CandidateList.MostParallel(Stock.Any, build));
        bool mayBeLarger = now == 1 && CandidateList.Stocked(build.Stated.Units)[^1].IsLargerThan(Now(run).Conductor.Size);
        return new Ladder(mayBeLarger ? 0 : most - now, place => Of(
            run, Now(run) with { Count = now + place }, ChangeKind.Parallel,
            new Step.LayInParallel(build.Runs[run].Id, now + place, now)));
    }

    /// <summary>Another conductor in a run.</summary>
    public Change To(int run, ConductorChoice choice) => Of(
        run, choice, ChangeKind.Conductor, new Step.UseConductor(build.Runs[run].Id, choice, Now(run)));

    private Change Metal(int run, Material metal)
    {
        ConductorChoice now = Now(run);
        return Of(
            run, now with { Conductor = Conductor.Of(now.Conductor.Size, metal) }, ChangeKind.Material,
            new Step.UseMaterial(build.Runs[run].Id, metal, now.Conductor.Material));
    }

    private IEnumerable<ConductorSize> Known =>
        build.Stated.Sizing.Sizes is { Count: > 0 } stated ? stated : CandidateList.Offered(build.Stated.Units);

    private Ladder Sizes(int run, Func<ConductorSize, bool> isWanted, bool descending)
    {
        ConductorSize[] sizes =
            [.. Known.Where(isWanted).Distinct().OrderBy(size => descending ? -size.MetalAreaMm2 : size.MetalAreaMm2)];
        ConductorSize[] asSupply = [.. sizes.Where(size => !IsBelowSupply(run, Sized(run, size)))];
        return Ladder.Of(asSupply.Length > 0 ? asSupply : sizes, size => WithGround(run, Sized(run, size)));
    }

    private ConductorChoice Sized(int run, ConductorSize size) =>
        Now(run) with { Conductor = Conductor.Of(size, Now(run).Conductor.Material) };

    /// <summary>Whether a return would be weaker than a supply at the same amplifier or battery.</summary>
    private bool IsBelowSupply(int run, ConductorChoice choice) => build.Runs[run].Side is Side.Return
        && Beside(run, Side.Supply).Any(supply => Significant.Exceeds(choice.OhmsPerMetreAt20, Now(supply).OhmsPerMetreAt20));

    /// <summary>Another conductor in a run, and the same in the ground of its amplifier, where that is weaker.</summary>
    private Change WithGround(int run, ConductorChoice choice)
    {
        Change change = To(run, choice);
        if (build.Runs[run].Side is Side.Return || Beside(run, Side.Return).ToArray() is not [var ground]) return change;
        bool isWeaker = Significant.Exceeds(Now(ground).OhmsPerMetreAt20, choice.OhmsPerMetreAt20);
        return isWeaker && Beside(ground, Side.Supply).SequenceEqual([run]) ? change.And(To(ground, choice)) : change;
    }

    /// <summary>The given runs of one side at the amplifier of a run, or at the battery of a return.</summary>
    private IEnumerable<int> Beside(int run, Side side) => Enumerable.Range(0, build.Stated.Runs.Count).Where(other =>
        build.Runs[other] is { Given: not null } each && each.Side == side
        && new[] { build.Runs[run].From, build.Runs[run].To }
            .Any(place => each.EndsAt(place) && IsWhereGroundsCount(place, run)));

    private bool IsWhereGroundsCount(string place, int run) => build.Names[place].Kind is PlaceKind.Amplifier
        || (build.Names[place].Kind is PlaceKind.Battery && build.Runs[run].Side is Side.Return);

    private Change Of(int run, ConductorChoice to, ChangeKind kind, Step step)
    {
        ConductorChoice now = Now(run);
        double ratio = to.OhmsPerMetreAt20 / now.OhmsPerMetreAt20;
        return new Change
        {
            Kind = kind,
            Apply = changed => changed.WithConductor(run, wish => wish with
            {
                Size = to.Conductor.Size,
                Material = to.Conductor.Material,
                Count = to.Count,
            }),
            Edits = [.. Edits(run, now, to)],
            Steps = [step],
            Share = Math.Abs(1 - ratio),
            Runs = [build.Runs[run].Id],
        };
    }

    private IEnumerable<Edit> Edits(int run, ConductorChoice now, ConductorChoice to)
    {
        var at = new Target(Part.Conductor, run);
        if (now.Conductor.Size != to.Conductor.Size)
            yield return new Edit(at[Member.Size], Held.Of(now.Conductor.Size), Held.Of(to.Conductor.Size));
        Material? stated = build.Runs[run].Wish.Material;
        if (stated != to.Conductor.Material && now.Conductor.Material != to.Conductor.Material)
            yield return new Edit(at[Member.Material], Held.Of(stated), Held.Of(to.Conductor.Material));
        if (now.Count != to.Count)
            yield return new Edit(at[Member.Count], Held.Of(build.Runs[run].Wish.Count), Held.Of(to.Count));
    }

    /// <summary>What is given.</summary>
    public ConductorChoice Now(int run) => new(build.Runs[run].Given!, build.Runs[run].GivenCount ?? 1);
}
