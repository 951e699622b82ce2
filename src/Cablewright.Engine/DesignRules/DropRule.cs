using Cablewright.Engine.Completion;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>A rule about the voltage drop over the conductors to an amplifier and back, which holds up to a step.</summary>
internal abstract class DropRule(ViolationKind kind, Severity severity, string code, FigureOf figure, string meaning)
    : AmplifierRule(kind, severity, code, figure, meaning)
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Performance;

    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int amplifier)
    {
        double share = facts.Circuit.SourceShareOf(amplifier), limit = LimitOf(facts.Build.Drop) * share;
        double drop = facts.ConductorVolts(amplifier, limit);
        return Significant.Exceeds(drop, limit) && !Significant.Exceeds(drop, NextLimitOf(facts.Build.Drop) * share)
            ? By(amplifier, drop, limit)
            : null;
    }

    /// <summary>The step that it holds up to, in volts.</summary>
    protected abstract double LimitOf(DropLimits drop);

    /// <summary>The step from which on another rule speaks, in volts.</summary>
    protected virtual double NextLimitOf(DropLimits drop) => double.PositiveInfinity;
}
