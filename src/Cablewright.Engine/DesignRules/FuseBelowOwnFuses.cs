using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <remarks>
/// The amplifiers are those that have no other way than over the fuse's run; where the own fuses of one of them are not stated,
/// nothing is said. Where a chosen fuse or one that opens on a note is named already, this would say it twice.
/// </remarks>
internal sealed class FuseBelowOwnFuses() : FuseRule(
    ViolationKind.FuseBelowOwnFuses, Severity.Info, "fuse.below-own-fuses", rules => rules.Fuse.OwnFuses,
    "The fuse at the battery is rated below the amplifiers' own fuses together: it may open at full output before they do.")
{
    private static readonly FuseOpensOnNote OpensOnNote = new();

    /// <inheritdoc/>
    public override Concern Concern => Concern.Performance;

    /// <inheritdoc/>
    protected override Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse)
    {
        if (fuse.Decided is Decided.Chosen || !facts.Topology.IsAtBattery(end)) return null;
        if (facts.Build.Stated.Amplifiers.All(amplifier => amplifier.OnBoardFuseAmps is null)) return null;
        double own = 0;
        foreach (int amplifier in facts.Circuit.SharedSupplies.AmplifiersOver(end.Run))
        {
            if (facts.Build.Stated.Amplifiers[amplifier].OnBoardFuseAmps is not { } amps) return null;
            own += amps;
        }

        double rating = fuse.TotalRatingAmps(facts.Design.Conductors[end.Run].Count);
        return Significant.Exceeds(own, rating) && OpensOnNote.Check(facts, end) is null ? At(end, rating, own) : null;
    }
}
