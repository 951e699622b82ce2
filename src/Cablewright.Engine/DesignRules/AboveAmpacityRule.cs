using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>A rule about more entering a run at an end than all its conductors may carry, told apart by the fuse there.</summary>
internal abstract class AboveAmpacityRule(ViolationKind kind, Severity severity, string code, FigureOf figure, string meaning)
    : EndRule(kind, severity, code, figure, meaning)
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, RunEnd end) =>
        IsAbout(facts.Design.FuseAt(end)) && facts.TooMuchEntering(end) is { } entering
            && Significant.Exceeds(entering, facts.AmpacityOfAll(end.Run))
            ? At(end, entering, facts.AmpacityOfAll(end.Run)) with { Severity = facts.SeverityOfEntering(end, entering) }
            : null;

    /// <summary>Whether it is about an end with this fuse, or with none.</summary>
    protected abstract bool IsAbout(FittedFuse? own);
}
