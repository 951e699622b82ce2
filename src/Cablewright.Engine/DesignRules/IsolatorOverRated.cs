using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class IsolatorOverRated() : RunRule(
    ViolationKind.IsolatorOverRated, Severity.Fail, "isolator.over-rating", rules => rules.Isolator.MaxOfRating,
    "The isolator carries more than it is rated for.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int run)
    {
        double amps = facts.Envelope.ThermalAmps[run];
        return facts.Build.Runs[run].Isolator is { Kind: not IsolatorKind.DcDcCharger, RatedAmps: { } rated }
            && Significant.Exceeds(amps, rated) ? By(run, amps, rated) : null;
    }
}
