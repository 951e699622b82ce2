using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class BandRecalled() : FaultRule(
    ViolationKind.BandRecalled, Severity.Caution, "fuse.band-from-memory", rules => rules.Fuse.OpensInTime,
    "The fuse opens in time by a time-current band from memory, with little to spare: check the part's own.")
{
    /// <inheritdoc/>
    public override Violation? Check(FaultFacts facts, RunEnd end, FittedFuse fuse) =>
        facts.Clearings.Any(clearing => clearing.IsInTime && clearing.Device.End == end
            && Significant.Exceeds(clearing.Strain * fuse.Band.Uncertainty.Value, 1))
            ? At(end)
            : null;
}
