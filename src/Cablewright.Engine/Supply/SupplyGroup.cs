using Cablewright.Engine.Builds;
using Cablewright.Engine.Completing;

namespace Cablewright.Engine.Supply;

/// <summary>Batteries that stand side by side, and what hangs on them.</summary>
/// <param name="Batteries">The batteries.</param>
/// <param name="Amplifiers">The amplifiers that they feed.</param>
/// <param name="ChargersFrom">The runs whose chargers draw from them.</param>
/// <param name="ChargersTo">The runs whose chargers charge them.</param>
internal sealed record SupplyGroup(int[] Batteries, int[] Amplifiers, int[] ChargersFrom, int[] ChargersTo)
{
    /// <summary>The groups with the engine running: relays are closed, diodes conduct, chargers part.</summary>
    public static IReadOnlyList<SupplyGroup> Running(CompleteBuild build) =>
        Of(build, run => run.Isolator is not { Kind: IsolatorKind.DcDcCharger });

    /// <summary>The groups with the engine off: every isolator parts.</summary>
    public static IReadOnlyList<SupplyGroup> EngineOff(CompleteBuild build) => Of(build, run => run.Isolator is null);

    /// <summary>The batteries' contents, for Peukert's law.</summary>
    public Peukert.Cell[] CellsOf(CompleteBuild build) => [.. Batteries.Select(battery => build.Batteries[battery].Energy)];

    /// <summary>Whether one of its batteries is the one that is charged first.</summary>
    public bool IsCharged(CompleteBuild build) => Batteries.Contains(build.ChargingBattery);

    private static List<SupplyGroup> Of(CompleteBuild build, Func<Run, bool> joins)
    {
        Build stated = build.Stated;
        var islands = new SupplyIslands(stated, [.. build.Runs.Select(run => run.Side)], joins);
        int[] chargers = [.. Enumerable.Range(0, stated.Runs.Count)
            .Where(run => stated.Runs[run].Isolator is { Kind: IsolatorKind.DcDcCharger })];
        return [.. Enumerable.Range(0, build.Batteries.Count)
            .GroupBy(battery => islands.Of(build.Batteries[battery].Id))
            .Select(island => new SupplyGroup(
                [.. island],
                [.. Enumerable.Range(0, stated.Amplifiers.Count).Where(i => islands.Of(stated.Amplifiers[i].Id) == island.Key)],
                [.. chargers.Where(run => islands.Of(stated.Runs[run].From) == island.Key)],
                [.. chargers.Where(run => islands.Of(stated.Runs[run].To) == island.Key)]))];
    }
}
