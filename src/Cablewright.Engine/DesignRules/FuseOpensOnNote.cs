using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <remarks>
/// Music averages far below full output, but a note lasts seconds. Where the band is only recalled, as much as it may be off is
/// allowed before the fuse counts as too small. A charger draws no more than its rating.
/// </remarks>
internal sealed class FuseOpensOnNote() : FuseRule(
    ViolationKind.FuseOpensOnNote, Severity.Caution, "fuse.opens-at-full-output", rules => rules.Fuse.HoldsNote,
    "At full output the fuse may open before a bass note has ended.")
{
    /// <inheritdoc/>
    protected override Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse)
    {
        if (facts.Build.Runs[end.Run].Isolator is { Kind: IsolatorKind.DcDcCharger }) return null;
        double share = facts.Envelope.PeakAmps[end.Run] / fuse.TotalRatingAmps(facts.Design.Conductors[end.Run].Count);
        double holds = fuse.Band.FastestSeconds(share), note = FigureIn(facts.Build.Ruleset).Value;
        return Significant.Exceeds(note, holds)
            ? At(end, holds, note) with
            {
                Severity = RecalledBand.Weigh(fuse.Band, note / holds) is Severity.Fail ? Severity.Caution : Severity.Info,
            }
            : null;
    }
}
