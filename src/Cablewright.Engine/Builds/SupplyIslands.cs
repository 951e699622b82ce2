using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>The parts of the supply side that hang together over some of its runs.</summary>
internal sealed class SupplyIslands
{
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);
    private readonly DisjointSets sets;

    /// <summary>Joins the places of the supply side.</summary>
    /// <param name="build">The build.</param>
    /// <param name="sides">The side of each run.</param>
    /// <param name="joins">Which supply runs join their ends.</param>
    public SupplyIslands(Build build, IReadOnlyList<Side> sides, Func<Run, bool> joins)
    {
        Number(PlaceNames.AssumedBattery);
        foreach (Battery battery in build.Vehicle.Batteries) Number(battery.Id);
        foreach (Amplifier amplifier in build.Amplifiers) Number(amplifier.Id);
        foreach (Run run in build.Runs)
        {
            Number(run.From);
            Number(run.To);
        }

        sets = new DisjointSets(numbers.Count);
        for (int i = 0; i < build.Runs.Count; i++)
        {
            if (sides[i] is Side.Supply && joins(build.Runs[i]))
                sets.Join(numbers[build.Runs[i].From], numbers[build.Runs[i].To]);
        }
    }

    /// <summary>How many places there are; every island's number is below it.</summary>
    public int Count => numbers.Count;

    /// <summary>The number of the island that a place is in.</summary>
    public int Of(string place) => sets.SetOf(numbers[place]);

    private void Number(string place) => numbers.TryAdd(place, numbers.Count);
}
