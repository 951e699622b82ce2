using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Designs;

/// <summary>A build with every choice stated, so that it stays as it is when something else about it changes.</summary>
internal static class FrozenBuild
{
    /// <summary>The build with the chosen conductors and fuses and the added returns stated.</summary>
    public static Build Of(CompleteBuild build, Design design) => build.Stated with
    {
        Include = [],
        Runs = [.. build.Runs.Select((run, index) => WithFuses(WithConductor(build, run, index, design), run, index, design))],
    };

    /// <summary>The build with the chosen conductors and the added returns stated, and its fuses as they were left.</summary>
    public static Build WithFusesOpen(CompleteBuild build, Design design) => build.Stated with
    {
        Include = [],
        Runs = [.. build.Runs.Select((run, index) => WithConductor(build, run, index, design))],
    };

    private static Run WithConductor(CompleteBuild build, CompleteRun run, int index, Design design)
    {
        Run stated = index < build.Stated.Runs.Count ? build.Stated.Runs[index] : Added(run);
        ConductorChoice choice = design.Conductors[index];
        return stated with
        {
            Conductor = stated.Conductor with
            {
                Size = choice.Conductor.Size,
                Material = choice.Conductor.Material,
                Count = choice.Count,
            },
        };
    }

    private static Run WithFuses(Run stated, CompleteRun run, int index, Design design) => stated with
    {
        Fuse = FuseOf(design.Near[index], stated.Fuse, run.Side),
        FarFuse = FuseOf(design.Far[index], stated.FarFuse, run.Side),
    };

    private static Run Added(CompleteRun run) => new()
    {
        Id = run.Id,
        From = run.From,
        To = run.To,
        LengthMetres = run.LengthMetres,
        Route = run.Route,
        Side = run.Side,
    };

    /// <summary>A supply run without a fuse is said to have none, so that none is chosen for it afterwards.</summary>
    private static FuseWish? FuseOf(FittedFuse? fuse, FuseWish? stated, Side side) => fuse is null
        ? side is Side.Supply ? new FuseWish { Fitted = false } : stated
        : (stated ?? new FuseWish()) with
        {
            RatingAmps = fuse.RatingAmps,
            Family = fuse.Family.Name,
            DistanceMetres = fuse.DistanceMetres,
            PerConductor = fuse.PerConductor,
        };
}
