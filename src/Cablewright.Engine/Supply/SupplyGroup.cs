using Cablewright.Engine.Completion;
using Cablewright.Engine.Sources;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Supply;

/// <summary>Batteries that stand side by side, and what hangs on them.</summary>
/// <param name="Batteries">The batteries.</param>
/// <param name="Amplifiers">The amplifiers that they feed.</param>
/// <param name="ChargersFrom">The runs whose chargers draw from them.</param>
/// <param name="ChargersTo">The runs whose chargers charge them.</param>
internal sealed record SupplyGroup(int[] Batteries, int[] Amplifiers, int[] ChargersFrom, int[] ChargersTo)
{
    /// <summary>The groups in the order of their first batteries.</summary>
    /// <param name="model">The build.</param>
    /// <param name="parts">What of its supply side hangs together.</param>
    public static IReadOnlyList<SupplyGroup> Of(BuildModel model, SupplyParts parts)
    {
        CompleteBuild build = model.Build;
        CircuitModel circuit = model.Circuit;
        return [
            .. Enumerable.Range(0, build.Batteries.Count)
            .GroupBy(battery => parts.Of(circuit.Batteries[battery].Positive))
            .Select(part => new SupplyGroup(
                [.. part],
                [.. Enumerable.Range(0, build.Draws.Count).Where(i => parts.Of(circuit.Network.Loads[i].Positive) == part.Key)],
                [.. circuit.ChargerRuns.Where(run => parts.Of(circuit.EndsOf(run).From) == part.Key)],
                [.. circuit.ChargerRuns.Where(run => parts.Of(circuit.EndsOf(run).To) == part.Key)]))];
    }

    /// <summary>The batteries' contents, for Peukert's law.</summary>
    public Peukert.Cell[] CellsOf(CompleteBuild build) => [.. Batteries.Select(battery => build.Batteries[battery].Energy)];

    /// <summary>Whether one of its batteries is the one that is charged first.</summary>
    public bool IsCharged(CompleteBuild build) => Batteries.Contains(build.ChargingBattery);
}
