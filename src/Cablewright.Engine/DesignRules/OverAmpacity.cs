using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class OverAmpacity() : RunRule(
    ViolationKind.OverAmpacity, Severity.Fail, "run.over-ampacity", rules => rules.Heat.MaxOfAmpacity,
    "The conductor carries more continuous current than it is rated for in its surroundings.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int run)
    {
        double amps = facts.Envelope.ThermalAmps[run], ampacity = facts.AmpacityOfAll(run);
        return ampacity > 0 && Significant.Exceeds(amps, ampacity) ? By(run, amps, ampacity) : null;
    }
}
