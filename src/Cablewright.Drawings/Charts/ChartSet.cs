using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Charts;

/// <summary>The charts of an answer.</summary>
internal static class ChartSet
{
    /// <summary>
    /// The voltage along the way, what the run that loses the most would lose with other sizes, and the fuse with the least to
    /// spare, as SVG.
    /// </summary>
    public static IReadOnlyList<string> Of(Build build, Assessment answer)
    {
        var charts = new List<string>();
        if (VoltageChart.Of(build, answer) is { } voltage) charts.Add(voltage);
        RunResult? worst = answer.Runs.Where(run => run is { Side: Side.Supply, PeakCurrentAmps: > 0 })
            .MaxBy(run => run.LossWatts);
        if (worst is not null) charts.Add(LossChart.Of(worst, answer.Supply.OperatingVolts, build.Units ?? UnitSystem.Us));
        // A record of an older release may go by a ruleset that is no longer here.
        if (RulesetLibrary.Find(answer.Ruleset) is { } ruleset)
        {
            RunResult? tightest = answer.Runs
                .Where(run => run.Fuse is { SmallestFaultAmps: not null } && !StatesItsCurve(build, run)).MinBy(Spare);
            if (tightest is not null) charts.Add(FuseChart.Of(tightest, tightest.Fuse!, ruleset));
        }

        return charts;
    }

    /// <summary>How many times longer than the fuse takes the conductor withstands.</summary>
    private static double Spare(RunResult run) => run.Fuse!.OpensSeconds is { } opens
        ? (run.Fuse.ConductorWithstandSeconds ?? double.PositiveInfinity) / opens
        : 0;

    private static bool StatesItsCurve(Build build, RunResult run) =>
        build.Runs.FirstOrDefault(each => each.Id == run.Id)?.Fuse?.OpeningTimes is { Count: > 0 };
}
