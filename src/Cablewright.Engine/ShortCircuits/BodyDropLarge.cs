using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class BodyDropLarge() : Rule(
    ViolationKind.BodyDropLarge, Severity.Caution, "return.body-drop-large", "return.body-drop",
    "Much voltage is lost in the body and the battery's strap.")
{
    /// <summary>How the design violates it; <c>null</c> where it holds.</summary>
    public Violation? Check(FaultFacts facts)
    {
        double limit = facts.Build.Ruleset[Figure].Value * facts.Build.NominalFactor, volts = facts.Evaluation.Envelope.BodyVolts;
        return Significant.Exceeds(volts, limit) ? By(0, volts, limit) : null;
    }
}
