using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <remarks>
/// A short circuit of a feed to the body comes back over the battery's strap, so the strap stands behind the feed's fuse as the
/// feed does; where it is the engine's, so does the battery's cable to the engine. The cable to the alternator is the vehicle's,
/// and so is an assumed strap: that is a caution only where it is sure to get too hot.
/// </remarks>
internal sealed class StrapBelowFuses() : Rule(
    ViolationKind.StrapBelowFuses, Severity.Caution, "return.strap-below-fuse", rules => rules.Return.StrapCarriesFaults,
    "The battery's own strap to the body carries less than the largest fuse at the battery lets through.")
{
    /// <summary>How the strap of a battery violates it; <c>null</c> where it holds.</summary>
    public Violation? Check(DesignFacts facts, int battery)
    {
        double through = LargestRating(facts, battery);
        foreach (int run in facts.Circuit.StrapsOf(battery))
        {
            double ampacity = facts.AmpacityOfAll(run);
            if (Significant.Exceeds(through, NextRating(facts, ampacity)))
                return By(battery, through, ampacity) with { Other = run };
        }

        int assumed = facts.Build.Body.AssumedStrapOf(battery);
        if (assumed < 0) return null;
        double amps = facts.Envelope.StrapAmps[assumed], carries = facts.AmpacityOfAssumedStrap(battery);
        if (Significant.Exceeds(amps, carries)) return By(battery, amps, carries);
        return Significant.Exceeds(through, NextRating(facts, carries))
            ? By(battery, through, carries) with { Severity = Severity.Info }
            : null;
    }

    private static double LargestRating(DesignFacts facts, int battery)
    {
        double largest = 0;
        foreach (int run in facts.Topology.RunsAt(facts.Circuit.PositiveOf(battery)))
        {
            RunEnd near = RunEnd.Near(run);
            RunEnd end = facts.Topology.NodeAt(near) == facts.Circuit.PositiveOf(battery) ? near : near.Other;
            if (!facts.IsAlternatorCable(run) && facts.Design.FuseAt(end) is not null)
                largest = Math.Max(largest, facts.Design.TotalRatingAmpsAt(end));
        }

        return largest;
    }

    private static double NextRating(DesignFacts facts, double ampacity) =>
        facts.Build.Ruleset.FuseFamilies.UsualFor(ampacity).NextRating(ampacity) ?? ampacity;
}
