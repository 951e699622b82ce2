using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Completion;

/// <summary>How the batteries reach the vehicle's body.</summary>
/// <remarks>
/// The body is one place with a resistance of its own to the foot of each battery's strap. A return run that leads from the
/// body to a battery, without crossing the body on the way, ends at that battery's foot; all others end at the body itself. A
/// battery that no such run reaches has a strap, which is assumed, as soon as anything returns over the body or there is another
/// battery that no wire ties to it. A way through an amplifier's terminal is that amplifier's ground, and no battery's strap.
/// Where a wire ties the battery to the engine, its way to the body is the engine's strap, and that is what is assumed.
/// </remarks>
/// <param name="FootOfRun">For each run, the battery at whose foot its body end stands, or -1.</param>
/// <param name="AssumedStraps">The batteries whose strap is assumed.</param>
/// <param name="Feet">The batteries that have a foot on the body.</param>
/// <param name="AtEngine">The batteries whose negative terminal a wire ties to the engine.</param>
internal sealed record BodyConnections(
    IReadOnlyList<int> FootOfRun, IReadOnlyList<int> AssumedStraps, IReadOnlyList<int> Feet, IReadOnlyList<int> AtEngine)
{
    public static BodyConnections Find(
        IReadOnlyList<CompleteRun> runs, IReadOnlyList<CompleteBattery> batteries, PlaceNames names, AssumptionList assumptions)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (CompleteBattery battery in batteries) numbers.Add(battery.Id, numbers.Count);
        var wires = new DisjointSets(batteries.Count + 2 * runs.Count);
        foreach (CompleteRun run in runs.Where(run => run.Side is Side.Return && !TouchesBody(run) && !EndsAtAmplifier(run)))
            wires.Join(NumberOf(run.From), NumberOf(run.To));

        bool used = runs.Any(TouchesBody) || Enumerable.Range(0, batteries.Count).Select(wires.SetOf).Distinct().Count() > 1;
        int[] footOfRun = [.. runs.Select(run => TouchesBody(run) ? FirstBatteryWith(OtherEnd(run)) : -1)];
        int[] assumed = used ? [.. Enumerable.Range(0, batteries.Count).Where(battery => !IsReached(battery))] : [];
        int[] atEngine = numbers.TryGetValue(PlaceNames.Engine, out int engine)
            ? [.. Enumerable.Range(0, batteries.Count).Where(battery => wires.SetOf(battery) == wires.SetOf(engine))]
            : [];
        foreach (int battery in assumed) NoteStrap(battery, batteries[battery], atEngine.Contains(battery), assumptions);
        return new BodyConnections(
            footOfRun, assumed, [.. footOfRun.Where(foot => foot >= 0).Concat(assumed).Distinct().Order()], atEngine);

        int NumberOf(string place)
        {
            if (!numbers.TryGetValue(place, out int number)) numbers.Add(place, number = numbers.Count);
            return number;
        }

        int FirstBatteryWith(string place)
        {
            int set = wires.SetOf(NumberOf(place));
            return Enumerable.Range(0, batteries.Count).FirstOrDefault(battery => wires.SetOf(battery) == set, -1);
        }

        bool EndsAtAmplifier(CompleteRun run) =>
            names[run.From].Kind is PlaceKind.Amplifier || names[run.To].Kind is PlaceKind.Amplifier;

        bool IsReached(int battery) => footOfRun.Any(foot => foot >= 0 && wires.SetOf(foot) == wires.SetOf(battery));
    }

    /// <summary>The number of the strap that is assumed for a battery, or -1.</summary>
    public int AssumedStrapOf(int battery)
    {
        for (int strap = 0; strap < AssumedStraps.Count; strap++)
        {
            if (AssumedStraps[strap] == battery) return strap;
        }

        return -1;
    }

    private static bool TouchesBody(CompleteRun run) => run.EndsAt(PlaceNames.Body);

    private static string OtherEnd(CompleteRun run) => run.From == PlaceNames.Body ? run.To : run.From;

    private static void NoteStrap(int index, CompleteBattery battery, bool isOfEngine, AssumptionList assumptions) =>
        assumptions.Note(new AssumedStrap(
            isOfEngine ? AssumptionKind.EngineStrap : AssumptionKind.Strap, battery.Id, index,
            assumptions.Ruleset.Supply.StrapResistance));
}
