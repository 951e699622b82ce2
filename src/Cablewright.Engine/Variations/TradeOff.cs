using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Variations;

/// <summary>What the whole build costs against what it loses: no other choice found is both cheaper and loses less.</summary>
/// <remarks>
/// Method: the open conductors are chosen anew under ever smaller permitted drops, at equal steps up to the hard limit; of the
/// choices those stay that no other beats in both cost and worst drop.
/// </remarks>
internal static class TradeOff
{
    private const int MostPoints = 12;

    /// <summary>The frontier, the cheapest point first; empty where nothing is open.</summary>
    public static IReadOnlyList<TradeOffPoint> Of(Variant present, WorkMeter meter)
    {
        CompleteBuild build = present.Build;
        if (build.Runs.All(run => run.Given is not null)) return [];
        TradeOffPoint[] points =
            [.. Enumerable.Range(1, MostPoints)
                .Select(step => PointAt(build, build.Drop.HardVolts * step / MostPoints, meter))
                .OfType<TradeOffPoint>()
                .OrderBy(point => Significant.Round(point.Cost)).ThenBy(point => Significant.Round(point.WorstDropPercent))];
        var frontier = new List<TradeOffPoint>();
        foreach (TradeOffPoint point in points)
        {
            if (frontier.Count == 0 || Significant.Exceeds(frontier[^1].WorstDropPercent, point.WorstDropPercent))
                frontier.Add(point);
        }

        return frontier;
    }

    /// <summary>The choice under one permitted drop, or <c>null</c> where none keeps every rule.</summary>
    private static TradeOffPoint? PointAt(CompleteBuild build, double volts, WorkMeter meter)
    {
        Build limited = build.Stated with
        {
            Include = [],
            Limits = build.Stated.Limits with { MaxDropVolts = volts, MaxDropFraction = null },
        };
        var variant = Variant.Of(limited, build.Ruleset, meter.Part(WorkBudgets.Variant));
        if (!variant.Sized.IsComplete || !variant.Stands) return null;
        DesignEvaluation evaluation = variant.Sized.Evaluation;
        CircuitModel circuit = variant.Evaluator.Model.Circuit;
        double worst = Enumerable.Range(0, build.Draws.Count).Max(amplifier =>
            variant.Evaluator.ConductorVolts(amplifier, evaluation) / circuit.SourceVoltsOf(amplifier) * 100);
        return new TradeOffPoint(variant.Sized.Cost, worst, variant);
    }
}

/// <summary>One choice of the open conductors on the frontier of cost against drop.</summary>
/// <param name="Cost">What the open runs cost, or their relative price.</param>
/// <param name="WorstDropPercent">The largest drop at an amplifier, in percent of its source's voltage.</param>
/// <param name="Variant">The build with it.</param>
internal sealed record TradeOffPoint(double Cost, double WorstDropPercent, Variant Variant);
