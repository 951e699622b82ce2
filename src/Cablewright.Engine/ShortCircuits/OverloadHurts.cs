using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class OverloadHurts() : ClearingRule(
    ViolationKind.OverloadHurts, Severity.Caution, "fuse.overload-hurts-conductor", rules => rules.Fuse.Overload,
    "On a moderate overload the conductor gets too hot before a fuse above its ampacity opens.")
{
    /// <inheritdoc/>
    public override Violation? Check(FaultFacts facts, Clearing clearing)
    {
        double rating = clearing.Device.TotalRatingAmps, ampacity = facts.Model.Ampacities.OfAll(
            clearing.Run, facts.Evaluation.Design.Conductors[clearing.Run]);
        if (!Significant.Exceeds(rating, ampacity)) return null;
        double limit = facts.Build.Runs[clearing.Run].InsulationCelsius + facts.Build.Ruleset.Heat.OverloadMargin.Value;
        return facts.Overload.Worst(clearing.Run, clearing.Device, limit) is { } worst
            ? At(clearing.Device.End with { Run = clearing.Run }, worst.Celsius, limit)
            : null;
    }
}
