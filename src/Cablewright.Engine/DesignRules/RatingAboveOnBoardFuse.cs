using Cablewright.Engine.Loads;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class RatingAboveOnBoardFuse() : AmplifierRule(
    ViolationKind.RatingAboveOnBoardFuse, Severity.Info, "amplifier.rating-above-fuse", rules => rules.Load.OnBoardFuse,
    "The amplifier's own fuses do not carry what its rated output would draw.")
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Performance;

    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int amplifier)
    {
        AmplifierDraw draw = facts.Build.Draws[amplifier];
        if (facts.Build.Stated.Amplifiers[amplifier].OnBoardFuseAmps is not { } fuse) return null;
        return Significant.Exceeds(draw.RatedAmps, fuse) ? By(amplifier, draw.RatedAmps, fuse) : null;
    }
}
