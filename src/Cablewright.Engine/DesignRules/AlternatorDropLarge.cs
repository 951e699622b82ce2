using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class AlternatorDropLarge() : RunRule(
    ViolationKind.AlternatorDropLarge, Severity.Caution, "alternator.cable-drop-large", rules => rules.Alternator.CableDrop,
    "Much voltage is lost in the alternator's own cable at its hot output.")
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Performance;

    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int run)
    {
        if (facts.Build.Runs[run].Side is Side.Return || !facts.IsAlternatorCable(run)) return null;
        double limit = FigureIn(facts.Build.Ruleset).Value * facts.Build.NominalFactor;
        double drop = facts.Envelope.PeakAmps[run] * facts.Envelope.Ohms[run];
        return Significant.Exceeds(drop, limit) ? By(run, drop, limit) : null;
    }
}
