using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

internal sealed class BodyDropLarge() : Rule(
    ViolationKind.BodyDropLarge, Severity.Caution, "return.body-drop-large", rules => rules.Return.BodyDrop,
    "Much voltage is lost in the body and the battery's strap.")
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Performance;

    /// <summary>How the design violates it; <c>null</c> where it holds.</summary>
    public Violation? Check(FaultFacts facts)
    {
        if (facts.Evaluation.Violations.Any(violation => violation.Kind is ViolationKind.StrapTooSmall)) return null;
        double limit = FigureIn(facts.Build.Ruleset).Value * facts.Build.NominalFactor;
        double volts = facts.Evaluation.Envelope.BodyVolts;
        return Significant.Exceeds(volts, limit) ? By(0, volts, limit) : null;
    }
}
