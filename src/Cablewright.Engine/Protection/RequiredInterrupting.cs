using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Protection;

/// <summary>The interrupting rating that a fuse needs.</summary>
/// <remarks>
/// For lead-acid batteries by the table of ABYC E-11, from their cold-cranking current together; a computed bolted current is
/// shown beside it, but cables and posts never let it flow. The table does not speak of lithium iron phosphate nor of more than
/// 2200 A: there the computed current counts.
/// </remarks>
internal static class RequiredInterrupting
{
    /// <summary>What a fuse at an end of a run needs, in amperes.</summary>
    /// <param name="model">The build.</param>
    /// <param name="end">The end.</param>
    /// <param name="boltedAmps">The largest fault current where it stands.</param>
    public static double Of(BuildModel model, RunEnd end, double boltedAmps) => Math.Min(ByTable(model, end), boltedAmps);

    /// <summary>What the table asks; infinite where it does not speak of the batteries.</summary>
    public static double ByTable(BuildModel model, RunEnd end)
    {
        if (CrankingAmps(model, end) is not { } cranking) return double.PositiveInfinity;
        FuseSection figures = model.Build.Ruleset.Fuse;
        if (Significant.Exceeds(cranking, figures.InterruptingLargestBank.Value)) return double.PositiveInfinity;
        Figure main = cranking <= figures.InterruptingSmallBank.Value ? figures.InterruptingTo650
            : cranking <= figures.InterruptingMiddleBank.Value ? figures.InterruptingTo1100
            : figures.InterruptingAbove1100;
        return model.Topology.IsAtBattery(end) ? main.Value : main.Value * figures.InterruptingBranchShare.Value;
    }

    /// <summary>Whether a plug-in fuse breaks less than the table asks and is fitted by vehicle makers all the same.</summary>
    public static bool IsUsualPlugIn(BuildModel model, RunEnd end, FuseFamily family, double interruptsAmps) =>
        family.IsPlugIn && CrankingAmps(model, end) <= model.Build.Ruleset.Fuse.InterruptingSmallBank.Value
        && !Significant.Exceeds(model.Build.Ruleset.Fuse.InterruptingPlugIn.Value, interruptsAmps);

    /// <summary>Whether a fuse has still to be bought, and its family has parts that break so much.</summary>
    public static bool IsThereAPart(FittedFuse fuse, double needed) => fuse.Decided is Decided.Chosen
        && !Significant.Exceeds(needed, fuse.Family.BestInterruptingAt(fuse.InterruptsAtVolts));

    /// <summary>
    /// Of the batteries that reach the fuse together, which a charger never lets through; <c>null</c> where one of them is of
    /// lithium iron phosphate.
    /// </summary>
    private static double? CrankingAmps(BuildModel model, RunEnd end)
    {
        SupplyParts parts = model.Circuit.PartsRunning;
        int part = parts.Of(model.Topology.NodeAt(end));
        double sum = 0;
        for (int battery = 0; battery < model.Build.Batteries.Count; battery++)
        {
            if (parts.Of(model.Circuit.PositiveOf(battery)) != part) continue;
            if (model.Build.Batteries[battery].CrankingAmps is not { } amps) return null;
            sum += amps;
        }

        return sum;
    }
}
