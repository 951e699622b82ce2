using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class ReturnBelowSupply() : AmplifierRule(
    ViolationKind.ReturnBelowSupply, Severity.Caution, "amplifier.return-below-supply", rules => rules.Return.NotBelowSupply,
    "The amplifier's return conducts worse than its supply.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int amplifier)
    {
        (double supply, double back) = facts.MetresPerOhmAt(amplifier);
        return Significant.Exceeds(supply, back) ? By(amplifier, back, supply) : null;
    }
}
