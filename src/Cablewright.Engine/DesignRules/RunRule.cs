using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>A rule about every run of a design.</summary>
internal abstract class RunRule(ViolationKind kind, Severity severity, string code, FigureOf figure, string meaning)
    : Rule(kind, severity, code, figure, meaning)
{
    /// <inheritdoc/>
    public override bool IsOfRun => true;

    /// <summary>How a run violates it; <c>null</c> where it holds.</summary>
    public abstract Violation? Check(DesignFacts facts, int run);
}
