using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>A rule about every fuse of a design.</summary>
internal abstract class FuseRule(ViolationKind kind, Severity severity, string code, FigureOf figure, string meaning)
    : EndRule(kind, severity, code, figure, meaning)
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, RunEnd end) =>
        facts.Design.FuseAt(end) is { } fuse ? Check(facts, end, fuse) : null;

    /// <summary>How the fuse at an end of a run violates it; <c>null</c> where it holds.</summary>
    protected abstract Violation? Check(DesignFacts facts, RunEnd end, FittedFuse fuse);
}
