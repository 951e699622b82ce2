using Cablewright.Engine.Builds;

namespace Cablewright.Engine.Changes;

/// <summary>Builds with one run otherwise.</summary>
internal static class BuildEdits
{
    /// <summary>The build with one run changed.</summary>
    public static Build WithRun(this Build build, int index, Func<Run, Run> change) => build with
    {
        Runs = [.. build.Runs.Select((run, each) => each == index ? change(run) : run)],
    };

    /// <summary>The build with the conductor of one run changed.</summary>
    public static Build WithConductor(this Build build, int index, Func<ConductorWish, ConductorWish> change) =>
        build.WithRun(index, run => run with { Conductor = change(run.Conductor) });

    /// <summary>The build with one fuse changed.</summary>
    public static Build WithFuse(this Build build, RunEnd place, Func<FuseWish?, FuseWish?> change) =>
        build.WithRun(
            place.Run, run => place.IsFar ? run with { FarFuse = change(run.FarFuse) } : run with { Fuse = change(run.Fuse) });

    /// <summary>What a build states of a fuse.</summary>
    public static FuseWish? FuseAt(this Build build, RunEnd place) =>
        place.IsFar ? build.Runs[place.Run].FarFuse : build.Runs[place.Run].Fuse;
}
