using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

/// <summary>A rule about what is drawn and what can be given.</summary>
internal abstract class SupplyRule(ViolationKind kind, Severity severity, string code, FigureOf figure, string meaning)
    : Rule(kind, severity, code, figure, meaning)
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Supply;

    /// <summary>Every way in which a build violates it.</summary>
    public abstract IEnumerable<Violation> Check(SupplyFacts facts);
}
