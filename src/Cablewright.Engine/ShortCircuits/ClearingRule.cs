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

    /// <summary>It weighs what is known of the fuse's time-current band.</summary>
    /// <param name="violation">The rule, violated at the figures of the band.</param>
    /// <param name="facts">All about the design.</param>
    /// <param name="clearing">The clearing.</param>
    /// <param name="factor">By how much the band would have to be off for the rule to hold.</param>
    protected static Violation AsFarAsKnown(Violation violation, FaultFacts facts, Clearing clearing, double factor) =>
        violation with { Severity = RecalledBand.Weigh(clearing.Device.Fuse.Band, factor) };
}
