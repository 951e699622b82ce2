using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>Finds isolators that part nothing or point the wrong way.</summary>
/// <remarks>
/// Taken away, the isolators leave islands. An isolator joins two different islands, each with a battery; a diode or a charger
/// points away from the battery that the alternator charges.
/// </remarks>
internal static class IsolatorFaults
{
    public static void Find(Build build, PlaceNames names, Side[] sides, List<BuildFault> faults)
    {
        int[] isolated = [.. Enumerable.Range(0, build.Runs.Count).Where(run => build.Runs[run].Isolator is not null)];
        if (isolated.Length == 0) return;
        var islands = new SupplyIslands(build, sides, run => run.Isolator is null);
        int[] steps = StepsFrom(
            islands.Of(PlaceNames.BatteriesOf(build)[ChargingPlace.Of(build, names).Battery]), islands, build, isolated);
        HashSet<int> withBattery = [.. PlaceNames.BatteriesOf(build).Select(islands.Of)];
        foreach (int run in isolated)
        {
            if (FaultOf(build.Runs[run], sides[run], islands, steps, withBattery) is { } kind)
                faults.Add(new BuildFault(kind, new Target(Part.Isolator, run), build.Runs[run].Id));
        }

        if (faults.Count == 0) ChargerFaults.Find(build, sides, faults);
    }

    private static BuildFaultKind? FaultOf(
        Run run, Side side, SupplyIslands islands, int[] steps, HashSet<int> withBattery)
    {
        if (side is Side.Return) return BuildFaultKind.IsolatorInReturn;
        int from = islands.Of(run.From), to = islands.Of(run.To);
        if (from == to) return BuildFaultKind.IsolatorBypassed;
        if (!withBattery.Contains(from) || !withBattery.Contains(to)) return BuildFaultKind.IsolatorNoBattery;
        if (run.Isolator is { Kind: IsolatorKind.DcDcCharger, RatedAmps: null }) return BuildFaultKind.IsolatorRatingMissing;
        bool pointsBack = run.Isolator!.Kind is not IsolatorKind.Relay && steps[from] > steps[to];
        return pointsBack ? BuildFaultKind.IsolatorPointsBack : null;
    }

    /// <summary>How many isolators lie between each island and the one that is charged first.</summary>
    private static int[] StepsFrom(int start, SupplyIslands islands, Build build, int[] isolated)
    {
        var steps = new int[islands.Count];
        Array.Fill(steps, int.MaxValue);
        steps[start] = 0;
        for (bool moved = true; moved;)
        {
            moved = false;
            foreach (int run in isolated)
            {
                int from = islands.Of(build.Runs[run].From), to = islands.Of(build.Runs[run].To);
                int near = Math.Min(steps[from], steps[to]);
                if (near == int.MaxValue || Math.Max(steps[from], steps[to]) <= near + 1) continue;
                steps[steps[from] == near ? to : from] = near + 1;
                moved = true;
            }
        }

        return steps;
    }
}
