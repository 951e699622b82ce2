using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class CopperClad() : RunRule(
    ViolationKind.CopperClad, Severity.Info, "run.copper-clad", rules => rules.Run.CopperClad,
    "The conductor is copper-clad aluminium: it conducts less, and its terminations want care.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int run) =>
        facts.Design.Conductors[run].Conductor.Material is Material.CopperCladAluminium ? By(run) : null;
}
