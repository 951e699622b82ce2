using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <remarks>A charger limits itself; relay and diode carry what comes.</remarks>
internal sealed class IsolatorUnrated() : RunRule(
    ViolationKind.IsolatorUnrated, Severity.Caution, "isolator.rating-unknown", rules => rules.Isolator.MaxOfRating,
    "Nothing says what the isolator may carry.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int run) =>
        facts.Build.Runs[run].Isolator is { Kind: not IsolatorKind.DcDcCharger, RatedAmps: null }
            ? By(run, facts.Envelope.ThermalAmps[run])
            : null;
}
