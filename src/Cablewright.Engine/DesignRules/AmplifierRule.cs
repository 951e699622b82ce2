using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>A rule about every amplifier of a design.</summary>
internal abstract class AmplifierRule(ViolationKind kind, Severity severity, string code, FigureOf figure, string meaning)
    : Rule(kind, severity, code, figure, meaning)
{
    /// <summary>How an amplifier violates it; <c>null</c> where it holds.</summary>
    public abstract Violation? Check(DesignFacts facts, int amplifier);
}
