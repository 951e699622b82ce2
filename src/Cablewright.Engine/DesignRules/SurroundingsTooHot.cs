using Cablewright.Engine.Completion;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class SurroundingsTooHot() : RunRule(
    ViolationKind.SurroundingsTooHot, Severity.Fail, "run.surroundings-above-insulation", rules => rules.Heat.MaxOfAmpacity,
    "The surroundings are as hot as the insulation may be, so the conductor may carry nothing.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int run)
    {
        CompleteRun described = facts.Build.Runs[run];
        return facts.AmpacityOfEach(run) <= 0 ? By(run, described.AirCelsius, described.InsulationCelsius) : null;
    }
}
