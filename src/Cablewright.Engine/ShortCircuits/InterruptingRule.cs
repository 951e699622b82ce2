using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>A rule about what a fuse is rated to interrupt, told apart by whether the part's own rating is stated.</summary>
internal abstract class InterruptingRule(ViolationKind kind, Severity severity, string code, string meaning)
    : FaultRule(kind, severity, code, rules => rules.Fuse.InterruptingRating, meaning)
{
    /// <inheritdoc/>
    public override Violation? Check(FaultFacts facts, RunEnd end, FittedFuse fuse)
    {
        if (!IsAbout(fuse)) return null;
        double needed = RequiredInterrupting.Of(facts.Model, end, facts.LargestAmpsAt(end));
        if (!Significant.Exceeds(needed, fuse.InterruptsAmps)) return null;
        Violation violation = At(end, needed, fuse.InterruptsAmps);
        return RequiredInterrupting.IsUsualPlugIn(facts.Model, end, fuse.Family, fuse.InterruptsAmps)
            || RequiredInterrupting.IsThereAPart(fuse, needed)
            ? violation with { Severity = Severity.Info }
            : violation;
    }

    /// <summary>Whether it is about a fuse of which so much is known.</summary>
    protected abstract bool IsAbout(FittedFuse fuse);
}
