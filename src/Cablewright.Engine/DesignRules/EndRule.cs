using Cablewright.Engine.Builds;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>A rule about both ends of every supply run of a design.</summary>
internal abstract class EndRule(ViolationKind kind, Severity severity, string code, FigureOf figure, string meaning)
    : Rule(kind, severity, code, figure, meaning)
{
    /// <inheritdoc/>
    public override bool IsOfRun => true;

    /// <summary>How an end of a run violates it; <c>null</c> where it holds.</summary>
    public abstract Violation? Check(DesignFacts facts, RunEnd end);
}
