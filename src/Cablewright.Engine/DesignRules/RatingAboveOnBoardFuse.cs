using Cablewright.Engine.Loads;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class RatingAboveOnBoardFuse() : AmplifierRule(
    ViolationKind.RatingAboveOnBoardFuse, Severity.Caution, "amplifier.rating-above-fuse", rules => rules.Load.OnBoardFuse,
    "The amplifier's own fuses do not carry what its rated output would draw.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int amplifier)
    {
        AmplifierDraw draw = facts.Build.Draws[amplifier];
        if (draw.Full.Kind is LoadKind.ConstantCurrent) return null;
        if (facts.Build.Stated.Amplifiers[amplifier].OnBoardFuseAmps is not { } fuse) return null;
        double atRating = CircuitSolver.Amps(draw.Full, draw.RatingVolts);
        return Significant.Exceeds(atRating, fuse) ? By(amplifier, atRating, fuse) : null;
    }
}
