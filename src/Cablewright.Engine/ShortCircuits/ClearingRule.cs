using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>A rule about how a fault or an overload of a run is ended.</summary>
internal abstract class ClearingRule(ViolationKind kind, Severity severity, string code, FigureOf figure, string meaning)
    : Rule(kind, severity, code, figure, meaning)
{
    /// <inheritdoc/>
    public override bool IsOfRun => true;

    /// <summary>How a run violates it; <c>null</c> where it holds.</summary>
    public abstract Violation? Check(FaultFacts facts, Clearing clearing);

    /// <summary>A verdict that hangs on a time-current band that is only recalled is never more than a caution.</summary>
    protected static Violation AsFarAsKnown(Violation violation, Clearing clearing) =>
        clearing.Device.Fuse.Family.TimeCurrentBand.IsRead ? violation : violation with { Severity = Severity.Caution };
}
