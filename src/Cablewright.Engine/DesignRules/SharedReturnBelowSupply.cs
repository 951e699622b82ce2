using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <remarks>
/// Where several amplifiers have no other way back, the return that they share stands against the strongest supply run that
/// they share, or, where each has its own, against these together.
/// </remarks>
internal sealed class SharedReturnBelowSupply() : RunRule(
    ViolationKind.SharedReturnBelowSupply, Severity.Caution, "return.shared-below-supply",
    rules => rules.Return.SharedNotBelowSupply,
    "A return that several amplifiers share conducts worse than what supplies them.")
{
    /// <summary>Looking whether a run serves those that share a return, in runs solved.</summary>
    private const double CostOfSharing = 0.3;

    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int run)
    {
        if (facts.Build.Runs[run].Side is Side.Supply) return null;
        IReadOnlyList<int> sharing = facts.Circuit.SharedReturns.AmplifiersOver(run);
        if (sharing.Count < 2) return null;
        facts.Build.Meter.Count(CostOfSharing * facts.Build.Runs.Count);
        double supplies = sharing.Sum(amplifier => facts.MetresPerOhmAt(amplifier).Supply);
        double[] common = [.. Enumerable.Range(0, facts.Build.Runs.Count)
            .Where(other => !sharing.Except(facts.Circuit.SharedSupplies.AmplifiersOver(other)).Any())
            .Select(other => 1 / facts.Design.Conductors[other].OhmsPerMetreAt20)];
        double limit = common.Length > 0 ? Math.Min(supplies, common.Max()) : supplies;
        double back = 1 / facts.Design.Conductors[run].OhmsPerMetreAt20;
        return Significant.Exceeds(limit, back) ? By(run, back, limit) : null;
    }
}
