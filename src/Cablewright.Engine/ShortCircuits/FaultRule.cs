using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>A rule about what short circuits do to every fuse.</summary>
internal abstract class FaultRule(ViolationKind kind, Severity severity, string code, FigureOf figure, string meaning)
    : Rule(kind, severity, code, figure, meaning)
{
    /// <inheritdoc/>
    public override bool IsOfRun => true;

    /// <summary>How the fuse at an end of a run violates it; <c>null</c> where it holds.</summary>
    public abstract Violation? Check(FaultFacts facts, RunEnd end, FittedFuse fuse);
}
